import { rules } from '@cribwright/engine';
import { closest } from '@cribwright/units';
import { bindFile } from '../binding/bind.js';
import type { BoundFile } from '../binding/bound-file.js';
import type { Kind } from '../binding/declaration.js';
import type { FileShape } from '../binding/draft.js';
import type { Surroundings } from '../binding/file-scope.js';
import { shapeFile } from '../binding/shape.js';
import { planBlocks } from '../elaboration/elaborate.js';
import { library } from '../generated/library.js';
import { type Parsed, parse } from '../grammar/parse.js';
import { type LanguageProblem, problem, replace } from '../problems/problem.js';
import { say } from '../problems/words.js';
import { type Checked, Checker } from './check.js';
import {
  type FileSource,
  fileName,
  libraryFolder,
  libraryText,
  libraryUri,
  prelude,
  resolveUse,
} from './files.js';

export type { Checked, Problem } from './check.js';
export type { FileSource } from './files.js';
export { libraryFolder, libraryText, libraryUri } from './files.js';

/** How deep files may use each other, and how many one file may draw in. */
export const deepestUse = 16;
export const mostFiles = 400;

/** The files of a reader, bound and checked as asked. Once files are loaded, everything is synchronous. */
export interface Workspace {
  /** An open editor's text wins over the file. */
  put(uri: string, text: string, version: number): void;
  /** Closed, changed on disk or deleted: forget it, read it again when asked. */
  drop(uri: string): void;
  /** Reads in the file and all that it uses. */
  load(uri: string): Promise<void>;
  /** Read and bound; `undefined` where there is no such file, or it was not loaded. Never throws. */
  bound(uri: string): BoundFile | undefined;
  check(uri: string): Checked;
  /**
   * Works out what `check` left pending, and stops after each step, so that it can be dropped. Once it is done,
   * `check` gives the whole. Gives whether there was anything to do.
   */
  complete(uri: string): Generator<void, boolean>;
  /** Loaded files that use it, directly or not. */
  dependents(uri: string): readonly string[];
  /** Loaded files, without the library. */
  uris(): readonly string[];
  /** Shows figures in these units whatever the plan says. */
  show(display: 'us' | 'si' | undefined): void;
  /** What a file sees. For features that offer names. */
  surroundings(uri: string): Surroundings;
}

export interface WorkspaceOptions {
  readonly files: FileSource;
  /** Opened folders. Imports stay inside them; with none, inside the file's own folder. */
  readonly folders: readonly string[];
  /** ISO date, for acceptances. Without it, checks that need it say that they could not run. */
  readonly today?: string;
  /** Also work out how hard a push each plan holds, and write out its sums: for whoever can wait a moment. */
  readonly push?: boolean;
}

interface Text {
  readonly text: string;
  readonly version: number;
}

export function openWorkspace(options: WorkspaceOptions): Workspace {
  return new Files(options);
}

const ruleIds: ReadonlySet<string> = new Set(rules.map((r) => r.id));

class Files implements Workspace {
  private readonly texts = new Map<string, Text | 'absent'>();
  private readonly parses = new Map<string, { readonly text: string; readonly parsed: Parsed }>();
  private readonly shapes = new Map<string, FileShape>();
  private readonly files = new Map<string, BoundFile>();
  private readonly checks = new Map<string, Checked>();
  /** Every file that a file's meaning hangs on, the ones looked for and not found too. */
  private readonly hangsOn = new Map<string, ReadonlySet<string>>();
  private readonly checker: Checker;
  private display: 'us' | 'si' | undefined;

  constructor(private readonly options: WorkspaceOptions) {
    this.checker = new Checker(options);
  }

  put(uri: string, text: string, version: number): void {
    const before = this.texts.get(uri);
    if (before && before !== 'absent' && before.text === text) {
      this.texts.set(uri, { text, version });
      const file = this.files.get(uri);
      if (file) this.files.set(uri, { ...file, version });
      const checked = this.checks.get(uri);
      if (checked) this.checks.set(uri, { ...checked, version });
      return;
    }
    this.texts.set(uri, { text, version });
    this.forget(uri);
  }

  drop(uri: string): void {
    this.texts.delete(uri);
    this.parses.delete(uri);
    this.forget(uri);
  }

  async load(uri: string): Promise<void> {
    const seen = new Set<string>();
    let layer = [uri];
    for (let depth = 0; depth <= deepestUse && layer.length > 0 && seen.size < mostFiles; depth++) {
      const next: string[] = [];
      for (const one of layer) {
        if (seen.has(one) || seen.size >= mostFiles) continue;
        seen.add(one);
        await this.read(one);
        for (const use of this.usesOf(one)) {
          const resolved = resolveUse(one, use, this.options.folders);
          if (resolved.kind !== 'candidates') continue;
          for (const candidate of resolved.uris) {
            if (await this.read(candidate)) {
              next.push(candidate);
              break;
            }
          }
        }
      }
      layer = next;
    }
  }

  bound(uri: string): BoundFile | undefined {
    const known = this.files.get(uri);
    if (known) return known;
    const shape = this.shape(uri);
    const text = this.text(uri);
    if (!shape || !text) return undefined;
    const file = bindFile(shape, text.version, this.surroundings(uri));
    const rings = this.rings(uri, shape);
    const whole = rings.length === 0 ? file : { ...file, problems: [...rings, ...file.problems] };
    this.files.set(uri, whole);
    return whole;
  }

  check(uri: string): Checked {
    const known = this.checks.get(uri);
    if (known) return known;
    const file = this.bound(uri);
    // What other files say is read through their bound lines, so they must be bound too.
    if (file && (file.lets.length > 0 || planBlocks(file.blocks).length > 0)) {
      for (const other of [...this.closure(uri), ...prelude.map(libraryUri)]) this.bound(other);
    }
    const checked = this.checker.check(uri, file, this.surroundings(uri), this.display);
    if (file) this.checks.set(uri, checked);
    return checked;
  }

  *complete(uri: string): Generator<void, boolean> {
    const checked = this.check(uri);
    if (!checked.pending) return false;
    yield* this.checker.complete(checked);
    this.checks.delete(uri);
    return true;
  }

  dependents(uri: string): readonly string[] {
    const found = new Set<string>();
    const queue = [uri];
    for (let next = queue.pop(); next !== undefined; next = queue.pop()) {
      for (const [other, on] of this.hangsOn) {
        if (on.has(next) && !found.has(other) && other !== uri) {
          found.add(other);
          queue.push(other);
        }
      }
    }
    return [...found];
  }

  uris(): readonly string[] {
    return [...this.texts]
      .filter(([uri, t]) => t !== 'absent' && !uri.startsWith(libraryFolder))
      .map(([uri]) => uri);
  }

  show(display: 'us' | 'si' | undefined): void {
    if (display === this.display) return;
    this.display = display;
    this.checks.clear();
  }

  surroundings(uri: string): Surroundings {
    const seen = new Map<string, readonly FileShape[]>();
    const seenBy = (other: string): readonly FileShape[] => {
      const list = seen.get(other) ?? this.seenBy(other);
      seen.set(other, list);
      return list;
    };
    return {
      seen: seenBy(uri),
      shapeOf: (other) => this.shape(other),
      seenBy,
      elsewhere: (name, kinds) => this.elsewhere(uri, name, kinds),
      rules: ruleIds,
    };
  }

  private seenBy(uri: string): readonly FileShape[] {
    const used = this.shape(uri)?.uses.flatMap((u) => (u.target === undefined ? [] : [u.target])) ?? [];
    const all = [...used, ...prelude.map(libraryUri)].filter((u) => u !== uri);
    return [...new Set(all)].flatMap((u) => this.shape(u) ?? []);
  }

  private elsewhere(from: string, name: string, kinds: readonly Kind[]): string | undefined {
    for (const file of Object.keys(library)) {
      const uri = libraryUri(file);
      if (
        uri !== from &&
        this.shape(uri)
          ?.names.get('file')
          ?.get(name)
          ?.some((d) => kinds.includes(d.kind))
      ) {
        return `library/${file}`;
      }
    }
    return undefined;
  }

  private text(uri: string): Text | undefined {
    const known = this.texts.get(uri);
    if (known) return known === 'absent' ? undefined : known;
    const text = libraryText(uri);
    return text === undefined ? undefined : { text, version: 0 };
  }

  private async read(uri: string): Promise<boolean> {
    if (this.text(uri)) return true;
    if (this.texts.get(uri) === 'absent' || uri.startsWith(libraryFolder)) return false;
    const text = await this.options.files.read(uri);
    // An editor may have opened it meanwhile.
    if (this.texts.has(uri)) return this.text(uri) !== undefined;
    this.texts.set(uri, text === undefined ? 'absent' : { text, version: 0 });
    this.forget(uri);
    return text !== undefined;
  }

  private parsed(uri: string): Parsed | undefined {
    const text = this.text(uri)?.text;
    if (text === undefined) return undefined;
    const known = this.parses.get(uri);
    if (known?.text === text) return known.parsed;
    const parsed = parse(text);
    this.parses.set(uri, { text, parsed });
    return parsed;
  }

  private usesOf(uri: string): readonly string[] {
    return (this.parsed(uri)?.statements ?? []).flatMap((s) => {
      const [use, path] = s.terms;
      return use?.text === 'use' && path?.kind === 'text' ? [path.text.replace(/^"|"$/g, '')] : [];
    });
  }

  private shape(uri: string): FileShape | undefined {
    const known = this.shapes.get(uri);
    if (known) return known;
    const text = this.text(uri)?.text;
    const parsed = this.parsed(uri);
    if (text === undefined || !parsed) return undefined;
    const shape = shapeFile(uri, text, parsed);
    this.shapes.set(uri, shape);
    shape.problems.push(...this.resolveUses(shape));
    return shape;
  }

  private resolveUses(shape: FileShape): LanguageProblem[] {
    const problems: LanguageProblem[] = [];
    const on = new Set<string>();
    const used = new Set<string>();
    for (const use of shape.uses) {
      const resolved = resolveUse(shape.uri, use.path, this.options.folders);
      if (resolved.kind === 'outside')
        problems.push(problem('use-outside', use.pathSpan, { path: use.path }));
      else if (resolved.kind === 'not crib')
        problems.push(problem('use-not-crib', use.pathSpan, { path: use.path }));
      else {
        for (const candidate of resolved.uris) {
          on.add(candidate);
          if (!this.text(candidate)) continue;
          use.target = candidate;
          break;
        }
        if (use.target === shape.uri) problems.push(problem('use-itself', use.pathSpan, {}));
        else if (use.target !== undefined && used.has(use.target)) {
          problems.push(problem('use-twice', use.pathSpan, { path: use.path }, { severity: 'warning' }));
        }
        if (use.target !== undefined) used.add(use.target);
      }
    }
    this.hangsOn.set(shape.uri, on);
    return problems;
  }

  private notFound(path: string, span: LanguageProblem['span']): LanguageProblem {
    const names = Object.keys(library).map((n) => `library/${n}`);
    const loaded = this.uris().slice(0, 200).map(fileName);
    const near = closest(path, names) ?? closest(path, loaded);
    return near === undefined
      ? problem('use-not-found', span, { path })
      : problem(
          'use-not-found.near',
          span,
          { path, near },
          {
            fixes: [replace(say('use-not-found.fix', { near }), span, near)],
          },
        );
  }

  /** Files that are not there, that come back to this one by the files they use, and chains that are too long. */
  private rings(uri: string, shape: FileShape): LanguageProblem[] {
    const problems: LanguageProblem[] = [];
    for (const use of shape.uses) {
      const resolved = use.target === undefined && resolveUse(uri, use.path, this.options.folders);
      if (resolved && resolved.kind === 'candidates') problems.push(this.notFound(use.path, use.pathSpan));
      if (use.target === undefined || use.target === uri) continue;
      const path = this.pathTo(use.target, uri);
      if (path) {
        const names = [uri, ...path].map(fileName).join(' → ');
        problems.push(problem('use-cycle', use.pathSpan, { path: names }, { severity: 'warning' }));
      }
      if (this.depth(use.target, new Set([uri])) > deepestUse || this.closure(uri).length >= mostFiles) {
        problems.push(
          problem('use-too-many', use.pathSpan, { most: String(deepestUse), files: String(mostFiles) }),
        );
      }
    }
    return problems;
  }

  private pathTo(from: string, to: string): readonly string[] | undefined {
    const came = new Map<string, string | undefined>([[from, undefined]]);
    const queue = [from];
    for (let at = queue.shift(); at !== undefined; at = queue.shift()) {
      for (const next of this.targets(at)) {
        if (next === to) {
          const path: string[] = [to];
          for (let p: string | undefined = at; p !== undefined; p = came.get(p)) path.unshift(p);
          return path;
        }
        if (!came.has(next) && came.size < mostFiles) {
          came.set(next, at);
          queue.push(next);
        }
      }
    }
    return undefined;
  }

  private depth(from: string, seen: Set<string>): number {
    let layer = [from];
    for (let depth = 1; ; depth++) {
      for (const uri of layer) seen.add(uri);
      layer = layer.flatMap((uri) => this.targets(uri)).filter((u) => !seen.has(u));
      if (layer.length === 0 || depth > deepestUse) return depth;
    }
  }

  private targets(uri: string): readonly string[] {
    return this.shape(uri)?.uses.flatMap((u) => (u.target === undefined ? [] : [u.target])) ?? [];
  }

  /** All files drawn in by one, itself left out. */
  private closure(uri: string): readonly string[] {
    const found = new Set<string>([uri]);
    const queue = [uri];
    for (let at = queue.pop(); at !== undefined && found.size < mostFiles; at = queue.pop()) {
      for (const next of this.targets(at)) {
        if (found.has(next)) continue;
        found.add(next);
        queue.push(next);
      }
    }
    found.delete(uri);
    return [...found];
  }

  private forget(uri: string): void {
    for (const one of [uri, ...this.dependents(uri)]) {
      this.shapes.delete(one);
      this.files.delete(one);
      this.checks.delete(one);
    }
    this.hangsOn.delete(uri);
  }
}
