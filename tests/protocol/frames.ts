/** A message of JSON-RPC 2.0, as it stands on the wire. */
export interface Message {
  readonly jsonrpc: '2.0';
  readonly id?: number | string | null;
  readonly method?: string;
  readonly params?: unknown;
  readonly result?: unknown;
  readonly error?: { readonly code: number; readonly message: string };
}

/** Puts a body into the base protocol's frame: a header part, an empty line, the content. */
export const frame = (body: string): string =>
  `Content-Length: ${Buffer.byteLength(body, 'utf8')}\r\n\r\n${body}`;

/**
 * Takes a stream of frames apart. Written from the base protocol, not with the library under test.
 * Anything that is not a frame is kept in `stray`: a server may write nothing else to its output.
 */
export function frames(each: (message: Message) => void) {
  let bytes = Buffer.alloc(0);
  let stray = '';
  function next(): boolean {
    const end = bytes.indexOf('\r\n\r\n');
    if (end < 0) return false;
    const header = bytes.subarray(0, end).toString('ascii');
    const length = /^Content-Length: (\d+)(?:\r\nContent-Type: [^\r\n]+)?$/.exec(header)?.[1];
    if (length === undefined) {
      stray += bytes.toString('utf8');
      bytes = Buffer.alloc(0);
      return false;
    }
    const start = end + 4;
    const until = start + Number(length);
    if (bytes.length < until) return false;
    const body = bytes.subarray(start, until).toString('utf8');
    bytes = bytes.subarray(until);
    each(JSON.parse(body) as Message);
    return true;
  }
  return {
    take(chunk: Buffer): void {
      bytes = Buffer.concat([bytes, chunk]);
      while (next());
    },
    /** What was written outside frames. A frame that has begun well is none of it: its rest is still on the way. */
    stray: () => stray + (begunWell(bytes.toString('utf8')) ? '' : bytes.toString('utf8')),
  };
}

const opening = 'Content-Length: ';

/** Whether these bytes may be the beginning of a frame. A whole header is looked at where it is read. */
const begunWell = (text: string): boolean =>
  opening.startsWith(text.slice(0, opening.length)) && /^\d*(\r|$)/.test(text.slice(opening.length));
