import type { Workspace } from '@cribwright/workspace';
import { beforeAll, expect, it } from 'vitest';
import { answer, openFolder } from './answer.js';
import { basePlan } from './base-plan.js';

let workspace: Workspace;
beforeAll(async () => {
  workspace = await openFolder();
});

const lines = basePlan.split('\n');

/** For each line: how many errors braces after it give, where that is not one error each. */
const errorsAfterEachLine = (...braces: string[]): readonly string[] =>
  lines.flatMap((line, i) => {
    const text = [...lines.slice(0, i + 1), ...braces, ...lines.slice(i + 1)].join('\n');
    const { errors, checked } = answer(workspace, text);
    const whole = checked.plans.every(({ partial }) => !partial);
    return errors.length === braces.length && !whole
      ? []
      : [`after “${line.trim()}”: ${errors.length} errors${whole ? ', and the plan looks whole' : ''}`];
  });

it('answers one stray closing brace with one error, wherever it stands', () => {
  expect(errorsAfterEachLine('}')).toEqual([]);
  expect(errorsAfterEachLine('  }')).toEqual([]);
});

it('answers two stray closing braces with two errors, wherever they stand', () =>
  expect(errorsAfterEachLine('  }', '}')).toEqual([]));
