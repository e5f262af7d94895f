import type { Span } from '@cribwright/syntax/internal';
import { plain, type Vector, vectorOf } from '@cribwright/units';
import type { BoundBlock, Declaration } from '../bound/bound-file.js';
import type { Kind } from '../kind/kind.js';
import { parameterKinds } from '../phrase/match-arguments.js';
import type { NameScope } from '../phrase/scope.js';
import type { FileShape } from './draft.js';
import type { LetVectors } from './let-vectors.js';

/** What a file can see beyond itself, nearest first. */
export interface Surroundings {
  /** Shapes of the files that it uses, in order, then those always in scope. */
  readonly seen: readonly FileShape[];
  shapeOf(uri: string): FileShape | undefined;
  seenBy(uri: string): readonly FileShape[];
  /** A library or loaded file, as `use` would name it, that declares this. */
  elsewhere(name: string, kinds: readonly Kind[]): string | undefined;
  readonly rules: ReadonlySet<string>;
}

/** Names at the top of a file and of those that it sees. */
export function findAtTop(
  shape: FileShape,
  seen: readonly FileShape[],
  name: string,
  kinds: readonly Kind[] | undefined,
) {
  for (const file of [shape, ...seen]) {
    const found = file.names
      .get('file')
      ?.get(name)
      ?.find((d) => !kinds || kinds.includes(d.kind));
    if (found) return found;
  }
  return undefined;
}

/** The type that a block is of, or extends. Resolved from the names at the top of its own file. */
export function typeOf(block: BoundBlock, around: Surroundings): BoundBlock | undefined {
  const shape = around.shapeOf(block.uri);
  const type = block.schema.head.type;
  const term = typeTermOf(block);
  if (!shape || !type || !term) return undefined;
  return findAtTop(shape, around.seenBy(block.uri), term.text, type.kinds)?.block;
}

const typeTermOf = (block: BoundBlock): { readonly text: string } | undefined =>
  'typeTerms' in block ? (block.typeTerms as readonly { text: string }[])[0] : undefined;

/** A vehicle and the types it extends, nearest first. A ring of types ends where it closes. */
export function typeChain(block: BoundBlock | undefined, around: Surroundings): readonly BoundBlock[] {
  const chain: BoundBlock[] = [];
  for (let b = block; b && !chain.includes(b) && chain.length < 32; b = typeOf(b, around)) chain.push(b);
  return chain;
}

/** Before the first `use`, else before the first statement: after the comments that a file starts with. */
const placeForUse = ({ uses, statements }: FileShape): Span => {
  const start = uses[0]?.span.start ?? statements[0]?.start ?? 0;
  return { start, end: start };
};

/** Parts that a type says it does not have. */
export const withoutParts = ({ properties }: BoundBlock): readonly string[] =>
  properties.flatMap((p) =>
    p.schema.key === 'no' ? p.terms.slice(1).flatMap((t) => (t.kind === 'word' ? [t.text] : [])) : [],
  );

interface GroupMember {
  readonly declaration: Declaration;
  readonly shown: string;
}

/** What names mean inside one block. */
export class BlockScope implements NameScope {
  readonly uri: string;
  readonly rules: ReadonlySet<string>;
  readonly vehicle: Declaration | undefined;
  readonly openParts: boolean;
  readonly usePlace: Span;
  private readonly locals: readonly BoundBlock[];
  /** Asked for at every name of the block, and worked out once. */
  private inGroupsOf: readonly GroupMember[] | undefined;

  constructor(
    private readonly shape: FileShape,
    private readonly around: Surroundings,
    block: BoundBlock | undefined,
    private readonly lets: LetVectors,
  ) {
    this.uri = shape.uri;
    this.rules = around.rules;
    this.usePlace = placeForUse(shape);
    const chain: BoundBlock[] = [];
    for (let b = block; b; b = b.parent) chain.push(b);
    const asked = chain.find((b) => b.schema.keyword === 'exercise');
    const about = asked && planOfExercise(asked, shape, around);
    this.locals = [...chain.filter((b) => b.schema.ownScope), ...(about ? [about] : [])];
    const enclosing = chain.find(
      (b) => b.schema.keyword === 'vehicle' || b.schema.keyword === 'vehicle type',
    );
    this.vehicle = enclosing?.declaration ?? mainVehicle(this.locals[0]);
    this.openParts = !this.vehicle && this.locals[0]?.schema.keyword === 'pattern';
  }

  find(name: string, kinds: readonly Kind[]): Declaration | undefined {
    for (const local of this.locals) {
      const found = this.shape.names
        .get(local)
        ?.get(name)
        ?.find((d) => kinds.includes(d.kind));
      if (found) return found;
    }
    return this.inGroups(name, kinds) ?? findAtTop(this.shape, this.around.seen, name, kinds);
  }

  findAny(name: string): Declaration | undefined {
    for (const local of this.locals) {
      const found = this.namesIn(local)?.get(name)?.[0];
      if (found) return found;
    }
    return findAtTop(this.shape, this.around.seen, name, undefined);
  }

  names(kinds: readonly Kind[]): readonly Declaration[] {
    const found = new Map<string, Declaration>();
    const add = (list: Iterable<Declaration>) => {
      for (const d of list) if (kinds.includes(d.kind) && !found.has(d.name)) found.set(d.name, d);
    };
    for (const local of this.locals) for (const same of this.namesIn(local)?.values() ?? []) add(same);
    for (const { declaration, shown } of this.groupMembers()) {
      if (kinds.includes(declaration.kind) && !found.has(shown))
        found.set(shown, { ...declaration, name: shown });
    }
    for (const file of [this.shape, ...this.around.seen])
      for (const same of file.names.get('file')?.values() ?? []) add(same);
    return [...found.values()];
  }

  part(vehicle: Declaration | undefined, name: string): Declaration | undefined {
    if (vehicle) return byName(this.parts(vehicle), name);
    const main = byName(this.parts(undefined), name);
    if (main) return main;
    const others = this.names(['vehicle']).flatMap((v) => byName(this.parts(v), name) ?? []);
    return others.length === 1 ? others[0] : undefined;
  }

  parts(vehicle: Declaration | undefined): readonly Declaration[] {
    return this.members(vehicle, 'part');
  }

  typeUnknown(vehicle: Declaration | undefined): boolean {
    const last = typeChain((vehicle ?? this.vehicle)?.block, this.around).at(-1);
    return last !== undefined && typeTermOf(last) !== undefined && !typeOf(last, this.around);
  }

  axle(vehicle: Declaration | undefined, name: string): Declaration | undefined {
    return this.axles(vehicle).find((d) => d.name === name);
  }

  axles(vehicle: Declaration | undefined): readonly Declaration[] {
    return this.members(vehicle, 'axle');
  }

  vectorOf(declaration: Declaration): Vector | undefined {
    if (declaration.kind === 'value') return this.lets.vectorOf(declaration, this);
    const parameter = declaration.block?.parameters.find((p) => p.name === declaration.name);
    const kind = parameterKinds[parameter?.typeWord ?? ''];
    if (kind?.kind !== 'quantity') return undefined;
    const dimension = kind.rule.dimensions[0];
    return dimension ? vectorOf(dimension) : plain;
  }

  elsewhere(name: string, kinds: readonly Kind[]): string | undefined {
    return this.around.elsewhere(name, kinds);
  }

  withoutPart(vehicle: Declaration | undefined, name: string): Declaration | undefined {
    const chain = typeChain((vehicle ?? this.vehicle)?.block, this.around);
    return chain.find((b) => withoutParts(b).includes(name))?.declaration;
  }

  private namesIn(local: BoundBlock): ReadonlyMap<string, readonly Declaration[]> | undefined {
    return (local.uri === this.uri ? this.shape : this.around.shapeOf(local.uri))?.names.get(local);
  }

  private members(vehicle: Declaration | undefined, kind: Kind): readonly Declaration[] {
    const found = new Map<string, Declaration>();
    const gone = new Set<string>();
    for (const block of typeChain((vehicle ?? this.vehicle)?.block, this.around)) {
      for (const b of block.blocks) {
        if (b.declaration?.kind === kind && !found.has(b.declaration.name) && !gone.has(b.declaration.name))
          found.set(b.declaration.name, b.declaration);
      }
      if (kind === 'part') for (const name of withoutParts(block)) gone.add(name);
    }
    return [...found.values()];
  }

  /** Supports that patterns put into the plan: `A`, or `East.A` where the group has a name. */
  private inGroups(name: string, kinds: readonly Kind[]): Declaration | undefined {
    return this.groupMembers().find((m) => m.shown === name && kinds.includes(m.declaration.kind))
      ?.declaration;
  }

  private groupMembers(): readonly GroupMember[] {
    this.inGroupsOf ??= this.allGroupMembers();
    return this.inGroupsOf;
  }

  private allGroupMembers(): readonly GroupMember[] {
    const plan = this.locals.find((l) => l.schema.keyword === 'plan');
    return (plan?.properties ?? []).flatMap((line) => {
      if (line.schema.key !== 'pattern use') return [];
      const [first, second] = line.terms;
      const pattern = first && findAtTop(this.shape, this.around.seen, first.text, ['pattern'])?.block;
      const group = second?.kind === 'word' ? `${second.text}.` : '';
      return (pattern?.blocks ?? []).flatMap((b) =>
        b.declaration ? [{ declaration: b.declaration, shown: `${group}${b.declaration.name}` }] : [],
      );
    });
  }
}

/** The plan that an exercise is about: the one it names, else the only one of its lesson. */
export function planOfExercise(
  exercise: BoundBlock,
  shape: FileShape,
  around: Surroundings,
): BoundBlock | undefined {
  const named = exercise.properties.find((p) => p.schema.key === 'plan')?.terms[1];
  const inLesson = exercise.parent?.blocks.filter((b) => b.schema.keyword === 'plan') ?? [];
  if (!named) return inLesson.length === 1 ? inLesson[0] : undefined;
  return (
    inLesson.find((b) => b.name === named.text) ??
    findAtTop(shape, around.seenBy(shape.uri), named.text, ['plan'])?.block
  );
}

const mainVehicle = (plan: BoundBlock | undefined): Declaration | undefined =>
  plan?.blocks.find((b) => b.schema.keyword === 'vehicle')?.declaration;

/** By its name, or by the singular or plural of it: `joist` for `joists`. */
const byName = (list: readonly Declaration[], name: string): Declaration | undefined =>
  list.find((d) => d.name === name) ?? list.find((d) => d.name === `${name}s` || `${d.name}s` === name);
