import { parse } from '@cribwright/syntax';
import type { Parsed } from '@cribwright/syntax/internal';
import { reparse } from '@cribwright/syntax/internal';
import { type FileSource, libraryFolder, libraryText, type Unreadable } from './files.js';

export interface Text {
  readonly text: string;
  readonly version: number;
}

const isText = (known: Text | 'absent' | Unreadable | undefined): known is Text =>
  typeof known === 'object' && 'text' in known;

/** The texts of files, as the editor has them or as they were read, and their parses. */
export class Texts {
  private readonly texts = new Map<string, Text | 'absent' | Unreadable>();
  private readonly parses = new Map<string, { readonly text: string; readonly parsed: Parsed }>();

  /** @param changed told of a file whose text has become another. */
  constructor(
    private readonly files: FileSource,
    private readonly changed: (uri: string) => void,
  ) {}

  /** `same` where only the version is another. */
  put(uri: string, text: string, version: number): 'same' | 'changed' {
    const before = this.texts.get(uri);
    this.texts.set(uri, { text, version });
    if (isText(before) && before.text === text) return 'same';
    this.changed(uri);
    return 'changed';
  }

  drop(uri: string): void {
    this.texts.delete(uri);
    this.parses.delete(uri);
    this.changed(uri);
  }

  of(uri: string): Text | undefined {
    const known = this.texts.get(uri);
    if (known) return isText(known) ? known : undefined;
    const text = libraryText(uri);
    return text === undefined ? undefined : { text, version: 0 };
  }

  /** Why a file that is there was not read. */
  unreadable(uri: string): Unreadable['unreadable'] | undefined {
    const known = this.texts.get(uri);
    return known === undefined || known === 'absent' || isText(known) ? undefined : known.unreadable;
  }

  /** Reads it in, if its real path lies within the folder. Gives whether it is there. */
  async read(uri: string, within: string): Promise<boolean> {
    if (this.of(uri)) return true;
    if (this.texts.has(uri) || uri.startsWith(libraryFolder)) return false;
    const text = await this.files.read(uri, within);
    // An editor may have opened it meanwhile.
    if (this.texts.has(uri)) return this.of(uri) !== undefined;
    this.texts.set(uri, typeof text === 'string' ? { text, version: 0 } : (text ?? 'absent'));
    this.changed(uri);
    return typeof text === 'string';
  }

  /** Forgets what was there and could not be read: what may be read has changed. */
  forgetUnreadable(): void {
    for (const uri of [...this.texts.keys()]) if (this.unreadable(uri) !== undefined) this.drop(uri);
  }

  parsed(uri: string): Parsed | undefined {
    const text = this.of(uri)?.text;
    if (text === undefined) return undefined;
    const known = this.parses.get(uri);
    if (known?.text === text) return known.parsed;
    const parsed = known ? reparse(known, text) : parse(text);
    this.parses.set(uri, { text, parsed });
    return parsed;
  }

  /** What its `use` lines say, as written. */
  usesOf(uri: string): readonly string[] {
    return (this.parsed(uri)?.statements ?? []).flatMap((s) => {
      const [use, path] = s.terms;
      return use?.text === 'use' && path?.kind === 'text' ? [path.text.replace(/^"|"$/g, '')] : [];
    });
  }

  /** Files that are there, without the library. */
  uris(): readonly string[] {
    return [...this.texts]
      .filter(([uri, t]) => isText(t) && !uri.startsWith(libraryFolder))
      .map(([uri]) => uri);
  }
}
