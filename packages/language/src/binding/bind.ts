import { count, name } from '@cribwright/messages';
import { append } from '@cribwright/syntax/internal';
import type { BoundBlock, BoundFile, Declaration, Reference } from '../bound/bound-file.js';
import { matchLine } from '../phrase/matcher.js';
import { unknownName } from '../phrase/unknown-name.js';
import { type LanguageProblem, problem, replace } from '../problems/problem.js';
import { problemMessage } from '../problems/problem-message.js';
import { barePattern } from './bare-pattern.js';
import type { DraftBlock, DraftLine, FileShape } from './draft.js';
import { BlockScope, type Surroundings, typeChain, typeOf } from './file-scope.js';
import { followsFromLost, once, SlipPlaces, volumeOfUnknown } from './follows.js';
import { expressionProblems } from './let-problems.js';
import { LetVectors } from './let-vectors.js';
import { missingLines } from './missing-lines.js';
import { nothingToDrop } from './nothing-to-drop.js';
import { inBlock } from './place-words.js';
import { type Earlier, nothingEarlier } from './rebind.js';
import { partsWithoutComma } from './slip-problem.js';
import { renamedAfter, stopProblem } from './stop-problem.js';
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
  const problems = once([...shape.problems, ...binder.problems], binder.signs);
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

/** Of one line: each takes the matcher one step deeper. */
const mostWords = 1000;

class Binder {
  readonly problems: LanguageProblem[] = [];
  private readonly lets: LetVectors;
  private readonly around: Surroundings;
  private readonly usesTold = new Set<string>();
  readonly signs: SlipPlaces;

  constructor(
    private readonly shape: FileShape,
    around: Surroundings,
    private readonly before: Earlier,
  ) {
    this.around = around;
    this.signs = new SlipPlaces(shape.problems);
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
    append(this.problems, missingLines(block, this.around, this.shape.text));
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
      this.tell([unknownName(reference, scope, undefined)], scope);
      return;
    }
    const chain = typeChain(bound, this.around);
    const last = chain.at(-1);
    if (type.extends && last && typeOf(last, this.around) === bound) {
      const path = [...chain, bound].map((b) => b.name ?? '').join(' → ');
      this.problems.push(problem('type-cycle', term, { text: name(block.name ?? ''), path: name(path) }));
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
          { what: name(line.schema.key), where: inBlock(block as BoundBlock) },
          {
            related: [
              { uri: this.shape.uri, span: before.span, message: problemMessage('line-twice--first', {}) },
            ],
            fixes: [replace(problemMessage('line-twice--fix', {}), line.span, '')],
          },
        ),
      );
    }
  }

  private line(line: DraftLine, scope: BlockScope): void {
    line.match = this.before(line);
    if (line.match) {
      append(this.shape.references, line.match.references);
      this.letProblems(line, scope);
      append(this.problems, nothingToDrop(line, this.around));
      return;
    }
    // A calculation is held to its own length.
    if (line.terms.length > mostWords && line.schema.key !== 'let') {
      this.problems.push(problem('line-too-long', line.keySpan, { most: count(mostWords) }));
      return;
    }
    const bare = line.misread ? undefined : barePattern(line, scope);
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
    if (line.misread) {
      // Told already. What else is wrong with it is told once it starts right.
      if (match) line.match = { ...match, problems: [...match.problems, line.misread] };
      if (match) append(this.shape.references, match.references);
      return;
    }
    if (match) {
      append(this.shape.references, match.references);
      this.tell(
        match.problems.map((p) => renamedAfter(line, p) ?? partsWithoutComma(line, p, scope) ?? p),
        scope,
        line,
      );
      this.letProblems(line, scope);
      append(this.problems, nothingToDrop(line, this.around));
    } else {
      const stopped = [stopProblem(line, stop, scope, this.shape.text) ?? []].flat();
      // The line that seems to be missing was read as the end of this one.
      if (line.block && stopped.some((p) => p.code === 'line-joined'))
        (line.block as DraftBlock).hasStray = true;
      this.tell(stopped, scope, line);
    }
  }

  /** Leaves out what follows from text that could not be read: names that it may have given. */
  private tell(problems: readonly LanguageProblem[], scope: BlockScope, line?: DraftLine): void {
    // A sign that means nothing keeps the line from being read: the rest follows from it.
    if (line && this.signs.overlap(line.span)) return;
    const told = volumeOfUnknown(problems).filter((p) => !followsFromLost(p, this.shape, scope));
    append(
      this.problems,
      told.filter((p) => this.isFirstOf(p)),
    );
  }

  /** Of names that one further `use` line would make known, the first is told: its fix is the fix of all. */
  private isFirstOf({ fixes }: LanguageProblem): boolean {
    const use = fixes[0]?.edits[0]?.text;
    if (use?.startsWith('use "') !== true) return true;
    const first = !this.usesTold.has(use);
    this.usesTold.add(use);
    return first;
  }

  private letProblems(line: DraftLine, scope: BlockScope): void {
    if (line.schema.key !== 'let' || !line.match || line.match.problems.length > 0) return;
    const declaration = this.shape.declarations.find((d) => d.span === line.span && d.kind === 'value');
    if (declaration) scope.vectorOf(declaration);
    append(this.problems, expressionProblems(line, scope, this.shape.text));
  }

  private reportRings(): void {
    const told = new Set<Declaration>();
    for (const ring of this.lets.rings) {
      const first = ring.find((d) => d.uri === this.shape.uri);
      if (!first || ring.some((d) => told.has(d))) continue;
      for (const d of ring) told.add(d);
      const path = [...ring, ring[0]].map((d) => d?.name ?? '').join(' → ');
      this.problems.push(
        problem('value-cycle', first.nameSpan, { text: name(first.name), path: name(path) }),
      );
    }
  }
}

const letLineOf = (d: Declaration, around: Surroundings): { line: DraftLine; text: string } | undefined => {
  const shape = around.shapeOf(d.uri);
  const lines = (d.block?.properties as readonly DraftLine[] | undefined) ?? shape?.lets ?? [];
  const line = lines.find((l) => l.span.start === d.span.start && l.schema.key === 'let');
  return line && shape ? { line, text: shape.text } : undefined;
};

const inOrder = (problems: readonly LanguageProblem[]): readonly LanguageProblem[] =>
  [...problems].sort((a, b) => a.span.start - b.span.start || a.span.end - b.span.end);
