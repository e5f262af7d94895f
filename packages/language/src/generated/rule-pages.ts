// Written by build/embed.mjs. Do not edit.
/** Every rule's page: rule id to Markdown. */
export const rulePages: Readonly<Record<string, string>> = {
  'crib-height': `# crib-height: crib too high for its width

## What it protects against

A crib that is tall and narrow sways under load and goes over without warning. It sways sooner when the load rests on one side of it only.

## The sum

The width counts from outside to outside of the contacts, not over the full timber:

    width = timber length − 2 × overhang            24 in − 2 × 4 in = 16 in
    limit = ratio × width

The ratio is the policy's: 3 with all contacts loaded, 1.5 with some, 1 with one. The height is courses × dressed depth. Wedges and shims are not counted.

## Sources

- 3 and 1.5: common practice, no source.
- 1 on one contact: from memory, US Army Corps of Engineers Shoring Operations Guide, section 2.

A department's policy may set other ratios, with its own source.

## Unsafe

\`\`\`crib
plan "Too high on two contacts" {
  vehicle trailer : VanTrailer53
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   14 // crib-height
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail
  }
}
\`\`\`

\`\`\`crib fixed
    courses   6
\`\`\`

## Safe

\`\`\`crib
plan "All four contacts captured" {
  vehicle trailer : VanTrailer53
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`
`,
};
