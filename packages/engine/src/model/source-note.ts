export type { SourceNote } from '@cribwright/messages';
