import type { Scene } from '../statics/index.js';

/** Friction that nothing on a fire ground has. */
const endless = 20;

/** The same scene with no wheel that can turn, or with nothing that can slip either. */
export const holdAll = (scene: Scene, what: 'wheels' | 'everything'): Scene => ({
  ...scene,
  contacts: scene.contacts.map(({ rolling: _, ...c }) =>
    what === 'wheels' ? c : { ...c, friction: Math.max(c.friction, endless) },
  ),
});
