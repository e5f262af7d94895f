import type { SupportResult } from '@cribwright/engine';
import type { BoundFile, BoundProperty } from '@cribwright/language';
import type { Declaration } from '@cribwright/language/internal';
import { blockAt, propertyAt, unitOfMark, withUnitWords } from '@cribwright/language/internal';
import type { Figure } from '@cribwright/messages';
import { message, name, term } from '@cribwright/messages';
import { rules } from '@cribwright/rules';
import type { Span } from '@cribwright/syntax/internal';
import { findUnit, inSystem, readQuantity, show, usualUnit } from '@cribwright/units';
import type { PlanReply } from '@cribwright/workspace';
import { fileName } from '@cribwright/workspace/internal';
import type { CancellationToken, Hover } from 'vscode-languageserver';
import { nameAt } from '../../context/at-cursor.js';
import type { Feature } from '../../context/feature.js';
import type { FeatureContext } from '../../context/feature-context.js';
import { fenced, figureMarkdown, plain } from '../../context/markdown.js';
import { offsetAt, rangeOf, touches } from '../../context/positions.js';
import { type Locale, say as translate } from '../../l10n/say.js';
import { labelOf } from '../document-symbol.js';
import { elementAt, planAround } from '../plan-around.js';
import { rulePage } from '../publish-diagnostics.js';
import { unitsFor } from '../units-for.js';
import { placeBothWays } from './place-both-ways.js';

/** `textDocument/hover`: figures with their sums, what a name stands for, what a line means. */
export const hover: Feature = {
  offers: () => ({ hoverProvider: true }),
  serve(session) {
    session.connection.onHover(async ({ textDocument, position }, token) => {
      const file = await session.file(textDocument.uri);
      return file ? hoverAt(session, file, offsetAt(file, position), token) : null;
    });
  },
};

export async function hoverAt(
  desk: FeatureContext,
  file: BoundFile,
  offset: number,
  token?: CancellationToken,
): Promise<Hover | null> {
  const checked = await desk.checked(file.uri, token);
  const plan = checked && planAround(file, checked, offset);
  const name = nameAt(file, offset);
  // A value is worked out with the file that it stands in.
  const home = name?.target.kind === 'value' ? await desk.file(name.target.uri) : undefined;
  const values = name && home ? desk.workspace.valuesAt(home.uri, name.target.nameSpan.start) : [];
  const found = name
    ? { span: name.span, parts: aboutName(desk, name.target, plan, values) }
    : whatStands(desk, file, offset, plan);
  if (!found || found.parts.length === 0) return null;
  const late = plan?.analysis.pending ? [translate(term('editor.loads-pending'), desk.locale)] : [];
  return {
    contents: { kind: 'markdown', value: [...found.parts, ...late].join('\n\n---\n\n') },
    range: rangeOf(file, found.span),
  };
}

interface Found {
  readonly span: Span;
  readonly parts: readonly string[];
}

function whatStands(
  desk: FeatureContext,
  file: BoundFile,
  offset: number,
  plan: PlanReply | undefined,
): Found | undefined {
  const line = propertyAt(file, offset);
  const rule = line && ruleAt(file, line, offset, desk.locale);
  if (rule) return rule;
  if (line) return aboutLine(desk, file, line, offset, plan);
  const block = blockAt(file, offset);
  if (block && touches(block.headSpan, offset)) {
    const figures = block.elementId && plan ? figuresOf(plan, block.elementId) : [];
    return {
      span: block.headSpan,
      parts: [...written(desk, figures, plan), plain(translate(block.schema.doc, desk.locale))],
    };
  }
  return undefined;
}

function aboutName(
  desk: FeatureContext,
  target: Declaration,
  plan: PlanReply | undefined,
  values: readonly Figure[],
): readonly string[] {
  const home = desk.workspace.bound(target.uri);
  const block = target.block;
  const own = block?.nameSpan?.start === target.nameSpan.start ? block : undefined;
  const head = own ? `${labelOf(own)}${own.type ? ` : ${own.type.text}` : ''}` : lineText(home, target.span);
  const figures = own?.elementId && plan ? figuresOf(plan, own.elementId) : values;
  const where = home && target.scope === undefined ? fileName(home.uri) : undefined;
  return [
    fenced(head),
    ...written(desk, figures, plan),
    ...(home ? commentAbove(home, target.span.start) : []),
    ...(own && figures.length === 0 ? [plain(translate(own.schema.doc, desk.locale))] : []),
    ...(where
      ? [`_${plain(translate(message('editor.declared-in', { where: name(where) }), desk.locale))}_`]
      : []),
  ];
}

function aboutLine(
  desk: FeatureContext,
  file: BoundFile,
  line: BoundProperty,
  offset: number,
  plan: PlanReply | undefined,
): Found {
  const at = elementAt(file, offset);
  const figures = at && plan ? figuresOf(plan, at.element, at.property ?? line.schema.key) : [];
  const parts = [
    ...other(desk, file, line, offset),
    ...(at && plan ? placeBothWays(desk, plan, at.element, line.schema.key) : []),
    ...written(desk, figures, plan),
  ];
  const onKey = touches(line.keySpan, offset);
  if (onKey || parts.length === 0)
    parts.push(`${plain(translate(line.schema.doc, desk.locale))}\n\n${fenced(line.schema.example)}`);
  return { span: onKey ? line.keySpan : line.span, parts };
}

/** A rule that an expectation or an acceptance names: what it protects against, and its page. */
function ruleAt(
  file: BoundFile,
  { match }: BoundProperty,
  offset: number,
  locale: Locale,
): Found | undefined {
  const span = match?.pieces.find((p) => p.kind === 'rule' && touches(p.span, offset))?.span;
  const id = span && file.text.slice(span.start, span.end);
  const rule = rules.find((r) => r.id === id);
  if (!span || !rule) return undefined;
  const page = `[${rule.id}](${rulePage(rule.id)})`;
  return {
    span,
    parts: [
      `**${plain(translate(rule.title, locale))}**\n\n${plain(translate(rule.protects, locale))}\n\n${page}`,
    ],
  };
}

/** A quantity in the units of the other system: `24 in is 610 mm`. */
function other(
  desk: FeatureContext,
  file: BoundFile,
  line: BoundProperty,
  offset: number,
): readonly string[] {
  const pieces = line.match?.pieces ?? [];
  const at = pieces.findIndex((p) => (p.kind === 'number' || p.kind === 'unit') && touches(p.span, offset));
  if (at < 0) return [];
  const isPart = (i: number): boolean => pieces[i]?.kind === 'number' || pieces[i]?.kind === 'unit';
  let [from, to] = [at, at];
  while (isPart(from - 1)) from--;
  while (isPart(to + 1)) to++;
  const [first, last] = [pieces[from], pieces[to]];
  if (!first || !last) return [];
  const text = file.text.slice(first.span.start, last.span.end);
  // As a tape is marked: `19' 6"`.
  const words = withUnitWords(text);
  const read = readQuantity(words);
  const written = file.text.slice(last.span.start, last.span.end);
  const unit = last.kind === 'unit' ? (findUnit(written) ?? unitOfMark(written)) : undefined;
  if (!read.ok || !unit || unit.system === 'both') return [];
  const system = unit.system === 'us' ? 'si' : 'us';
  const swapped = inSystem(unit.id, system);
  const shown = show(
    read.value.value,
    unit.dimension,
    swapped === unit.id ? usualUnit(unit.dimension, system) : swapped,
    {
      rounding: 'nearest',
    },
  );
  const other = name(words === text ? shown : `${words}, ${shown}`);
  return [plain(translate(message('editor.about', { text: name(text), other }), desk.locale))];
}

const written = (
  desk: FeatureContext,
  figures: readonly Figure[],
  plan: PlanReply | undefined,
): readonly string[] =>
  figures.length === 0
    ? []
    : [figures.map((f) => figureMarkdown(f, desk.locale, unitsFor(desk, plan))).join('\n\n')];

/** Figures of an element, or those that stand on one line of it. */
export function figuresOf({ analysis }: PlanReply, element: string, property?: string): readonly Figure[] {
  const support = analysis.supports.find((s) => s.id === element);
  const body = analysis.bodies.find((b) => b.vehicle === element);
  const all = [
    ...(support ? [...Object.values(support.figures), ...contactFigures(support)] : []),
    ...(body ? [body.weight, body.center.x, body.center.y, body.center.z] : []),
  ];
  if (property === undefined) return all;
  const beside = besides[property] ?? [];
  return all.filter(
    (f) => (f.ref?.property === property && f.ref.element === element) || beside.includes(f.key),
  );
}

/** Figures that a line decides beside those that point at it: a height is read together with what it may be. */
const besides: Readonly<Record<string, readonly string[]>> = {
  courses: ['height', 'heightLimit', 'gap'],
  timber: ['capacity', 'width'],
  layout: ['capacity', 'width'],
  base: ['pressure'],
  captures: ['load', 'capacity', 'use'],
  angle: ['angle'],
  head: ['load', 'use', 'angle'],
  foot: ['angle', 'length'],
};

const contactFigures = (support: SupportResult): readonly Figure[] =>
  support.contacts.flatMap(({ number, load }) =>
    load?.value === undefined
      ? []
      : [
          {
            ...load,
            label: message('figure.contact-figure', { contact: name(String(number)), label: load.label }),
          },
        ],
  );

const lineText = (home: BoundFile | undefined, { start, end }: Span): string =>
  home?.text.slice(start, end).split(/\r\n|\r|\n/)[0] ?? '';

/** The comment lines right above a declaration: its author's own words on it. */
function commentAbove(home: BoundFile, start: number): readonly string[] {
  const above = home.text
    .slice(0, start)
    .split(/\r\n|\r|\n/)
    .slice(0, -1);
  const words: string[] = [];
  for (let line = above.pop()?.trim(); line?.startsWith('//'); line = above.pop()?.trim())
    words.unshift(line.replace(/^\/\/\s?/, ''));
  return words.length === 0 ? [] : [plain(words.join(' '))];
}
