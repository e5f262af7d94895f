import { type Message, type Name, name, term } from '@cribwright/messages';
import type { Unreadable } from '@cribwright/workspace';

/** Why a path cannot be read as a plan, as the command line says it. */
export const unreadableWords: Readonly<Record<Unreadable['unreadable'] | 'gone', Message>> = {
  gone: term('cli.gone'),
  outside: term('cli.outside'),
  'not a file': term('cli.not-a-file'),
  'not text': term('cli.not-text'),
  'too large': term('cli.too-large'),
  'looping link': term('cli.looping-link'),
  'not permitted': term('cli.not-permitted'),
  failed: term('cli.failed'),
};

/** The same for what the system says when a folder or a link cannot be looked at. */
export function systemWords(error: unknown): Message | Name {
  const code = error instanceof Error && 'code' in error ? error.code : undefined;
  if (code === 'ELOOP') return unreadableWords['looping link'];
  if (code === 'EACCES' || code === 'EPERM') return unreadableWords['not permitted'];
  if (code === 'ENOENT' || code === 'ENOTDIR') return unreadableWords.gone;
  return name(error instanceof Error ? error.message : String(error));
}
