/** Bytes of a header part. The two fields of the protocol take fewer than a hundred. */
const longestHeader = 4096;
/** Bytes of a field's name. */
const longestName = 64;
/** Bytes of a message. The largest plan, escaped, takes less. */
const largestMessage = 64 * 1024 * 1024;

/**
 * Follows a stream of frames of the base protocol (Language Server Protocol 3.17, "Base Protocol") beside whoever
 * reads it, and tells of the first one that no reader can follow: after it, nothing says where the next begins.
 *
 * @param fault called once, with what is wrong, for a person to read. Nothing is followed after it.
 * @returns takes each piece of the stream, in order
 */
export function frameGuard(fault: (why: string) => void): (chunk: Uint8Array) => void {
  let header: number[] = [];
  let body = 0;
  let broken = false;
  const stop = (why: string): void => {
    broken = true;
    fault(why);
  };
  return (chunk) => {
    for (let at = 0; at < chunk.length && !broken; ) {
      if (body > 0) {
        const taken = Math.min(body, chunk.length - at);
        body -= taken;
        at += taken;
        continue;
      }
      header.push(chunk[at++] ?? 0);
      const text = header.at(-1) === lineFeed || header.length > longestName ? ascii(header) : '';
      if (text.endsWith('\r\n\r\n')) {
        const length = lengthIn(text);
        if (typeof length === 'string') stop(length);
        else body = length;
        header = [];
      } else if (header.length > longestHeader) stop('a header is longer than 4 KB');
      else if (text !== '' && !beginsWell(text))
        stop(`a header is malformed: ${JSON.stringify(text.slice(0, 100))}`);
    }
  };
}

const lineFeed = 0x0a;
const ascii = (bytes: readonly number[]): string => String.fromCharCode(...bytes);

/** Whether each whole line is a field, and the last one may become one. */
function beginsWell(text: string): boolean {
  const lines = text.split('\r\n');
  const last = lines.pop() ?? '';
  return (
    lines.every((line) => /^[!-9;-~]+:[^\r\n]*$/.test(line)) &&
    /^[!-9;-~]*(:[^\n]*)?\r?$/.test(last) &&
    (last.includes(':') || last.length <= longestName)
  );
}

/** How long the content is that follows, or what is wrong with its header. */
function lengthIn(header: string): number | string {
  const fields = header.slice(0, -4).split('\r\n');
  if (!beginsWell(header.slice(0, -2)))
    return `a header is malformed: ${JSON.stringify(header.slice(0, 100))}`;
  const value = fields.find((f) => /^content-length:/i.test(f))?.split(':')[1];
  if (value === undefined) return 'a header has no Content-Length';
  if (!/^\s*\d+\s*$/.test(value))
    return `Content-Length is not a number: ${JSON.stringify(value.slice(0, 40))}`;
  return Number(value) > largestMessage ? 'a message is larger than 64 MB' : Number(value);
}
