import { expect, it } from 'vitest';
import { fencesOf, missingHeadings } from './page.js';

const page = `# Crib too high

## What it protects against

## Calculation

    width = 24 in

## Sources

## Unsafe

\`\`\`crib
plan "x" {
  courses 14 // crib-height, crib-reach
  at 3 ft    // a remark, not a rule
}
\`\`\`

\`\`\`crib fixed
  courses 6
\`\`\`

## Safe

\`\`\`crib
plan "y" {}
\`\`\`
`;

it('reads each fence with its heading and what it expects', () => {
  const fences = fencesOf(page);
  expect(fences.map((f) => [f.under, f.kind])).toEqual([
    ['Unsafe', 'plan'],
    ['Unsafe', 'fixed'],
    ['Safe', 'plan'],
  ]);
  expect(fences[0]?.expected).toEqual([
    { line: 1, rule: 'crib-height' },
    { line: 1, rule: 'crib-reach' },
  ]);
});

it('names the headings that are missing or out of order', () => {
  expect(missingHeadings(page)).toEqual([]);
  expect(missingHeadings(page.replace('## Sources', '## Source'))).toEqual(['Sources']);
  expect(missingHeadings('## Safe\n## Unsafe\n')).toContain('(order)');
});
