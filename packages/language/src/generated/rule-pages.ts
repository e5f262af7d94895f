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
  'post-slender': `# post-slender: post too slender

## What it protects against

A long thin post bows sideways and snaps long before the wood is crushed. It gives little warning.

## The sum

    slenderness = length ÷ least depth          180 in ÷ 3.5 in = 51.43
    limit       = 50

The length is the one from head to foot. Plies nailed together count with their whole depth; what nails lose is taken off in the post's capacity.

## Sources

- 50 in service, 75 while erecting: from memory, NDS 2018, 3.7.1.4. A post that holds a load over people is in service.

A department's policy may set another limit, with its own source.
`,
};
