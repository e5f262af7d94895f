import { fleet, trailerPlan } from '@cribwright/workspace/testing';
import { expect, it } from 'vitest';
import { atCursor } from '../../testing/context-of.js';
import { hoverAt } from './hover.js';

async function hovered(to: string): Promise<string> {
  const { desk, file, offset } = await atCursor(trailerPlan.replace('at        21 ft', to), {
    'fleet.crib': fleet,
  });
  const contents = (await hoverAt(desk, file, offset))?.contents;
  return contents && typeof contents === 'object' && 'value' in contents
    ? contents.value.replaceAll('\\', '')
    : '';
}

it('shows a length as a tape is marked in words, and in millimeters', async () => {
  expect(await hovered('at        19<|>\' 6"')).toMatch(/19' 6" is 19 ft 6 in, 5,944 mm/);
  expect(await hovered('at        19\'-<|>6 3/4"')).toMatch(/19'-6 3\/4" is 19 ft 6 3\/4 in, 5,963 mm/);
});
