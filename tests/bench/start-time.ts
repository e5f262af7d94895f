import { startServer } from '../protocol/client.js';
import { bundleBareServer } from './bundle-bare-server.js';
import { sizes } from './edited-text.js';
import { type Quantiles, quantiles } from './quantiles.js';

const uri = 'file:///alder-ridge/opened.crib';

/** From starting the server until it tells the first diagnostics of a plan of 170 lines, ms. */
export async function startTimes(
  rounds: number,
): Promise<{ readonly ours: Quantiles; readonly bare: Quantiles }> {
  const bareServer = await bundleBareServer();
  const text = sizes[1]?.text() ?? '';
  const started = async (file: string | undefined): Promise<number> => {
    const begun = performance.now();
    const client = await startServer(file);
    await client.initialize({ initializationOptions: {} });
    client.open(uri, text);
    await client.message('diagnostics', (m) => m.method === 'textDocument/publishDiagnostics');
    const took = performance.now() - begun;
    await client.stop();
    return took;
  };
  // Bundled, and read from the disk once.
  await started(undefined);
  await started(bareServer);
  const [ours, bare]: [number[], number[]] = [[], []];
  for (let round = 0; round < rounds; round++) {
    ours.push(await started(undefined));
    bare.push(await started(bareServer));
  }
  return { ours: quantiles(ours), bare: quantiles(bare) };
}
