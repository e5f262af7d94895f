import { decodePlan, mostBytes } from '@cribwright/server';

/**
 * All of a stream of bytes as text.
 *
 * @throws Error where it is larger than any plan or not text in UTF-8: with what is wrong, for a person to read.
 */
export async function readStandardInput(stream: AsyncIterable<Uint8Array>): Promise<string> {
  const chunks: Uint8Array[] = [];
  let bytes = 0;
  for await (const chunk of stream) {
    bytes += chunk.byteLength;
    if (bytes > mostBytes) throw new Error('the standard input is larger than 4 MB, so it is no plan');
    chunks.push(chunk);
  }
  const text = decodePlan(Buffer.concat(chunks));
  if (typeof text !== 'string') throw new Error('the standard input is not text in UTF-8');
  return text;
}
