import { unchecked } from '@cribwright/engine';
import type { BoundFile } from '@cribwright/language';
import { library } from '@cribwright/language';
import type { FileShape, Kind, Surroundings } from '@cribwright/language/internal';
import {
  bindFile,
  type ElaboratedBefore,
  type ElaboratedFile,
  earlier,
  elaborate,
  planBlocks,
  shapeFile,
} from '@cribwright/language/internal';
import type { Figure } from '@cribwright/messages';
import { rules } from '@cribwright/rules';
import { append } from '@cribwright/syntax/internal';
import { URI } from 'vscode-uri';
import type { AnalysisReply } from '../reply/plan-reply.js';
import { Analyses } from './analyses.js';
import { checkedOf, stateOf, textProblems } from './check.js';
import { type Checked, nothingChecked, type Pending } from './checked.js';
import { libraryUri, pathFrom, prelude, resolveUse, rootOf } from './files.js';
import { Texts } from './texts.js';
import { withUnread } from './unread.js';
import { deepestUse, mostFiles, mostUses, Uses } from './uses.js';

import type { Workspace, WorkspaceOptions } from './workspace.js';

/** Names beyond these are not looked through for one that was meant. */
const mostListed = 200;

const ruleIds: ReadonlySet<string> = new Set(rules.map((r) => r.id));

/** The files of a workspace: what was read, bound and checked so far, and what an edit makes of it. */
export class LoadedFiles implements Workspace {
  private readonly texts: Texts;
  private readonly uses: Uses;
  private readonly analyses: Analyses;
  private readonly shapes = new Map<string, FileShape>();
  private readonly files = new Map<string, BoundFile>();
  private readonly made = new Map<string, ElaboratedFile>();
  private readonly checks = new Map<string, Checked>();
  /** As each file was bound last, and all that it saw then. */
  private readonly last = new Map<string, { readonly shape: FileShape; readonly seen: readonly unknown[] }>();
  /** The same of the plans made of it. */
  private readonly lastMade = new Map<string, ElaboratedBefore & { readonly seen: readonly unknown[] }>();

  /** Plan files by folder, listed where a `use` line leads nowhere. */
  private readonly listed = new Map<string, readonly string[]>();

  constructor(private readonly options: WorkspaceOptions) {
    this.texts = new Texts(options.files, (uri) => this.forget(uri));
    this.uses = new Uses({
      get folders() {
        return options.folders;
      },
      there: (uri) => this.texts.of(uri) !== undefined,
      unreadable: (uri) => this.texts.unreadable(uri),
      shape: (uri) => this.shape(uri),
      beside: (uri) => this.listed.get(this.rootOf(uri)) ?? [],
    });
    this.analyses = new Analyses(options);
  }

  put(uri: string, text: string, version: number): void {
    if (this.texts.put(uri, text, version) === 'changed') return;
    const file = this.files.get(uri);
    if (file) this.files.set(uri, { ...file, version });
    const checked = this.checks.get(uri);
    if (checked) this.checks.set(uri, { ...checked, version });
  }

  drop(uri: string): void {
    this.last.delete(uri);
    this.lastMade.delete(uri);
    this.analyses.hold(uri, []);
    if (this.listed.size > 0) this.forgetListed();
    this.texts.drop(uri);
  }

  foldersChanged(): void {
    this.texts.forgetUnreadable();
  }

  async load(uri: string): Promise<void> {
    const seen = new Set([uri]);
    let lookups = 0;
    let lost = false;
    await this.texts.read(uri, this.rootOf(uri));
    // One file and one use line more than there may be are read: by those `Uses` tells that it is too many.
    for (let depth = 0, layer = [uri]; depth <= deepestUse && layer.length > 0; depth++) {
      const next: string[] = [];
      for (const one of layer) {
        for (const use of this.texts.usesOf(one).slice(0, mostFiles)) {
          if (seen.size > mostFiles + 1 || ++lookups > mostUses + 1) return;
          const there = await this.firstThere(one, use);
          lost ||= there.length === 0;
          for (const found of there) {
            if (seen.has(found)) continue;
            seen.add(found);
            next.push(found);
          }
        }
      }
      layer = next;
    }
    if (lost) await this.list(this.rootOf(uri));
  }

  bound(uri: string): BoundFile | undefined {
    const known = this.files.get(uri);
    if (known) return known;
    const shape = this.shape(uri);
    const text = this.texts.of(uri);
    if (!shape || !text) return undefined;
    const seen = this.seenAtAll(uri);
    const last = this.last.get(uri);
    const before = last && sameList(last.seen, seen) ? earlier(last.shape, shape) : undefined;
    const file = bindFile(shape, text.version, this.surroundings(uri), before);
    this.last.set(uri, { shape, seen });
    const rings = this.uses.rings(uri, shape);
    const whole = rings.length === 0 ? file : { ...file, problems: [...rings, ...file.problems] };
    this.files.set(uri, whole);
    return whole;
  }

  check(uri: string): Checked {
    const known = this.checks.get(uri);
    if (known && !this.isBehind(known)) return known;
    const file = this.bound(uri);
    if (!file) return nothingChecked(uri);
    const checked = checkedOf(file, this.elaborated(file), this.surroundings(uri), (plan, i) =>
      this.analyses.of(plan, placeOf(uri, i)),
    );
    this.checks.set(uri, checked);
    return checked;
  }

  /** Whether more is known by now, as where another file holds the same plan. */
  private isBehind({ pending, plans }: Checked): boolean {
    if (pending === undefined) return false;
    return plans.some(({ plan, analysis }) => (this.analyses.known(plan) ?? analysis) !== analysis);
  }

  *prepare(uri: string): Generator<void> {
    if (this.checks.has(uri)) return;
    // Asked anew after each step: an edit may have come between.
    for (let i = 0; i < this.plansOf(uri).length; i++) {
      const plan = this.plansOf(uri)[i]?.plan;
      if (plan) this.analyses.of(plan, placeOf(uri, i));
      yield;
    }
  }

  *complete(uri: string, wanted: Pending): Generator<void, boolean> {
    let worked = false;
    // Asked anew after each step: an edit may have come between.
    const advance = (i: number) => {
      const plan = this.plansOf(uri)[i]?.plan;
      return plan !== undefined && this.analyses.advance(plan, placeOf(uri, i), wanted);
    };
    for (let i = 0; i < this.plansOf(uri).length; i++) {
      while (advance(i)) {
        worked = true;
        yield;
      }
    }
    if (worked) this.checks.delete(uri);
    return worked;
  }

  layout(uri: string): AnalysisReply | undefined {
    const file = this.checks.has(uri) ? undefined : this.bound(uri);
    if (!file) return undefined;
    const made = this.elaborated(file);
    if (!made.plans.some(({ plan }, i) => this.analyses.waits(plan, placeOf(uri, i)))) return undefined;
    const errors = textProblems(file, made).filter((p) => p.severity === 'error').length;
    return {
      uri,
      version: file.version,
      state: stateOf(errors, made.plans.length),
      plans: made.plans.map((one) => ({
        plan: one.plan,
        analysis: unchecked(one.plan),
        places: {},
        partial: one.partial,
        unread: one.unread,
      })),
      pending: true,
    };
  }

  isSlow(uri: string): boolean {
    return this.made.get(uri)?.plans.some((_, i) => this.analyses.isSlow(placeOf(uri, i))) ?? false;
  }

  valuesAt(uri: string, nameStart: number): readonly Figure[] {
    const file = this.bound(uri);
    return file ? this.elaborated(file).valuesAt(nameStart) : [];
  }

  dependents(uri: string): readonly string[] {
    return this.uses.dependents(uri);
  }

  uris(): readonly string[] {
    return this.texts.uris();
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

  private plansOf(uri: string): ElaboratedFile['plans'] {
    const file = this.bound(uri);
    return file ? this.elaborated(file).plans : [];
  }

  private elaborated(file: BoundFile): ElaboratedFile {
    const known = this.made.get(file.uri);
    if (known) return known;
    // What other files say is read through their bound lines, so they must be bound too.
    if (file.lets.length > 0 || planBlocks(file.blocks).length > 0)
      for (const other of [...this.uses.closure(file.uri), ...prelude.map(libraryUri)]) this.bound(other);
    const seen = this.seenAtAll(file.uri);
    const last = this.lastMade.get(file.uri);
    const before = last && sameList(last.seen, seen) ? last : undefined;
    const alone = elaborate(file, this.surroundings(file.uri), before);
    this.lastMade.set(file.uri, { file, parts: alone.parts, seen });
    const made = withUnread(file, alone, {
      bound: (uri) => this.bound(uri),
      targets: (uri) => this.uses.targets(uri),
      always: prelude.map(libraryUri),
    });
    this.made.set(file.uri, made);
    this.analyses.hold(
      file.uri,
      made.plans.map(({ plan }) => plan),
    );
    return made;
  }

  private async firstThere(from: string, use: string): Promise<readonly string[]> {
    const resolved = resolveUse(from, use, this.options.folders);
    if (resolved.kind !== 'candidates') return [];
    for (const candidate of resolved.uris) {
      if (await this.texts.read(candidate, this.rootOf(from))) return [candidate];
      // It is there: one farther up is not what was meant.
      if (this.texts.unreadable(candidate) !== undefined) break;
    }
    return [];
  }

  private async list(folder: string): Promise<void> {
    if (this.listed.has(folder)) return;
    const found = (await this.options.files.list?.(folder, mostListed)) ?? [];
    this.listed.set(folder, found.map((uri) => URI.parse(uri).toString()).sort());
  }

  /** A file came or went: what a path that leads nowhere may have meant is another. */
  private forgetListed(): void {
    this.listed.clear();
    for (const [uri, { uses }] of [...this.shapes])
      if (uses.some(({ target }) => target === undefined)) this.forget(uri);
  }

  private rootOf(uri: string): string {
    return rootOf(uri, this.options.folders);
  }

  private seenBy(uri: string): readonly FileShape[] {
    const all = [...this.uses.targets(uri), ...prelude.map(libraryUri)].filter((u) => u !== uri);
    return [...new Set(all)].flatMap((u) => this.shape(u) ?? []);
  }

  /** Every other file that its lines may hang on. */
  private seenAtAll(uri: string): readonly unknown[] {
    return [...this.uses.closure(uri), ...prelude.map(libraryUri)].map((u) => this.shape(u));
  }

  private elsewhere(from: string, name: string, kinds: readonly Kind[]): string | undefined {
    for (const file of Object.keys(library)) {
      const uri = libraryUri(file);
      const same = uri === from ? undefined : this.shape(uri)?.names.get('file')?.get(name);
      if (same?.some((d) => kinds.includes(d.kind))) return `library/${file}`;
    }
    const other = this.texts.uris().find(
      (uri) =>
        uri !== from &&
        this.shape(uri)
          ?.names.get('file')
          ?.get(name)
          ?.some((d) => kinds.includes(d.kind)),
    );
    return other === undefined ? undefined : pathFrom(from, other);
  }

  private shape(uri: string): FileShape | undefined {
    const known = this.shapes.get(uri);
    if (known) return known;
    const text = this.texts.of(uri)?.text;
    const parsed = this.texts.parsed(uri);
    if (text === undefined || !parsed) return undefined;
    const shape = shapeFile(uri, text, parsed);
    this.shapes.set(uri, shape);
    append(shape.problems, this.uses.resolve(shape));
    return shape;
  }

  private forget(uri: string): void {
    for (const one of [uri, ...this.dependents(uri)]) {
      this.shapes.delete(one);
      this.files.delete(one);
      this.made.delete(one);
      this.checks.delete(one);
    }
    this.uses.forget(uri);
  }
}

const sameList = (a: readonly unknown[], b: readonly unknown[]): boolean =>
  a.length === b.length && a.every((one, i) => one === b[i]);

/** By which the analyses know a plan from one edit to the next. */
const placeOf = (uri: string, index: number): string => `${uri}#${index}`;
