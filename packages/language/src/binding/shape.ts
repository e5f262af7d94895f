import { name as nameHole } from '@cribwright/messages';
import { append, type Parsed, type SyntaxStatement } from '@cribwright/syntax/internal';
import { findUnit } from '@cribwright/units';
import type { BlockSchema, PropertySchema } from '../bound/block-schema.js';
import type { BoundBlock, Declaration } from '../bound/bound-file.js';
import { unquoted } from '../phrase/unquoted.js';
import { type LanguageProblem, problem, replace } from '../problems/problem.js';
import { problemMessage } from '../problems/problem-message.js';
import { letLine, patternUse } from '../schema/pattern-block.js';
import { type AllowedLines, allowedIn } from '../schema/schema.js';
import type { DraftBlock, DraftLine, FileShape } from './draft.js';
import { isUtf16 } from './file-problems.js';
import { layoutProblems } from './layout-problems.js';
import { type MeantStart, nearStart, renamedStart } from './meant-start.js';
import { elementOf, homeFor, scopeOf } from './place-of-block.js';
import { choices, freeName, rightPlace, subjectOf, where } from './place-words.js';
import { readHead } from './read-head.js';
import { lineContinued, nameOnNextLine, stepNumber, withoutSigns } from './split-line.js';
import { everyBlock, isPatternUse, keyAt, keyText } from './statement-key.js';
import { placesOfLine, stepWithoutNumber, unknownLine } from './stray-line.js';
import { wholeLines } from './unused.js';
import { useMalformed } from './use-line.js';

/** Finds the blocks, lines and names of a file. Needs no other file. */
export function shapeFile(uri: string, text: string, parsed: Parsed): FileShape {
  const shape: FileShape = {
    uri,
    text,
    statements: parsed.statements,
    uses: [],
    blocks: [],
    lets: [],
    declarations: [],
    references: [],
    problems: [...layoutProblems(parsed, text)],
    names: new Map([['file', new Map()]]),
    brokenLayout: false,
    lost: { words: new Set(), kinds: new Set(), use: false },
  };
  shape.brokenLayout = shape.problems.length > 0;
  // Of a text in another encoding every sign would be an error.
  if (!isUtf16(text)) new Shaper(shape).statements(parsed.statements, undefined);
  return shape;
}

class Shaper {
  constructor(private readonly shape: FileShape) {}

  statements(list: readonly SyntaxStatement[], block: DraftBlock | undefined): void {
    const sayable = allowedIn(block?.schema ?? 'file');
    for (let i = 0; i < list.length; i++) {
      const [one, next] = [list[i], list[i + 1]];
      const joined = one && next && nameOnNextLine(one, next, sayable);
      if (joined) {
        this.shape.problems.push(joined.problem);
        this.statement(joined.statement, block, sayable);
        i++;
      } else if (one) this.statement(withoutSigns(one), block, sayable, list[i - 1]);
    }
  }

  private statement(
    s: SyntaxStatement,
    block: DraftBlock | undefined,
    sayable: AllowedLines,
    before?: SyntaxStatement,
  ): void {
    const first = s.terms[0];
    if (!first) {
      if (s.body) {
        this.shape.problems.push(
          problem(
            'unknown-line--choices',
            { start: s.body.start, end: s.body.start + 1 },
            { what: nameHole('{'), where: where(block), choices: nameHole(choices(sayable)) },
          ),
        );
      }
      return;
    }
    if (first.text === 'use' && first.kind === 'word' && !keyAt(s.terms, sayable)) {
      this.use(s, block);
      return;
    }
    const step = sayable.numbered && stepNumber(s);
    if (step) {
      this.shape.problems.push(step.problem);
      this.statement(step.statement, block, sayable);
      return;
    }
    if (first.kind === 'number' && sayable.numbered) {
      this.line(s, 1, sayable.numbered, first.text, block);
      return;
    }
    const found = keyAt(s.terms, sayable);
    // `no tyre at` starts with the key `no` as well.
    const earlier =
      found?.property?.key === 'no' && renamedStart(s.terms, sayable, { words: where(block), top: !block });
    if (earlier && earlier.length > 1) {
      this.asMeant(s, earlier, block);
      return;
    }
    // `vehicle type` in a plan is no vehicle named type.
    const longer = everyBlock(s.terms);
    if (longer && found && longer.length > found.length && !found.property)
      this.stray(s, block, sayable, before);
    else if (found?.block && (s.body || !found.property || found.block.bodyOptional))
      this.block(s, found.length, found.block, block);
    else if (found?.property)
      this.line(s, found.length, found.property, keyText(s.terms, found.length), block);
    else if (isPatternUse(s.terms, block)) this.line(s, 0, patternUse, first.text, block);
    else this.stray(s, block, sayable, before);
  }

  private use(s: SyntaxStatement, block: DraftBlock | undefined): void {
    const path = s.terms[1];
    if (block) {
      this.shape.problems.push(problem('use-misplaced', s, {}));
      return;
    }
    if (path?.kind !== 'text' || s.terms.length > 2 || s.body) {
      this.shape.lost.use = true;
      this.shape.problems.push(useMalformed(s));
      if (path?.kind !== 'text') return;
    }
    const inner = unquoted(path.text);
    this.shape.uses.push({
      path: inner,
      pathSpan: { start: path.start + 1, end: path.start + 1 + inner.length },
      span: { start: s.start, end: s.terms.at(-1)?.end ?? s.end },
      target: undefined,
    });
  }

  private line(
    s: SyntaxStatement,
    length: number,
    property: PropertySchema,
    key: string,
    block: DraftBlock | undefined,
    misread?: LanguageProblem,
  ): void {
    const first = s.terms[0];
    const last = s.terms[Math.max(0, length - 1)];
    if (!first || !last) return;
    if (s.body) {
      this.shape.problems.push(
        problem(
          'body-unexpected',
          { start: s.body.start, end: s.body.start + 1 },
          { what: nameHole(property.key) },
          s.body.statements.length > 0
            ? {}
            : {
                fixes: [
                  replace(
                    problemMessage('brace-stray--fix', {}),
                    { start: s.terms.at(-1)?.end ?? s.body.start, end: s.body.end },
                    '',
                  ),
                ],
              },
        ),
      );
    }
    const line: DraftLine = {
      schema: property,
      block: block as BoundBlock | undefined,
      key,
      keySpan: { start: first.start, end: last.end },
      span: { start: first.start, end: s.terms.at(-1)?.end ?? first.end },
      terms: s.terms,
      from: length,
      match: undefined,
      misread,
    };
    (block?.properties ?? this.shape.lets).push(line);
    this.declareLine(line, block);
  }

  /** A `let`, or a named group of supports. */
  private declareLine(line: DraftLine, block: DraftBlock | undefined): void {
    const name = line.schema === letLine || line.schema === patternUse ? line.terms[1] : undefined;
    if (name?.kind !== 'word') return;
    if (findUnit(name.text) && /^[a-z]{2}/.test(name.text)) {
      this.shape.problems.push(problem('name-is-unit', name, { text: nameHole(name.text) }));
      this.shape.lost.kinds.add('value');
    }
    this.declare({
      uri: this.shape.uri,
      kind: line.schema === letLine ? 'value' : 'pattern use',
      name: name.text,
      nameSpan: name,
      block: block as BoundBlock | undefined,
      span: line.span,
      scope: scopeOf(block),
    });
  }

  private block(
    s: SyntaxStatement,
    length: number,
    kind: BlockSchema,
    parent: DraftBlock | undefined,
    misread = false,
  ): void {
    const [first, last] = [s.terms[0], s.terms[length - 1]];
    if (!first || !last) return;
    const keywordSpan = { start: first.start, end: last.end };
    const head = readHead(kind, s.terms.slice(length), keywordSpan);
    append(this.shape.problems, head.problems);
    const block: DraftBlock = {
      schema: kind,
      uri: this.shape.uri,
      keywordSpan,
      name: head.name?.text,
      nameSpan: head.name,
      title: head.title?.text,
      titleSpan: head.title?.span,
      type: undefined,
      typeTerms: head.type,
      declaration: undefined,
      parameters: [],
      headSpan: { start: first.start, end: s.terms.at(-1)?.end ?? last.end },
      span: { start: s.start, end: s.end },
      bodySpan: s.body && { start: s.body.start, end: s.body.end },
      properties: [],
      blocks: [],
      parent: parent as BoundBlock | undefined,
      elementId: elementOf(kind, head.name?.text),
      hasStray: false,
      ...(misread || head.problems.length > 0 ? { misread: true as const } : {}),
    };
    if (head.problems.length > 0) {
      for (const t of s.terms.slice(length)) this.shape.lost.words.add(t.text);
    }
    if (kind.declares && head.name === undefined) this.shape.lost.kinds.add(kind.declares);
    if (kind.once) this.onlyOnce(block, parent);
    if (parent) parent.blocks.push(block as BoundBlock);
    else this.shape.blocks.push(block);
    if (kind.ownScope) this.shape.names.set(block as BoundBlock, new Map());
    this.declareBlock(block, parent);
    for (const p of head.parameters) {
      const declaration: Declaration = {
        uri: this.shape.uri,
        kind: 'parameter',
        name: p.name.text,
        nameSpan: p.name,
        block: block as BoundBlock,
        span: p.name,
        scope: block as BoundBlock,
      };
      block.parameters.push({ name: p.name.text, declaration, typeWord: p.type, typeSpan: p.typeSpan });
      this.declare(declaration);
    }
    if (s.body) this.statements(s.body.statements, block);
    else if (!kind.bodyOptional) {
      this.shape.problems.push(problem('body-missing', block.headSpan, { subject: subjectOf(block) }));
    }
  }

  private onlyOnce(block: DraftBlock, parent: DraftBlock | undefined): void {
    const first = parent?.blocks.find((b) => b.schema === block.schema);
    if (!first) return;
    const what = nameHole(block.schema.keyword);
    this.shape.problems.push(
      problem(
        'block-twice',
        block.headSpan,
        { what, where: where(parent) },
        {
          related: [
            { uri: first.uri, span: first.headSpan, message: problemMessage('block-twice--first', { what }) },
          ],
          fixes: [
            replace(
              problemMessage('block-twice--fix', { what }),
              wholeLines(this.shape.text, block.span),
              '',
            ),
          ],
        },
      ),
    );
  }

  private declareBlock(block: DraftBlock, parent: DraftBlock | undefined): void {
    const { schema: kind, name, nameSpan } = block;
    if (!kind.declares || name === undefined || !nameSpan) return;
    const inVehicle = kind.declares === 'part' || kind.declares === 'axle';
    const declaration: Declaration = {
      uri: this.shape.uri,
      kind: kind.declares,
      name,
      nameSpan,
      block: block as BoundBlock,
      span: block.span,
      scope: inVehicle ? (parent as BoundBlock | undefined) : scopeOf(parent),
    };
    block.declaration = declaration;
    if (inVehicle) {
      this.shape.declarations.push(declaration);
      const first = parent?.blocks.find(
        (b) => b !== block && b.declaration?.name === name && b.schema.declares === kind.declares,
      );
      if (first?.declaration) this.twice(declaration, first.declaration);
    } else this.declare(declaration);
  }

  private declare(declaration: Declaration): void {
    this.shape.declarations.push(declaration);
    const names = this.shape.names.get(declaration.scope ?? 'file');
    if (!names) return;
    const same = names.get(declaration.name);
    if (!same) {
      names.set(declaration.name, [declaration]);
      return;
    }
    const rival = declaration.scope ? same[0] : same.find((d) => d.kind === declaration.kind);
    if (rival) this.twice(declaration, rival);
    same.push(declaration);
  }

  private twice(second: Declaration, first: Declaration): void {
    this.shape.lost.kinds.add(second.kind);
    const names = this.shape.names.get(second.scope ?? 'file');
    const near = freeName(second.name, (n) => names?.has(n) === true);
    this.shape.problems.push(
      problem(
        'name-twice',
        second.nameSpan,
        { text: nameHole(second.name) },
        {
          related: [
            {
              uri: first.uri,
              span: first.nameSpan,
              message: problemMessage('name-twice--first', { text: nameHole(first.name) }),
            },
          ],
          fixes: [
            replace(problemMessage('name-twice--fix', { near: nameHole(near) }), second.nameSpan, near),
          ],
        },
      ),
    );
  }

  /** A line that starts with nothing that may stand here. */
  private stray(
    s: SyntaxStatement,
    block: DraftBlock | undefined,
    sayable: AllowedLines,
    before: SyntaxStatement | undefined,
  ): void {
    const unnumbered = stepWithoutNumber(s, block);
    if (unnumbered) {
      if (block) block.hasStray = true;
      this.shape.problems.push(unnumbered);
      return;
    }
    // Other words for a line or block of this place tell more than where the same words belong.
    const meant = renamedStart(s.terms, sayable, { words: where(block), top: !block });
    if (meant) {
      this.asMeant(s, meant, block);
      return;
    }
    const continued = before && lineContinued(s, before, this.shape.text);
    if (continued) {
      if (block) block.hasStray = true;
      this.shape.problems.push(continued);
      return;
    }
    const elsewhere = everyBlock(s.terms)?.block;
    if (elsewhere && (s.body || !placesOfLine(s.terms, block))) {
      if (block) block.hasStray = true;
      const length = elsewhere.keyword.split(' ').length;
      const span = { start: s.terms[0]?.start ?? s.start, end: s.terms[length - 1]?.end ?? s.end };
      this.shape.problems.push(
        problem('wrong-place', span, {
          what: nameHole(elsewhere.keyword),
          where: where(block),
          rightPlace: rightPlace(elsewhere),
        }),
      );
      const home = homeFor(elsewhere, block);
      if (home !== undefined) this.block(s, length, elsewhere, home === 'file' ? undefined : home, true);
      return;
    }
    if (this.patternAlone(s, block)) return;
    const near = nearStart(s.terms, sayable, { words: where(block), top: !block });
    if (near) {
      this.asMeant(s, near, block);
      return;
    }
    if (block) block.hasStray = true;
    for (const t of s.terms) this.shape.lost.words.add(t.text);
    const unknown = unknownLine(s, block, sayable);
    if (unknown) this.shape.problems.push(unknown);
  }

  /** Reads on as what is most likely meant, so that what hangs on it brings no more errors. */
  private asMeant(s: SyntaxStatement, meant: MeantStart, block: DraftBlock | undefined): void {
    this.shape.problems.push(meant.problem);
    if (block) block.hasStray = true;
    if (meant.use) {
      this.use(s, block);
      return;
    }
    const { length } = meant;
    if (meant.block && (s.body || !meant.property)) this.block(s, length, meant.block, block, true);
    else if (meant.property)
      this.line(s, length, meant.property, keyText(s.terms, length), block, meant.problem);
  }

  /** `Pair` with nothing after it: taken as a use of a pattern, so that its own message can say what is due. */
  private patternAlone(s: SyntaxStatement, block: DraftBlock | undefined): boolean {
    const [first, second] = s.terms;
    const alone =
      block?.schema.keyword === 'plan' && first?.kind === 'word' && !second && /^[A-Z]/.test(first.text);
    if (alone) this.line(s, 0, patternUse, first.text, block);
    return alone;
  }
}
