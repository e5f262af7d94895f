// What may not depend on what. Imports of types count. Run by tests/circles.test.ts; by hand: npm run circles
/** @type {import('dependency-cruiser').IConfiguration} */
module.exports = {
  forbidden: [
    {
      name: 'no-circles-of-files',
      comment: 'A file that needs itself in the end cannot be read, moved or tested alone.',
      severity: 'error',
      from: {},
      to: { circular: true },
    },
    {
      name: 'no-circles-of-folders',
      comment: 'Folders that need each other are one folder.',
      severity: 'error',
      scope: 'folder',
      from: {},
      to: { circular: true },
    },
  ],
  options: {
    includeOnly: '^packages/[^/]+/src/',
    exclude: '\\.test\\.tsx?$',
    tsConfig: { fileName: 'tsconfig.json' },
    // Types too: what only the compiler needs ties files together as much.
    tsPreCompilationDeps: true,
    enhancedResolveOptions: {
      conditionNames: ['source', 'import', 'types', 'default'],
      exportsFields: ['exports'],
    },
  },
};
