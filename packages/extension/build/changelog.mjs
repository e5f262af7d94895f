/** What changed, for a reader of the package's page. Newest first. */
export const changelog = `# Changes

## 0.1.0

The first version. Plans are checked and drawn as they are written: weights and centers of gravity, crib height,
capacity and reach, contacts, struts and straps, the order of building, and what happens when a support that was
there before the crew gives way. Every figure shows its sum and its source.
`;
