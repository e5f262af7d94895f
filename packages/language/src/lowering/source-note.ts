import type { SourceNote } from '@cribwright/messages';
import type { Written } from '../phrase/pattern.js';

/** What `source …` at the end of a line yields. */
export interface SourceValues {
  readonly published?: true | undefined;
  readonly sourceTitle?: Written | undefined;
  readonly locator?: Written | undefined;
  readonly commonPractice?: true | undefined;
  readonly fromMemory?: true | undefined;
  readonly memoryOf?: Written | undefined;
  readonly invented?: true | undefined;
  readonly stated?: true | undefined;
  readonly unknownSource?: true | undefined;
}

export function noteOf(v: SourceValues): SourceNote | undefined {
  if (v.published && v.sourceTitle) {
    const title = v.sourceTitle.text;
    return v.locator ? { kind: 'published', title, locator: v.locator.text } : { kind: 'published', title };
  }
  if (v.commonPractice) return { kind: 'common practice' };
  if (v.fromMemory)
    return v.memoryOf ? { kind: 'from memory', title: v.memoryOf.text } : { kind: 'from memory' };
  if (v.invented) return { kind: 'invented' };
  if (v.stated) return { kind: 'stated' };
  if (v.unknownSource) return { kind: 'unknown' };
  return undefined;
}
