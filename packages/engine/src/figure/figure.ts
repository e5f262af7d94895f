export type { Figure, FigureSource } from '@cribwright/messages';
