import { putBack, type Scene } from '@cribwright/drawing/page';
import type { ToPanel } from './messages.js';

export type Show = Extract<ToPanel, { kind: 'show' }>;

/** What is drawn now: the last message that had a drawing, its scenes joined to those before. */
export interface Drawn {
  readonly show: Show;
  readonly scenes: readonly Scene[];
}

/**
 * The last drawing and the message joined. A message without a drawing leaves the last one up: the panel is never
 * blank. `undefined` where the message builds upon a drawing that is not here.
 */
export function joined(before: Drawn | undefined, message: Show): Drawn | undefined {
  const same = before?.show.uri === message.uri ? before : undefined;
  const show = { ...message, losses: message.losses ?? same?.show.losses ?? [] };
  if (show.scenes.length === 0 && same !== undefined) return { show, scenes: same.scenes };
  if (show.after !== undefined && before?.show.turn !== show.after) return undefined;
  const scenes: Scene[] = [];
  for (const [i, sent] of show.scenes.entries()) {
    const scene = putBack(before?.scenes[i], sent);
    if (scene === undefined) return undefined;
    scenes.push(scene);
  }
  return { show, scenes };
}
