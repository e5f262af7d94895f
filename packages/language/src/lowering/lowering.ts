import type { SourceNote } from '@cribwright/messages';
import { name } from '@cribwright/messages';
import type { Interval, Ref, Timber } from '@cribwright/model';
import type { Span } from '@cribwright/syntax/internal';
import { type Dimension, sameVector, vectorOf, weightOf } from '@cribwright/units';
import type { Surroundings } from '../binding/file-scope.js';
import { inheritedBlocks } from '../binding/inherited-blocks.js';
import type { PropertySchema } from '../bound/block-schema.js';
import type { BoundBlock, BoundProperty, Declaration, Reference } from '../bound/bound-file.js';
import { hangsOnNoName, outOfBounds } from '../phrase/check-quantity.js';
import { type Amount, asForce, evaluate, hasMalformed, type Values } from '../phrase/evaluate.js';
import { read } from '../phrase/match.js';
import { fits } from '../phrase/measure.js';
import type { WrittenQuantity } from '../phrase/pattern.js';
import { type LanguageProblem, problem } from '../problems/problem.js';
import { amountOfName, type Names } from './amount-of-name.js';
import type { TextPlace } from './elaborated.js';
import type { Expansion } from './expansion.js';
import { outermost } from './expansion.js';
import { noteOf, type SourceValues } from './source-note.js';

/** A line that was read, with the block it stands in. */
export interface PropertyValue<T> {
  readonly values: T;
  readonly line: BoundProperty;
  readonly block: BoundBlock;
}

/**
 * What is shared while one plan is made: the places of its elements, the problems met, and the reading of lines.
 * Everything that could not be read marks the plan as partial, so that it never looks whole.
 */
export class Lowering {
  readonly places = new Map<string, TextPlace>();
  readonly problems: LanguageProblem[] = [];
  /** Timbers of a length: most supports of a plan are of the same. */
  readonly timbers = new Map<string, Timber>();
  /** How often something could not be read so far. */
  misses = 0;
  /** Set once the vehicles are there, for figures that calculations ask for. */
  figures: Values['figureOf'] = () => undefined;
  private readonly asked = new Set<string>();

  get partial(): boolean {
    return this.misses > 0;
  }

  /** Notes that something could not be read. What was missed once stays missed. */
  set partial(missed: boolean) {
    if (missed) this.misses++;
  }

  constructor(
    readonly around: Surroundings,
    readonly plan: BoundBlock,
  ) {}

  /** The line of a block, or of the blocks it inherits from, nearest first. */
  propertyOf<T>(
    blocks: BoundBlock | readonly BoundBlock[],
    schema: PropertySchema<T>,
  ): PropertyValue<T> | undefined {
    for (const block of list(blocks)) {
      const found = this.propertiesOf(block, schema)[0];
      if (found) return found;
    }
    return undefined;
  }

  propertiesOf<T>(block: BoundBlock, schema: PropertySchema<T>): readonly PropertyValue<T>[] {
    const found: PropertyValue<T>[] = [];
    for (const line of block.properties) {
      if (line.schema !== schema) continue;
      if (!line.match || line.match.problems.some((p) => p.severity === 'error')) this.partial = true;
      if (line.match) found.push({ values: read(schema, line.match), line, block });
    }
    return found;
  }

  /** A block with what it inherits: `[own, base, base of base]`. */
  chain(block: BoundBlock): readonly BoundBlock[] {
    return [block, ...inheritedBlocks(block, this.around)];
  }

  place(ref: Ref, uri: string, span: Span, more: Partial<TextPlace> = {}): void {
    const key = ref.property === undefined ? ref.element : `${ref.element}#${ref.property}`;
    const text = this.around.shapeOf(uri)?.text ?? '';
    if (!this.places.has(key)) this.places.set(key, { uri, span, text, ...more });
  }

  /** Places for a block and for each of its lines, under its element. */
  placeBlock(element: string, block: BoundBlock): void {
    this.place({ element }, block.uri, block.headSpan, { block });
    for (const line of block.properties) this.placeLine(element, line, block.uri);
  }

  placeLine(element: string, line: BoundProperty, uri: string): void {
    const from = line.keySpan.end;
    const text = this.around.shapeOf(uri)?.text ?? '';
    const gap = /^[ \t]*/.exec(text.slice(from))?.[0].length ?? 0;
    const value = { start: Math.min(from + gap, line.span.end), end: line.span.end };
    this.place({ element, property: line.schema.key }, uri, line.span, { value });
  }

  /** Tells of something that the checks will have to do without. */
  report(problem: LanguageProblem, uri: string, at?: Expansion): void {
    this.partial = true;
    const here = uri === this.plan.uri;
    if (here && !at?.span) this.problems.push(problem);
    else this.problems.push({ ...problem, span: at?.span ?? this.plan.headSpan, fixes: [] });
  }

  values(within: Expansion): Values {
    const names = this.names(within);
    return { amountOf: (d) => amountOfName(d, names), figureOf: names.figureOf };
  }

  names(within: Expansion): Names {
    return { around: this.around, within, figureOf: (e) => this.figure(e), known: new Map() };
  }

  /** A figure that hangs on itself in the end comes to nothing, and is told where it is used. */
  private figure(e: Parameters<Values['figureOf']>[0]): Amount | undefined {
    const key = `${e.subject.text} ${e.part?.text ?? ''} ${e.figure}`;
    if (this.asked.has(key)) return undefined;
    this.asked.add(key);
    const amount = this.figures(e);
    this.asked.delete(key);
    return amount;
  }

  /** The ends of a quantity in SI, a mass as its weight. `undefined` where it cannot be worked out: that is told. */
  interval(
    q: WrittenQuantity | undefined,
    within: Expansion,
    uri: string,
    as?: Dimension,
  ): Interval | undefined {
    if (!q) return undefined;
    const amount = this.amount(q, within, uri);
    if (!amount) return undefined;
    if (this.isOutOfBounds(q, amount, within, uri)) return undefined;
    const weight = as === 'force' || (as === undefined && q.dimension === 'force') ? asForce(amount) : amount;
    // What has the wrong dimension was told where it stands; it is never passed on as a number.
    const due = as ?? (q.dimension === 'mass' ? 'force' : q.dimension);
    if (as === undefined && q.dimension === 'mass') return plainEnds(asForce(amount));
    if (!fits(weight.vector, due) && !(due === 'ratio' && fits(weight.vector, 'angle'))) {
      this.partial = true;
      return undefined;
    }
    return plainEnds(weight);
  }

  /** What a quantity comes to, of whatever dimension. `undefined` where it cannot be worked out: that is told. */
  private amount(q: WrittenQuantity, within: Expansion, uri: string): Amount | undefined {
    const amount = evaluate(q.expression, this.values(within));
    if (amount) return amount;
    this.partial = true;
    // A malformed number was told where it stands.
    if (hasMalformed(q.expression)) return undefined;
    const text = this.around.shapeOf(uri)?.text.slice(q.span.start, q.span.end) ?? '';
    this.report(
      problem('value-unknown', q.span, {
        text: name(text),
      }),
      uri,
      within,
    );
    return undefined;
  }

  /** What is out of bounds is never passed on. Where a name brought it, only now can that be told. */
  private isOutOfBounds(q: WrittenQuantity, amount: Amount, within: Expansion, uri: string): boolean {
    // What has the wrong dimension was told where it stands.
    if (!q.rule.dimensions.some((d) => fits(amount.vector, d))) return false;
    const file = this.around.shapeOf(uri)?.text ?? '';
    const [wrong] = outOfBounds(q.expression, amount, q.rule, (e) => file.slice(e.span.start, e.span.end));
    if (!wrong) return false;
    this.partial = true;
    if (!hangsOnNoName(q.expression)) this.report(wrong, uri, within);
    return true;
  }

  /** A single value in SI. A range where one value is due is told, and not used. */
  number(q: WrittenQuantity | undefined, within: Expansion, uri: string, as?: Dimension): number | undefined {
    const ends = this.interval(q, within, uri, as);
    if (!ends || !q) return undefined;
    if (ends.low === ends.high) return ends.low;
    this.report(problem('range-unexpected', q.span, {}), uri, within);
    return undefined;
  }

  /** A grade as rise over run, said as a share or as an angle. */
  slope(q: WrittenQuantity | undefined, within: Expansion, uri: string): number | undefined {
    const amount = q && this.amount(q, within, uri);
    if (!q || !amount || this.isOutOfBounds(q, amount, within, uri)) return undefined;
    if (amount.low !== amount.high) {
      this.report(problem('range-unexpected', q.span, {}), uri, within);
      return undefined;
    }
    if (!fits(amount.vector, 'ratio') && !fits(amount.vector, 'angle')) {
      this.partial = true;
      return undefined;
    }
    return sameVector(amount.vector, vectorOf('angle')) ? Math.tan(amount.low) : amount.low;
  }

  /** A density in kg/m³, written as one or as a weight for each volume. */
  density(q: WrittenQuantity | undefined, within: Expansion, uri: string): Interval | undefined {
    const amount = q && this.amount(q, within, uri);
    if (!q || !amount || this.isOutOfBounds(q, amount, within, uri)) return undefined;
    if (fits(amount.vector, 'density')) return plainEnds(amount);
    if (!fits(amount.vector, 'unit weight')) {
      this.partial = true;
      return undefined;
    }
    return { low: amount.low / weightOf(1), high: amount.high / weightOf(1) };
  }

  /** The source of a value: its own, else its block's, else what an author states. */
  source(values: SourceValues, blocks: readonly BoundBlock[]): SourceNote {
    return noteOf(values) ?? this.blockSource(blocks);
  }

  blockSource(blocks: readonly BoundBlock[]): SourceNote {
    for (const block of blocks) {
      for (let b: BoundBlock | undefined = block; b; b = b.parent) {
        const line = b.properties.find((p) => p.schema.key === 'source' && p.match);
        const note = line?.match && noteOf(line.match.values as SourceValues);
        if (note) return note;
      }
    }
    return blocks[0]?.uri.startsWith('cribwright:') ? { kind: 'unknown' } : { kind: 'stated' };
  }

  /** What a reference stands for once the parameters of a pattern are filled in. */
  resolve(
    reference: Reference | undefined,
    within: Expansion,
  ): { readonly target: Declaration; readonly name: string } | undefined {
    const target = reference?.target;
    if (!reference || !target) {
      if (reference) this.partial = true;
      return undefined;
    }
    if (target.kind !== 'parameter') {
      const inPattern = target.scope?.schema.keyword === 'pattern';
      const own = inPattern && within.prefix !== '' && !reference.text.includes('.');
      return {
        target,
        name: own
          ? `${within.prefix}${target.name}`
          : reference.text.includes('.')
            ? reference.text
            : target.name,
      };
    }
    const value = within.given.get(target.name)?.value;
    return value?.kind === 'reference' ? this.resolve(value.reference, within.outer ?? outermost) : undefined;
  }

  /** The id of the element that a reference means: `crib/A`. */
  idOf(reference: Reference | undefined, within: Expansion): string | undefined {
    const found = this.resolve(reference, within);
    const prefix = found?.target.block?.schema.element;
    return found && prefix ? `${prefix}/${found.name}` : undefined;
  }
}

const list = (blocks: BoundBlock | readonly BoundBlock[]): readonly BoundBlock[] =>
  Array.isArray(blocks) ? (blocks as readonly BoundBlock[]) : [blocks as BoundBlock];

const plainEnds = ({ low, high }: Interval): Interval => ({ low, high });
