import { Writable } from 'node:stream';
import { expect, it } from 'vitest';
import { standardOutput } from './standard-output.js';

const fault = (code: string) => Object.assign(new Error(`${code}: no`), { code });
const failing = (error: Error) => new Writable({ write: (_chunk, _encoding, done) => done(error) });

it('writes all, and says when it is taken', async () => {
  const taken: string[] = [];
  const slow = new Writable({
    write(chunk, _encoding, done) {
      setImmediate(() => {
        taken.push(String(chunk));
        done();
      });
    },
  });
  const output = standardOutput(slow);
  output.write('a');
  output.write('b');
  await output.ended();
  expect(taken).toEqual(['a', 'b']);
  expect(output.fault).toBeUndefined();
});

it('remembers a full disk, and ends', async () => {
  const output = standardOutput(failing(fault('ENOSPC')));
  output.write('a');
  await output.ended();
  output.write('b');
  await output.ended();
  expect(output.fault?.message).toBe('ENOSPC: no');
});

it('finds no fault with a reader that stops early', async () => {
  const output = standardOutput(failing(fault('EPIPE')));
  output.write('a');
  await output.ended();
  expect(output.fault).toBeUndefined();
});

it('remembers a stream that breaks at once', async () => {
  const broken = new Writable();
  broken.write = () => {
    throw fault('EIO');
  };
  const output = standardOutput(broken);
  output.write('a');
  await output.ended();
  expect(output.fault?.message).toBe('EIO: no');
});
