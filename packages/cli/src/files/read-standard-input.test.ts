import { Readable } from 'node:stream';
import { expect, it } from 'vitest';
import { readStandardInput } from './read-standard-input.js';

it('puts pieces together, letters that are cut in two as well', async () => {
  const bytes = Buffer.from('plan "½" {}');
  expect(await readStandardInput(Readable.from([...bytes].map((b) => Buffer.of(b))))).toBe('plan "½" {}');
});

it('stops reading where there is more than any plan has', async () => {
  let asked = 0;
  const endless = async function* () {
    for (;;) {
      asked++;
      yield Buffer.alloc(1024 * 1024, 'y');
    }
  };
  await expect(readStandardInput(endless())).rejects.toThrow('larger than 4 MB');
  expect(asked).toBe(5);
});

it.each([
  ['UTF-16', Buffer.from('\ufeffplan', 'utf16le')],
  ['bytes that no text has', Buffer.of(0x70, 0xff, 0x00)],
])('takes no %s', async (_, bytes) => {
  await expect(readStandardInput(Readable.from([bytes]))).rejects.toThrow('not text in UTF-8');
});
