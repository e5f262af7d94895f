import { type SupportResult, tally } from '@cribwright/engine';
import type { BoundBlock, BoundFile } from '@cribwright/language';
import { count as countHole, message, term } from '@cribwright/messages';
import type { System } from '@cribwright/units';
import type { PlanReply } from '@cribwright/workspace';
import type { Checked } from '@cribwright/workspace/internal';
import type { CodeLens, Range } from 'vscode-languageserver';
import type { Feature } from '../context/feature.js';
import type { FeatureContext } from '../context/feature-context.js';
import { rangeOf } from '../context/positions.js';
import { figureWords, type Locale, say as translate } from '../l10n/say.js';
import { plansIn } from './edit.js';
import { replyOf } from './plan-around.js';
import { type UnitsChoice, unitsFor } from './units-for.js';

/** The client's command that opens the drawing. Arguments: the file, the element. */
const openDrawing = 'cribwright.openPreview';

/** The client's command that looks for changes that make a file's plans safe. Argument: the file. */
export const makeSafeCommand = 'cribwright.makeSafe';

/** `textDocument/codeLens`: above a plan what its checks found, above a support its load and use. */
export const codeLens: Feature = {
  offers: () => ({ codeLensProvider: {} }),
  serve(session) {
    session.connection.onCodeLens(async ({ textDocument }, token) => {
      if (!session.settings.codeLens) return null;
      const file = await session.file(textDocument.uri);
      const checked = file && (await session.checked(textDocument.uri, token));
      return file && checked ? lensesOf(session, file, checked) : null;
    });
  },
};

/** The lines above plans and supports that say what they carry, in the language and units of the reader. */
export function lensesOf(
  desk: Pick<FeatureContext, 'locale'> & UnitsChoice,
  file: BoundFile,
  checked: Checked,
): CodeLens[] {
  return plansIn(file.blocks).flatMap((plan) => {
    const reply = replyOf(file, checked, plan);
    if (!reply) return [];
    const lens = (block: BoundBlock, title: string): CodeLens => ({
      range: firstLine(file, block),
      command: { title, command: openDrawing, arguments: [file.uri, block.elementId] },
    });
    const supports = plan.blocks.flatMap((block) => {
      const support = reply.analysis.supports.find((s) => s.id === block.elementId);
      return support ? [lens(block, supportTitle(support, desk.locale, unitsFor(desk, reply)))] : [];
    });
    const unsafe = tally(reply.analysis.findings);
    const safe: CodeLens = {
      range: firstLine(file, plan),
      command: {
        title: translate(term('editor.make-safe'), desk.locale),
        command: makeSafeCommand,
        arguments: [file.uri],
      },
    };
    return [
      lens(plan, planTitle(desk, reply, checked)),
      ...(unsafe.danger + unsafe.notRun > 0 ? [safe] : []),
      ...supports,
    ];
  });
}

function planTitle(
  desk: Pick<FeatureContext, 'locale'>,
  { analysis, partial }: PlanReply,
  checked: Checked,
): string {
  const { danger, warning, accepted, notRun } = tally(analysis.findings, checked.state === 'errors');
  const held = analysis.expectations.filter((e) => e.held).length;
  const all = analysis.expectations.length;
  const parts = [
    ...(partial ? [term('editor.not-whole')] : []),
    ...(danger > 0 ? [message('editor.dangers', { count: countHole(danger) })] : []),
    ...(warning > 0 ? [message('editor.warnings', { count: countHole(warning) })] : []),
    // Said only when every check ran: silence is no clean bill.
    ...(notRun > 0 ? [message('editor.not-run', { count: countHole(notRun) })] : []),
    ...(accepted > 0 ? [message('editor.accepted-count', { count: countHole(accepted) })] : []),
    ...(checked.pending
      ? [term(checked.pending === 'loads' ? 'editor.loads-pending' : 'editor.pending')]
      : []),
    ...(notRun + danger + warning === 0 && !partial && !checked.pending
      ? [term(accepted > 0 ? 'editor.safe-else' : 'editor.safe')]
      : []),
    ...(all > 0 ? [message('editor.held-expectations', { held: countHole(held), all: countHole(all) })] : []),
    term('editor.see-drawing'),
  ];
  return parts.map((m) => translate(m, desk.locale)).join(' · ');
}

function supportTitle({ figures, name }: SupportResult, locale: Locale, units: System): string {
  const keys = ['height', 'heightLimit', 'load', 'capacity', 'use', 'angle'];
  const known = keys.flatMap((key) => figures[key] ?? []);
  return known.length === 0 ? name : known.map((f) => figureWords(f, locale, units)).join(' · ');
}

const firstLine = (file: BoundFile, block: BoundBlock): Range => rangeOf(file, block.headSpan);
