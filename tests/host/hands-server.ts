import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';

/** What the suite asks of the world outside the editor: to click, to press, to look. */
export type Act = (name: string, given: unknown) => Promise<unknown>;

export interface HandsServer {
  readonly address: string;
  readonly close: () => void;
}

/** Answers the suite over the loopback. The suite runs inside the editor and has no mouse of its own. */
export const handsServer = async (act: Act): Promise<HandsServer> => {
  const server = createServer(async (request, response) => {
    const chunks: Buffer[] = [];
    for await (const chunk of request) chunks.push(chunk as Buffer);
    // A suite in a browser worker has another origin.
    response.setHeader('access-control-allow-origin', '*');
    response.setHeader('access-control-allow-private-network', 'true');
    try {
      const { name, given } = JSON.parse(Buffer.concat(chunks).toString() || '{}');
      const done = request.method === 'POST' ? await act(name, given) : undefined;
      response.end(JSON.stringify({ done }));
    } catch (error) {
      response.end(
        JSON.stringify({
          failed: error instanceof Error ? (error.stack ?? error.message) : String(error),
        }),
      );
    }
  });
  await new Promise<void>((up) => server.listen(0, '127.0.0.1', up));
  const { port } = server.address() as AddressInfo;
  return { address: `http://127.0.0.1:${port}/`, close: () => server.close() };
};
