import type { Unreadable } from '@cribwright/language';

/** Why a path cannot be read as a plan, as the command line says it. */
export const unreadableWords: Readonly<Record<Unreadable['unreadable'] | 'gone', string>> = {
  gone: 'there is no such file or folder',
  outside: 'it is a link that leads outside this folder. Copy the file into the folder, or name it by itself',
  'not a file': 'it is no file',
  'not text': 'it is not text in UTF-8. Save it as UTF-8 text',
  'too large': 'it is larger than 4 MB, so it is no plan',
  'looping link': 'it is a link that leads back to itself',
  'not permitted': 'there is no permission to open it',
  failed: 'it could not be opened',
};

/** The same for what the system says when a folder or a link cannot be looked at. */
export function systemWords(error: unknown): string {
  const code = error instanceof Error && 'code' in error ? error.code : undefined;
  if (code === 'ELOOP') return unreadableWords['looping link'];
  if (code === 'EACCES' || code === 'EPERM') return unreadableWords['not permitted'];
  if (code === 'ENOENT' || code === 'ENOTDIR') return unreadableWords.gone;
  return error instanceof Error ? error.message : String(error);
}
