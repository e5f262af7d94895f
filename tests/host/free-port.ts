import { createServer } from 'node:net';

/** A loopback port that nothing listens on. */
export const freePort = (): Promise<number> =>
  new Promise((found, failed) => {
    const probe = createServer();
    probe.once('error', failed);
    probe.listen(0, '127.0.0.1', () => {
      const address = probe.address();
      probe.close(() =>
        typeof address === 'object' && address ? found(address.port) : failed(new Error('no port')),
      );
    });
  });
