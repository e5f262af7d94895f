import type { BoundFile } from '@cribwright/language';
import { library } from '@cribwright/language';
import type { Declaration, Kind } from '@cribwright/language/internal';
import type { Workspace } from '@cribwright/workspace';
import { libraryFolder, libraryUri } from '@cribwright/workspace/internal';
import type { TextEdit } from 'vscode-languageserver';

/** Something that the library has and the file does not use yet. */
export interface Unseen {
  readonly declaration: Declaration;
  /** `library/vehicles.crib` */
  readonly file: string;
}

/** What the library declares of some kinds in files that this one does not see. */
export function unseenIn(
  workspace: Workspace,
  file: BoundFile,
): (kinds: readonly Kind[]) => readonly Unseen[] {
  if (file.uri.startsWith(libraryFolder)) return () => [];
  const seen = new Set(workspace.surroundings(file.uri).seen.map((f) => f.uri));
  const others = Object.keys(library).filter((name) => !seen.has(libraryUri(name)));
  return (kinds) =>
    others.flatMap((name) =>
      (workspace.bound(libraryUri(name))?.declarations ?? [])
        .filter((d) => d.scope === undefined && kinds.includes(d.kind))
        .map((declaration) => ({ declaration, file: `library/${name}` })),
    );
}

/** The `use` line that makes it seen, at the top of the file. */
export const usingIt = ({ file }: Unseen): TextEdit[] => [
  {
    range: { start: { line: 0, character: 0 }, end: { line: 0, character: 0 } },
    newText: `use "${file}"\n`,
  },
];
