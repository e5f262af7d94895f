import { term } from '@cribwright/messages';
import { decodePlan, mostBytes } from '@cribwright/server';
import { NotUnderstood } from '../terminal/not-understood.js';

/**
 * All of a stream of bytes as text.
 *
 * @throws NotUnderstood where it is larger than any plan or not text in UTF-8.
 */
export async function readStandardInput(stream: AsyncIterable<Uint8Array>): Promise<string> {
  const chunks: Uint8Array[] = [];
  let bytes = 0;
  for await (const chunk of stream) {
    bytes += chunk.byteLength;
    if (bytes > mostBytes) throw new NotUnderstood(term('cli.input-too-large'));
    chunks.push(chunk);
  }
  const text = decodePlan(Buffer.concat(chunks));
  if (typeof text !== 'string') throw new NotUnderstood(term('cli.input-not-text'));
  return text;
}
