import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { applyChanges } from './apply-changes.js';
import { textChanges } from './text-changes.js';

describe('textChanges', () => {
  it('changes the lines that differ, and no other', () => {
    const before = 'plan "x" {\r\n  courses 3\r\n  base solid\r\n}\r\n';
    const after = 'plan "x" {\r\n  courses 5\r\n  base solid\r\n  wedges 4\r\n}\r\n';
    expect(textChanges(before, after)).toEqual([
      { span: { start: 12, end: 25 }, text: '  courses 5\r\n' },
      { span: { start: 39, end: 39 }, text: '  wedges 4\r\n' },
    ]);
  });

  it('is nothing where nothing differs', () => expect(textChanges('a\nb', 'a\nb')).toEqual([]));

  it('makes one text of the other, whatever they are', () => {
    const text = fc.array(fc.constantFrom('a', 'b', 'crib', '\n', '\r\n', '')).map((parts) => parts.join(''));
    fc.assert(
      fc.property(text, text, (before, after) => {
        expect(applyChanges(before, textChanges(before, after))).toBe(after);
      }),
    );
  });
});
