import type { LanguageProblem } from '@cribwright/language';
import { library } from '@cribwright/language';
import type { FileShape } from '@cribwright/language/internal';
import { problem, problemMessage, replace } from '@cribwright/language/internal';
import { count, name } from '@cribwright/messages';
import type { Span } from '@cribwright/syntax/internal';
import { closest } from '@cribwright/units';
import { fileName, pathFrom, resolveUse, type Unreadable } from './files.js';

/** How deep files may use each other: a count of files. */
export const deepestUse = 16;
/** How many files one file may draw in. */
export const mostFiles = 400;
/** How many `use` lines all of them may have together. */
export const mostUses = 2_000;
/** Rings that are told by name in one file. Each costs a search. */
const mostRings = 20;

/** What `Uses` asks of the files around it. */
export interface UsesSource {
  readonly folders: readonly string[];
  there(uri: string): boolean;
  /** Why a file that is there was not read. */
  unreadable(uri: string): Unreadable['unreadable'] | undefined;
  shape(uri: string): FileShape | undefined;
  /** Plan files in the folder that a file belongs to, in one order always. */
  beside(uri: string): readonly string[];
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
      if (resolved.kind === 'outside') problems.push(outside(use));
      else if (resolved.kind === 'half a character')
        problems.push(problem('use-unreadable--half', use.pathSpan, {}));
      else if (resolved.kind === 'not crib')
        problems.push(problem('use-not-crib', use.pathSpan, { path: name(use.path) }, withEnding(use)));
      else {
        for (const candidate of resolved.uris) {
          on.add(candidate);
          if (this.source.unreadable(candidate) !== undefined) break;
          if (!this.source.there(candidate)) continue;
          use.target = candidate;
          break;
        }
        if (use.target === shape.uri) problems.push(problem('use-itself', use.pathSpan, {}));
        else if (use.target !== undefined && used.has(use.target)) {
          problems.push(
            problem('use-twice', use.pathSpan, { path: name(use.path) }, { severity: 'warning' }),
          );
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
    const { files, deepest, uses } = this.reach(uri);
    const crowded = files.length > mostFiles || uses > mostUses;
    let rings = 0;
    for (const use of shape.uses.slice(0, mostFiles)) {
      const resolved = use.target === undefined && resolveUse(uri, use.path, this.source.folders);
      if (resolved && resolved.kind === 'candidates')
        problems.push(this.notFound(uri, use.path, use.pathSpan, resolved.uris));
      if (use.target === undefined || use.target === uri) continue;
      const path = rings < mostRings ? this.pathTo(use.target, uri) : undefined;
      if (path) {
        rings++;
        const names = [uri, ...path].map(fileName).join(' → ');
        problems.push(problem('use-cycle', use.pathSpan, { path: name(names) }, { severity: 'warning' }));
      }
      if (crowded || (deepest > deepestUse && this.depth(use.target, uri) > deepestUse))
        problems.push(tooMany(use.pathSpan));
    }
    return problems;
  }

  targets(uri: string): readonly string[] {
    return this.source.shape(uri)?.uses.flatMap((u) => (u.target === undefined ? [] : [u.target])) ?? [];
  }

  /** All files drawn in by one, itself left out. */
  closure(uri: string): readonly string[] {
    return this.reach(uri).files;
  }

  /** The files drawn in by one, each once and layer by layer, how many layers there are, and how many use lines. */
  private reach(uri: string) {
    const found = new Set([uri]);
    let uses = 0;
    let deepest = 0;
    for (let layer = [uri]; layer.length > 0 && found.size <= mostFiles + 1; deepest++) {
      const next = new Set<string>();
      for (const one of layer) {
        const targets = this.targets(one);
        uses += this.source.shape(one)?.uses.length ?? 0;
        for (const target of targets) if (!found.has(target)) next.add(target);
      }
      for (const target of next) found.add(target);
      layer = [...next];
    }
    found.delete(uri);
    return { files: [...found], deepest: deepest - 1, uses };
  }

  private notFound(from: string, path: string, span: Span, candidates: readonly string[]): LanguageProblem {
    for (const candidate of candidates) {
      const why = this.source.unreadable(candidate);
      if (why !== undefined) return problem(unreadable[why], span, { path: name(path) });
    }
    const names = Object.keys(library).map((n) => `library/${n}`);
    // Not those that happen to be loaded: what is said of a text must not hang on what was opened before.
    const others = [...new Set([...this.closure(from), ...this.source.beside(from)])]
      .filter((uri) => uri !== from)
      .map((uri) => pathFrom(from, uri));
    const sameName = [...names, ...others].find((p) => p.endsWith(`/${fileName(path)}`));
    const near = sameName ?? closest(path, names) ?? closest(path, others);
    return near === undefined
      ? problem('use-not-found', span, { path: name(path) })
      : problem(
          'use-not-found--near',
          span,
          { path: name(path), near: name(near) },
          {
            fixes: [replace(problemMessage('use-not-found--fix', { near: name(near) }), span, near)],
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

  /** Layers of files from one on, each file counted once, in the nearest layer. `without` is passed over. */
  private depth(from: string, without: string): number {
    const seen = new Set([without, from]);
    let layer: ReadonlySet<string> = new Set([from]);
    for (let depth = 1; ; depth++) {
      layer = new Set([...layer].flatMap((uri) => this.targets(uri)).filter((u) => !seen.has(u)));
      for (const uri of layer) seen.add(uri);
      if (layer.size === 0 || depth > deepestUse) return depth;
    }
  }
}

const unreadable = {
  outside: 'use-unreadable--outside',
  'not a file': 'use-unreadable--no-file',
  'not text': 'use-unreadable--no-text',
  'too large': 'use-unreadable--large',
  'looping link': 'use-unreadable--loop',
  'not permitted': 'use-unreadable--permission',
  failed: 'use-unreadable--failed',
} as const satisfies Record<Unreadable['unreadable'], string>;

type Path = { readonly path: string; readonly pathSpan: Span };

/** A path with the slashes of another system is only written in another way. */
function outside({ path, pathSpan }: Path): LanguageProblem {
  const near = path.replace(/\\+/g, '/');
  return near === path || /^(?:[a-z]:)?\//i.test(near)
    ? problem('use-outside', pathSpan, { path: name(path) }, changedPath(pathSpan, path, near))
    : problem('use-outside--slashes', pathSpan, { near: name(near) }, changedPath(pathSpan, path, near));
}
/** A path without its ending. */
const withEnding = ({ path, pathSpan }: Path) => changedPath(pathSpan, path, endedRight(path));

const endedRight = (path: string): string => {
  const inside = /^.*\.crib(?=\W*$)/.exec(path)?.[0];
  return inside ?? (/\.\w*$/.test(path) || path === '' ? path : `${path}.crib`);
};

const changedPath = (span: Span, path: string, near: string) =>
  near === path
    ? {}
    : { fixes: [replace(problemMessage('use-not-found--fix', { near: name(near) }), span, near)] };

const tooMany = (span: Span): LanguageProblem =>
  problem('use-too-many', span, { most: count(deepestUse), files: count(mostFiles) });
