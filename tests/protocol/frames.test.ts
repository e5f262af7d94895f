import { describe, expect, it } from 'vitest';
import { frame, frames, type Message } from './frames.js';

const reader = () => {
  const heard: Message[] = [];
  const { take, stray } = frames((m) => heard.push(m));
  return { heard, stray, take: (text: string) => take(Buffer.from(text)) };
};
const text = frame('{"jsonrpc":"2.0","id":1,"result":"½"}');

describe('a stream of frames', () => {
  it('takes a frame that comes in pieces, and counts none of them as stray', () => {
    const { heard, stray, take } = reader();
    for (const piece of text.match(/[\s\S]{1,3}/gu) ?? []) {
      expect(stray()).toBe('');
      take(piece);
    }
    expect(heard).toEqual([{ jsonrpc: '2.0', id: 1, result: '½' }]);
    expect(stray()).toBe('');
  });

  it.each(['hello', 'Content-Length: twelve', 'Content-Type: x', '\n'])('counts %j as stray', (words) => {
    const { heard, stray, take } = reader();
    take(text + words);
    expect(heard).toHaveLength(1);
    expect(stray()).toBe(words);
  });

  it('counts what stands before a header as stray', () => {
    const { stray, take } = reader();
    take(`hello ${text}`);
    expect(stray()).toContain('hello');
  });
});
