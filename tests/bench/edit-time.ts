import { setTimeout as pause } from 'node:timers/promises';
import type { AnalysisChangedParams } from '@cribwright/server/protocol';
import { type Client, startServer } from '../protocol/client.js';
import { bundleBareServer } from './bundle-bare-server.js';
import { EditedText, type Kind, kinds, sizes } from './edited-text.js';
import { type Quantiles, quantiles } from './quantiles.js';

/** Of one kind of edit in one text, from the edit on, ms. */
export interface EditTime {
  readonly size: string;
  readonly lines: number;
  readonly kind: Kind;
  /** Until the diagnostics of all checks but the push are there. */
  readonly ours: Quantiles;
  /** Until the first diagnostics of the edited text are there: of a large plan, what hangs on no load. */
  readonly first: Quantiles;
  /** Of a server of Langium's that reads the same text, and checks nothing. */
  readonly bare: Quantiles;
  /** Median ours ÷ median bare: the most it may be. */
  readonly most: number;
}

const uri = 'file:///alder-ridge/edited.crib';

/** Between two edits of one server, ms: what it does in the background has begun. */
const between = 30;

/**
 * Types the same edits into both servers by turns, through their standard input and output.
 *
 * @param rounds how often each kind is typed; a tenth as often in a text of 10,000 lines
 */
export async function* editTimes(rounds: number): AsyncGenerator<EditTime> {
  const bareServer = await bundleBareServer();
  for (const size of sizes) {
    const text = size.text();
    const lines = text.split('\n').length;
    const servers = [await opened(undefined, text), await opened(bareServer, text)];
    const spent = new Map(kinds.map((kind) => [kind, [[], [], []] as number[][]]));
    const all = lines > 5000 ? Math.ceil(rounds / 4) : rounds;
    const warm = Math.min(10, all);
    for (let round = -warm; round < all; round++)
      for (const kind of kinds)
        for (const which of round % 2 === 0 ? [0, 1] : [1, 0]) {
          const took = await servers[which]?.type(kind);
          const of = spent.get(kind);
          if (round >= 0 && took) of?.[which]?.push(took.whole);
          if (round >= 0 && took && which === 0) of?.[2]?.push(took.first);
          await pause(between);
        }
    for (const [kind, [ours = [], bare = [], first = []]] of spent)
      yield {
        size: size.name,
        lines,
        kind,
        ours: quantiles(ours),
        first: quantiles(first),
        bare: quantiles(bare),
        most: size.most,
      };
    for (const { client } of servers) await client.stop();
  }
}

/** A server with the text open, checked for the first time. */
async function opened(file: string | undefined, text: string) {
  const client = await startServer(file);
  await client.initialize({ initializationOptions: {} });
  const edited = new EditedText(text);
  let version = 1;
  client.open(uri, text, version);
  await answer(client, file === undefined, version, 0);
  return {
    client,
    /** Types one edit. Gives how long the first answer took, and the whole, ms. */
    async type(kind: Kind): Promise<{ readonly first: number; readonly whole: number }> {
      const { line, before, after } = edited.edit(kind);
      version++;
      const from = client.received.length;
      const begun = performance.now();
      client.notify('textDocument/didChange', {
        textDocument: { uri, version },
        contentChanges: [
          {
            range: { start: { line, character: 0 }, end: { line, character: before.length } },
            text: after,
          },
        ],
      });
      const since = async (answered: Promise<unknown>) => {
        await answered;
        return performance.now() - begun;
      };
      const ours = file === undefined;
      const [first, whole] = await Promise.all([
        since(ours ? client.diagnostics(uri, version, from) : Promise.resolve()),
        since(answer(client, ours, version, from)),
      ]);
      return { first, whole };
    },
  };
}

/** The diagnostics that all checks but the push went into. A bare server says neither version nor how far it is. */
const answer = (client: Client, ours: boolean, version: number, from: number) =>
  ours
    ? client.message(
        'the checks',
        ({ method, params }) => {
          const changed = params as AnalysisChangedParams | undefined;
          return (
            method === 'cribwright/analysisChanged' &&
            changed?.uri === uri &&
            changed.version === version &&
            changed.loads === undefined
          );
        },
        from,
      )
    : client.message('diagnostics', (m) => m.method === 'textDocument/publishDiagnostics', from);
