import type { BoundBlock, BoundFile } from '@cribwright/language';
import { term } from '@cribwright/messages';
import type { Span } from '@cribwright/syntax/internal';
import type { Checked } from '@cribwright/workspace/internal';
import { type InlayHint, InlayHintKind } from 'vscode-languageserver';
import type { Feature } from '../context/feature.js';
import type { FeatureContext } from '../context/feature-context.js';
import { documentOf, spanOf } from '../context/positions.js';
import { figureWords, say as translate } from '../l10n/say.js';
import { plansIn } from './edit.js';
import { replyOf } from './plan-around.js';
import { type UnitsChoice, unitsFor } from './units-for.js';

/** Figures shown at the end of a support's first line, and of which line: the rest are a hover away. */
const shown = ['height', 'load', 'use'] as const;

/** `textDocument/inlayHint`: height, load and use beside each support. Off until the user turns it on. */
export const inlayHint: Feature = {
  offers: () => ({ inlayHintProvider: true }),
  serve(session) {
    session.connection.languages.inlayHint.on(async ({ textDocument, range }, token) => {
      if (!session.settings.inlayHints) return null;
      const file = await session.file(textDocument.uri);
      const checked = file && (await session.checked(textDocument.uri, token));
      return file && checked ? hintsOf(session, file, checked, spanOf(file, range)) : null;
    });
  },
};

export function hintsOf(
  desk: Pick<FeatureContext, 'locale'> & UnitsChoice,
  file: BoundFile,
  checked: Checked,
  within: Span,
): InlayHint[] {
  return plansIn(file.blocks).flatMap((plan) => {
    const reply = replyOf(file, checked, plan);
    if (!reply) return [];
    const { analysis } = reply;
    return supportsIn(plan).flatMap((block) => {
      const support = analysis.supports.find((s) => s.id === block.elementId);
      const at = block.headSpan.end;
      if (!support || at < within.start || at > within.end) return [];
      const figures = shown.flatMap((key) => support.figures[key] ?? []);
      const late = analysis.pending ? [translate(term('editor.loads-pending'), desk.locale)] : [];
      return figures.length === 0
        ? []
        : [
            hint(file, at, [
              ...figures.map((f) => figureWords(f, desk.locale, unitsFor(desk, reply))),
              ...late,
            ]),
          ];
    });
  });
}

const hint = (file: BoundFile, at: number, words: readonly string[]): InlayHint => ({
  position: documentOf(file).positionAt(at),
  label: words.join(' · '),
  kind: InlayHintKind.Type,
  paddingLeft: true,
});

const supportsIn = (plan: BoundBlock): readonly BoundBlock[] =>
  plan.blocks.flatMap((b) => (b.elementId === undefined ? [] : [b, ...supportsIn(b)]));
