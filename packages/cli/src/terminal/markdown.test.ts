import { expect, it } from 'vitest';
import { markdownText } from './markdown.js';
import { colored, plain } from './paint.js';

const page = '# Crib too high\n\nSee `crib-height`.\n\n```crib\ncourses 14 // crib-height\n```\n';

it('takes the marks out and sets plans in', () => {
  expect(markdownText(page, plain)).toBe(
    'Crib too high\n\nSee crib-height.\n\n  courses 14 // crib-height\n',
  );
});

it('makes headings stand out', () => {
  expect(markdownText(page, colored).split('\n')[0]).toBe('\u001b[1mCrib too high\u001b[22m');
});
