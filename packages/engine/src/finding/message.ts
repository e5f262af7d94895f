export type { Message } from '@cribwright/messages';
