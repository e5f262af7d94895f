import { readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** What the compiler says of the packages where some of their files read otherwise: file and line, message. */
export function complaints(changes: Readonly<Record<string, (text: string) => string>>): readonly string[] {
  const changed = new Map(
    Object.entries(changes).map(([file, change]) => {
      const path = join(root, file);
      const before = readFileSync(path, 'utf8');
      const after = change(before);
      if (after === before) throw new Error(`${file} was not changed`);
      return [path, after];
    }),
  );
  const { options } = ts.parseJsonConfigFileContent(
    {
      extends: './tsconfig.json',
      compilerOptions: {
        noEmit: true,
        composite: false,
        incremental: false,
        declaration: false,
        declarationMap: false,
        sourceMap: false,
        jsx: 'react-jsx',
        jsxImportSource: 'preact',
        types: ['node', 'vscode'],
        lib: ['ES2023', 'DOM', 'DOM.Iterable'],
      },
    },
    ts.sys,
    root,
  );
  const host = ts.createCompilerHost(options);
  const { readFile } = host;
  host.readFile = (path) => changed.get(path) ?? readFile(path);
  const entries = ts.sys
    .readDirectory(
      join(root, 'packages'),
      ['.ts', '.tsx'],
      ['**/dist', '**/node_modules', '**/*.test.*', '**/testing', '**/build'],
    )
    .filter((path) => path.includes('/src/'));
  const program = ts.createProgram(entries, options, host);
  return program
    .getSourceFiles()
    .filter((file) => entries.includes(file.fileName))
    .flatMap((file) => [...program.getSyntacticDiagnostics(file), ...program.getSemanticDiagnostics(file)])
    .map(({ file, start, messageText }) => {
      const line = file && start !== undefined ? file.getLineAndCharacterOfPosition(start).line + 1 : 0;
      const path = file ? relative(root, file.fileName) : '';
      return `${path}:${line} ${ts.flattenDiagnosticMessageText(messageText, ' ')}`;
    });
}

/** The files of complaints, each once. */
export const filesOf = (found: readonly string[]): readonly string[] =>
  [...new Set(found.map((line) => line.slice(0, line.indexOf(':'))))].sort();
