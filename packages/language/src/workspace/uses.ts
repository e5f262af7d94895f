import { closest } from '@cribwright/units';
import type { FileShape } from '../binding/draft.js';
import { library } from '../generated/library.js';
import type { Span } from '../grammar/syntax.js';
import { type LanguageProblem, problem, replace } from '../problems/problem.js';
import { say } from '../problems/words.js';
import { fileName, resolveUse } from './files.js';

/** How deep files may use each other, and how many one file may draw in. */
export const deepestUse = 16;
export const mostFiles = 400;

/** What `Uses` asks of the files around it. */
export interface UsesSource {
  readonly folders: readonly string[];
  there(uri: string): boolean;
  shape(uri: string): FileShape | undefined;
  uris(): readonly string[];
}

/** Which file uses which, and what is wrong with that. */
export class Uses {
  /** Every file that a file's meaning hangs on, the ones looked for and not found too. */
  private readonly hangsOn = new Map<string, ReadonlySet<string>>();

  constructor(private readonly source: UsesSource) {}

  /** Finds the file that each `use` means. */
  resolve(shape: FileShape): readonly LanguageProblem[] {
    const problems: LanguageProblem[] = [];
    const on = new Set<string>();
    const used = new Set<string>();
    // What lies beyond is told by `rings`.
    for (const use of shape.uses.slice(0, mostFiles)) {
      const resolved = resolveUse(shape.uri, use.path, this.source.folders);
      if (resolved.kind === 'outside')
        problems.push(problem('use-outside', use.pathSpan, { path: use.path }, forwards(use)));
      else if (resolved.kind === 'not crib')
        problems.push(problem('use-not-crib', use.pathSpan, { path: use.path }, withEnding(use)));
      else {
        for (const candidate of resolved.uris) {
          on.add(candidate);
          if (!this.source.there(candidate)) continue;
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

  forget(uri: string): void {
    this.hangsOn.delete(uri);
  }

  /** Files that use it, directly or not. */
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

  /** Files that are not there, that come back to this one by the files they use, and chains that are too long. */
  rings(uri: string, shape: FileShape): readonly LanguageProblem[] {
    const problems: LanguageProblem[] = [];
    const beyond = shape.uses[mostFiles];
    if (beyond) problems.push(tooMany(beyond.pathSpan));
    const crowded = this.closure(uri).length >= mostFiles;
    for (const use of shape.uses.slice(0, mostFiles)) {
      const resolved = use.target === undefined && resolveUse(uri, use.path, this.source.folders);
      if (resolved && resolved.kind === 'candidates') problems.push(this.notFound(use.path, use.pathSpan));
      if (use.target === undefined || use.target === uri) continue;
      const path = this.pathTo(use.target, uri);
      if (path) {
        const names = [uri, ...path].map(fileName).join(' → ');
        problems.push(problem('use-cycle', use.pathSpan, { path: names }, { severity: 'warning' }));
      }
      if (crowded || this.depth(use.target, new Set([uri])) > deepestUse)
        problems.push(tooMany(use.pathSpan));
    }
    return problems;
  }

  targets(uri: string): readonly string[] {
    return this.source.shape(uri)?.uses.flatMap((u) => (u.target === undefined ? [] : [u.target])) ?? [];
  }

  /** All files drawn in by one, itself left out. */
  closure(uri: string): readonly string[] {
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

  private notFound(path: string, span: Span): LanguageProblem {
    const names = Object.keys(library).map((n) => `library/${n}`);
    const loaded = this.source.uris().slice(0, 200).map(fileName);
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
}

type Path = { readonly path: string; readonly pathSpan: Span };

/** A path with the slashes of another system. */
const forwards = ({ path, pathSpan }: Path) => changedPath(pathSpan, path, path.replace(/\\+/g, '/'));
/** A path without its ending. */
const withEnding = ({ path, pathSpan }: Path) =>
  changedPath(pathSpan, path, /\.\w*$/.test(path) || path === '' ? path : `${path}.crib`);

const changedPath = (span: Span, path: string, near: string) =>
  near === path ? {} : { fixes: [replace(say('use-not-found.fix', { near }), span, near)] };

const tooMany = (span: Span): LanguageProblem =>
  problem('use-too-many', span, { most: String(deepestUse), files: String(mostFiles) });
