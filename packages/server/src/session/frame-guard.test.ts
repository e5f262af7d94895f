import { expect, it } from 'vitest';
import { frameGuard } from './frame-guard.js';

/** What it says of a stream that comes whole, and of one that comes byte by byte: the same. */
function saysOf(text: string): readonly string[] {
  const [whole, piecewise]: [string[], string[]] = [[], []];
  frameGuard((why) => whole.push(why))(Buffer.from(text));
  const take = frameGuard((why) => piecewise.push(why));
  for (const byte of Buffer.from(text)) take(Buffer.of(byte));
  expect(piecewise).toEqual(whole);
  return whole;
}

const body = '{"jsonrpc":"2.0","method":"½\\r\\n\\r\\n"}\r\nno header: at all\n';
const frame = `Content-Length: ${Buffer.byteLength(body)}\r\n\r\n${body}`;

it.each([
  ['frames', frame.repeat(3)],
  ['a type beside the length', `Content-Type: application/vscode-jsonrpc; charset=utf-8\r\n${frame}`],
  ['names in any case', frame.replace('Content-Length', 'content-LENGTH')],
  ['an empty message', `Content-Length: 0\r\n\r\n${frame}`],
  ['the beginning of a header', `${frame}Content-Le`],
])('follows %s', (_, text) => expect(saysOf(text)).toEqual([]));

it.each([
  ['no length', 'Content-Type: x\r\n\r\n', 'a header has no Content-Length'],
  ['no header', '\r\n\r\n', 'a header is malformed: "\\r\\n'],
  ['a length in words', 'Content-Length: twelve\r\n\r\n', 'Content-Length is not a number: " twelve"'],
  ['a length below zero', 'Content-Length: -5\r\n\r\n', 'Content-Length is not a number: " -5"'],
  ['a line that is no field', 'hello\r\n', 'a header is malformed: "hello\\r\\n"'],
  [
    'lines that end as on another system',
    'Content-Length: 5\n\n',
    'a header is malformed: "Content-Length: 5\\n"',
  ],
  ['text without end', 'x'.repeat(1_000_000), 'a header is malformed: "xxx'],
  ['a field without end', `X: ${'x'.repeat(1_000_000)}`, 'a header is longer than 4 KB'],
  ['fields without end', 'X: x\r\n'.repeat(10_000), 'a header is longer than 4 KB'],
  ['a message too large', 'Content-Length: 99999999999\r\n\r\n', 'a message is larger than 64 MB'],
])('tells of %s, once', (_, text, why) => {
  for (const stream of [text, frame + text, text + text]) {
    const said = saysOf(stream);
    expect(said).toHaveLength(1);
    expect(said[0]).toContain(why);
  }
});
