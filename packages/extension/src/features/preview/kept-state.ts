import type { PanelState } from '@cribwright/preview';

/** What a panel of an earlier window kept of itself; `undefined` where it cannot be read. */
export const keptState = (state: unknown): PanelState | undefined => {
  if (typeof state !== 'object' || state === null) return undefined;
  const { uri, plan, choice } = state as Partial<PanelState>;
  return typeof uri === 'string' && typeof plan === 'number' && typeof choice === 'object'
    ? (state as PanelState)
    : undefined;
};
