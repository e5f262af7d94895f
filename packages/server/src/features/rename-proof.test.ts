import { applyChanges } from '@cribwright/workspace/internal';
import { expect, it } from 'vitest';

it('applies changes from the end, so that none moves another', () => {
  const changes = [
    { span: { start: 0, end: 1 }, text: 'long' },
    { span: { start: 2, end: 3 }, text: '' },
    { span: { start: 4, end: 4 }, text: '!' },
  ];
  expect(applyChanges('a b c', changes)).toBe('long  !c');
});
