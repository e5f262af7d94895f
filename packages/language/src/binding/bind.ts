import type { Message } from '@cribwright/engine';
import { matchLine } from '../phrase/matcher.js';
import { unknownName } from '../phrase/unknown-name.js';
import { type LanguageProblem, problem, replace, type TextFix } from '../problems/problem.js';
import { say } from '../problems/words.js';
import { barePattern } from './bare-pattern.js';
import type { BoundBlock, BoundFile } from './bound-file.js';
import type { Declaration, Reference } from './declaration.js';
import type { DraftBlock, DraftLine, FileShape } from './draft.js';
import { BlockScope, LetVectors, type Surroundings, typeChain, typeOf } from './file-scope.js';
import { expressionProblems } from './let-problems.js';
import { subjectOf } from './place-words.js';
import { type Earlier, nothingEarlier } from './rebind.js';
import { stopProblem } from './stop-problem.js';
import { unusedProblems } from './unused.js';

/**
 * Matches every line against its pattern and resolves every name. The shape is filled in and becomes the result.
 * Lines that are known from before an edit are taken over.
 */
export function bindFile(
  shape: FileShape,
  version: number,
  around: Surroundings,
  before: Earlier = nothingEarlier,
): BoundFile {
  const binder = new Binder(shape, around, before);
  binder.run();
  const problems = [...shape.problems, ...binder.problems];
  const file: BoundFile = {
    uri: shape.uri,
    version,
    text: shape.text,
    statements: shape.statements,
    uses: shape.uses,
    blocks: shape.blocks as readonly BoundBlock[],
    lets: shape.lets,
    declarations: shape.declarations,
    references: shape.references,
    problems,
    brokenLayout: shape.brokenLayout,
  };
  return { ...file, problems: inOrder([...problems, ...unusedProblems(file, around)]) };
}

class Binder {
  readonly problems: LanguageProblem[] = [];
  private readonly lets: LetVectors;
  private readonly around: Surroundings;

  constructor(
    private readonly shape: FileShape,
    around: Surroundings,
    private readonly before: Earlier,
  ) {
    this.around = around;
    this.lets = new LetVectors((d) => letLineOf(d, around));
  }

  run(): void {
    const scope = new BlockScope(this.shape, this.around, undefined, this.lets);
    for (const line of this.shape.lets) this.line(line, scope);
    for (const block of this.shape.blocks) this.block(block);
    this.reportRings();
  }

  private block(block: DraftBlock): void {
    const bound = block as BoundBlock;
    this.type(block);
    const scope = new BlockScope(this.shape, this.around, bound, this.lets);
    this.once(block);
    for (const line of block.properties) this.line(line, scope);
    this.missing(block);
    for (const inner of block.blocks) this.block(inner as DraftBlock);
  }

  /** The type after the colon, and a ring of types. */
  private type(block: DraftBlock): void {
    const term = block.typeTerms[0];
    const type = block.schema.head.type;
    if (!term || !type) return;
    const bound = block as BoundBlock;
    const target = typeOf(bound, this.around)?.declaration;
    const parameter = new BlockScope(this.shape, this.around, bound.parent, this.lets).find(term.text, [
      'parameter',
    ]);
    const reference: Reference = {
      uri: this.shape.uri,
      span: term,
      text: term.text,
      kinds: type.kinds,
      target: target ?? parameter,
    };
    block.type = reference;
    this.shape.references.push(reference);
    if (!reference.target) {
      const scope = new BlockScope(this.shape, this.around, undefined, this.lets);
      this.problems.push(unknownName(reference, scope, undefined));
      return;
    }
    const chain = typeChain(bound, this.around);
    const last = chain.at(-1);
    if (type.extends && last && typeOf(last, this.around) === bound) {
      const path = [...chain, bound].map((b) => b.name ?? '').join(' → ');
      this.problems.push(problem('type-cycle', term, { text: block.name ?? '', path }));
    }
  }

  /** A line that may stand once and stands twice. */
  private once(block: DraftBlock): void {
    const first = new Map<string, DraftLine>();
    for (const line of block.properties) {
      if (line.schema.repeatable || line.schema.key === 'step') continue;
      const before = first.get(line.schema.key);
      if (!before) {
        first.set(line.schema.key, line);
        continue;
      }
      this.problems.push(
        problem(
          'line-twice',
          line.keySpan,
          { what: line.schema.key, where: `in ${inSentence(subjectOf(block as BoundBlock))}` },
          {
            related: [{ uri: this.shape.uri, span: before.span, message: say('line-twice.first', {}) }],
            fixes: [replace(say('line-twice.fix', {}), line.span, '')],
          },
        ),
      );
    }
  }

  private line(line: DraftLine, scope: BlockScope): void {
    line.match = this.before(line);
    if (line.match) {
      this.shape.references.push(...line.match.references);
      this.letProblems(line, scope);
      return;
    }
    const bare = barePattern(line, scope);
    if (bare) {
      this.problems.push(bare);
      return;
    }
    const { match, stop } = matchLine({
      terms: line.terms,
      from: line.from,
      pattern: line.schema.phrase,
      scope,
      text: this.shape.text,
    });
    line.match = match;
    if (match) {
      this.shape.references.push(...match.references);
      this.problems.push(...match.problems);
      this.letProblems(line, scope);
    } else this.problems.push(...[stopProblem(line, stop, scope, this.shape.text) ?? []].flat());
  }

  private letProblems(line: DraftLine, scope: BlockScope): void {
    if (line.schema.key !== 'let' || !line.match || line.match.problems.length > 0) return;
    const declaration = this.shape.declarations.find((d) => d.span === line.span && d.kind === 'value');
    if (declaration) scope.vectorOf(declaration);
    this.problems.push(...expressionProblems(line, scope, this.shape.text));
  }

  /** Lines that must stand and do not, unless a type that it extends says them. */
  private missing(block: DraftBlock): void {
    const bound = block as BoundBlock;
    const inherited = inheritedBlocks(bound, this.around);
    const { bodySpan } = block;
    if (!bodySpan) return;
    const missing = block.schema.properties.filter(
      (p) =>
        p.required &&
        ![bound, ...inherited].some((b) => b.properties.some((line) => line.schema.key === p.key)),
    );
    const first = missing[0];
    if (!first) return;
    const at = { start: bodySpan.end - 1, end: bodySpan.end - 1 };
    const add = (title: Message, lines: readonly string[]): TextFix => ({
      title,
      edits: [{ span: at, text: insertion(this.shape.text, block, lines) }],
      safe: false,
    });
    const subject = subjectOf(bound);
    if (missing.length === 1) {
      const { key, example } = first;
      const fixes = [add(say('line-missing.fix', { key }), [example])];
      this.problems.push(problem('line-missing', block.headSpan, { subject, key, example }, { fixes }));
      return;
    }
    const keys = missing.map((p) => p.key).join(', ');
    const fixes = [
      add(
        say('line-missing.allFix', {}),
        missing.map((p) => p.example),
      ),
    ];
    this.problems.push(problem('line-missing.several', block.headSpan, { subject, keys }, { fixes }));
  }

  private reportRings(): void {
    const told = new Set<Declaration>();
    for (const ring of this.lets.rings) {
      const first = ring.find((d) => d.uri === this.shape.uri);
      if (!first || ring.some((d) => told.has(d))) continue;
      for (const d of ring) told.add(d);
      const path = [...ring, ring[0]].map((d) => d?.name ?? '').join(' → ');
      this.problems.push(problem('value-cycle', first.nameSpan, { text: first.name, path }));
    }
  }
}

const inSentence = (subject: string): string => subject.replace(/^This /, 'this ');

/** New last lines for a block, in the block's own indentation. */
function insertion(
  text: string,
  block: Pick<DraftBlock, 'bodySpan' | 'span' | 'properties' | 'blocks'>,
  lines: readonly string[],
): string {
  const end = (block.bodySpan?.end ?? 0) - 1;
  const lineStart = text.lastIndexOf('\n', end - 1) + 1;
  const ownLine = text.slice(lineStart, end).trim() === '';
  const indent = /^[ \t]*/.exec(text.slice(text.lastIndexOf('\n', block.span.start - 1) + 1))?.[0] ?? '';
  if (ownLine) return `${lines.map((line) => `  ${line}\n`).join(indent)}${indent}`;
  const empty = block.properties.length === 0 && block.blocks.length === 0;
  return `${empty ? ' ' : '; '}${lines.join('; ')} `;
}

/** The same block in the types that its vehicle extends: lines left out here may be said there. */
export function inheritedBlocks(block: BoundBlock, around: Surroundings): readonly BoundBlock[] {
  if (block.schema.head.type?.extends) return typeChain(block, around).slice(1);
  const vehicle = block.parent;
  if (!vehicle || !block.schema.within.includes('vehicle type')) return [];
  return typeChain(vehicle, around)
    .slice(1)
    .flatMap((type) =>
      type.blocks.filter((b) => b.schema.keyword === block.schema.keyword && b.name === block.name),
    );
}

const letLineOf = (d: Declaration, around: Surroundings): { line: DraftLine; text: string } | undefined => {
  const shape = around.shapeOf(d.uri);
  const lines = (d.block?.properties as readonly DraftLine[] | undefined) ?? shape?.lets ?? [];
  const line = lines.find((l) => l.span.start === d.span.start && l.schema.key === 'let');
  return line && shape ? { line, text: shape.text } : undefined;
};

const inOrder = (problems: readonly LanguageProblem[]): readonly LanguageProblem[] =>
  [...problems].sort((a, b) => a.span.start - b.span.start || a.span.end - b.span.end);
