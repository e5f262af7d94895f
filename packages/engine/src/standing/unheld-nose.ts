import type { StandingGroup } from './standing.js';

/** Whether the finished plan does not hold a vehicle whose coupling has no other half in the plan. */
export const isUnheldNose = ({ loose, stages }: StandingGroup): boolean =>
  loose.length > 0 && stages.at(-1)?.asBuilt.failure !== undefined;
