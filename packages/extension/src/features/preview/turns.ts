import { leaveOut, type Scene } from '@cribwright/drawing';
import type { Show, Whole } from './show-message.js';

/** Remembers what the panel was sent last, so that of the next drawing only what changed is sent. */
export class Turns {
  private last:
    | { readonly uri: string; readonly shown: number; readonly scenes: readonly Scene[] }
    | undefined;
  private turn = 0;

  /** The page has nothing any more: the next drawing is sent whole. */
  forget(): void {
    this.last = undefined;
  }

  /** The message that is to be sent for a drawing. A message without one leaves what the panel has. */
  next(message: Whole): Show {
    const { uri, shown } = message;
    if (message.scenes.length === 0) return message;
    const before = this.last?.uri === uri && this.last.shown === shown ? this.last.scenes : undefined;
    const parts = message.scenes.map((scene, i) => leaveOut(before?.[i], scene));
    this.last = { uri, shown, scenes: parts.map((p) => p.scene) };
    const after = this.turn;
    this.turn++;
    return {
      ...message,
      scenes: parts.map((p) => p.sent),
      turn: this.turn,
      ...(before === undefined ? {} : { after }),
    };
  }
}
