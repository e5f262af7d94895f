import { tally } from '@cribwright/engine';
import { message, name } from '@cribwright/messages';
import type { Checked } from '@cribwright/workspace/internal';
import type { Diagnostic } from 'vscode-languageserver';
import { DiagnosticSeverity } from 'vscode-languageserver';
import type { Session } from '../context/feature.js';
import { inSteps } from '../context/in-steps.js';
import { isOlderVersion } from '../context/older-version.js';
import { type OpenDocuments, sameUri } from '../context/open-documents.js';
import { diagnosticsOf } from '../features/publish-diagnostics.js';
import { inUnitsOf } from '../features/units-for.js';
import { say as translate } from '../l10n/say.js';
import {
  AnalysisChanged,
  type AnalysisChangedParams,
  LayoutDrawn,
  type SignedAnalysis,
} from '../protocol/requests.js';
import type { DiagnosticReport } from './diagnostic-scheduler.js';
import { ignoreRejection } from './ignore-rejection.js';

export interface Shown {
  readonly diagnostics: readonly Diagnostic[];
  readonly tally: Omit<AnalysisChangedParams, 'uri' | 'version' | 'life'>;
}

/** Turns the check of a file into what the client is told: diagnostics with their version, and a tally. */
export function publisher(session: Session, open: OpenDocuments) {
  const { connection, client } = session;
  const numbers = new WeakMap<object, number>();
  let last = 0;
  /** A number for each analysis: equal numbers, equal drawing. */
  const numberOf = (analysis: object): number => {
    const number = numbers.get(analysis) ?? ++last;
    numbers.set(analysis, number);
    return number;
  };

  /** Hints, lenses and colors of other files may have changed with this one. */
  function refresh(): void {
    const { workspace } = client;
    if (workspace?.inlayHint?.refreshSupport) ignoreRejection(connection.languages.inlayHint.refresh());
    if (workspace?.codeLens?.refreshSupport)
      ignoreRejection(connection.sendRequest('workspace/codeLens/refresh'));
    if (workspace?.semanticTokens?.refreshSupport)
      ignoreRejection(connection.languages.semanticTokens.refresh());
  }

  async function report(
    uri: string,
    overtaken: () => boolean,
  ): Promise<DiagnosticReport<Shown> | 'overtaken' | undefined> {
    const document = isOlderVersion(uri) ? undefined : open.get(uri);
    if (!document) return undefined;
    const { version } = document.text;
    try {
      const file = await session.file(uri);
      if (!file) return undefined;
      if (!(await inSteps(session.workspace.prepare(file.uri), session.pause, overtaken))) return 'overtaken';
      const checked = session.workspace.check(file.uri);
      const diagnostics = diagnosticsOf(session, file, checked);
      const drawn = checked.plans.map(({ analysis }) => numberOf(analysis));
      // A drawing shows its numbers in the reader's language and units.
      const key = JSON.stringify([diagnostics, drawn, session.locale, session.settings.units]);
      const tally = tallyOf(checked);
      return { uri: document.uri, version, content: { diagnostics, tally }, key, open: tally.pending };
    } catch (error) {
      const why = error instanceof Error ? error.message : String(error);
      connection.console.error(`${document.uri}: ${error instanceof Error ? error.stack : why}`);
      return {
        uri: document.uri,
        version,
        content: stopped(why, session),
        key: `stopped: ${why}`,
        open: false,
      };
    }
  }

  /** Lets a client that draws the file see how its plans lie, where their checks will take a while. */
  async function layout(uri: string): Promise<boolean> {
    const document = session.drawn.has(uri) ? open.get(uri) : undefined;
    if (!document) return false;
    try {
      await session.file(uri);
      const found = session.workspace.layout(uri);
      // What follows is long work: the whole of it must be out before, or its end would wait for that.
      if (found) {
        const plans = found.plans.map((reply) => inUnitsOf(session, reply));
        await connection.sendNotification(LayoutDrawn, {
          ...found,
          plans,
          uri: document.uri,
          life: session.life,
        } satisfies SignedAnalysis);
      }
      return found !== undefined;
    } catch {
      // The check that follows stops at the same thing, and says so.
      return false;
    }
  }

  return {
    report,
    layout,
    send({ uri, version, content: { diagnostics, tally } }: DiagnosticReport<Shown>): void {
      const about = version === undefined ? {} : { version };
      void connection.sendDiagnostics({ uri, ...about, diagnostics: [...diagnostics] });
      const changed: AnalysisChangedParams = {
        uri,
        version: version ?? 0,
        life: session.life,
        ...tally,
      };
      void connection.sendNotification(AnalysisChanged, changed);
      const left = tally.loads ? 'loads' : tally.pending ? 'push' : undefined;
      // Hints and lenses were made of less than is known now.
      const served = session.served.get(sameUri(uri));
      if (served === undefined || served === left) return;
      session.served.delete(sameUri(uri));
      refresh();
    },
    clear(uri: string): void {
      void connection.sendDiagnostics({ uri, diagnostics: [] });
    },
    refresh,
  };
}

function tallyOf({ problems, state, pending, plans }: Checked): Shown['tally'] {
  return {
    plans: plans.length,
    ...tally(
      problems.map(({ severity, finding }) => ({ ...finding, severity })),
      state === 'errors',
    ),
    pending: pending !== undefined,
    ...(pending === 'loads' ? { loads: 'pending' as const } : {}),
  };
}

/** A fault of the tool must not look like a clean bill. */
const stopped = (why: string, { locale }: Session): Shown => ({
  diagnostics: [
    {
      range: { start: { line: 0, character: 0 }, end: { line: 0, character: 1 } },
      severity: DiagnosticSeverity.Error,
      source: 'cribwright',
      code: 'checks-stopped',
      message: translate(message('editor.broke', { why: name(why) }), locale),
    },
  ],
  tally: { plans: 0, danger: 0, warning: 0, note: 0, accepted: 0, notRun: 1, pending: false },
});
