import { limitKinds, type Plan, type PolicyKey } from '@cribwright/model';
import { limitFigure } from '@cribwright/model/internal';
import type { LimitChange } from './comparison.js';

/** Limits of two versions of a plan that differ, and whether they became less safe. */
export function limitChanges(before: Plan, after: Plan): readonly LimitChange[] {
  return (Object.keys(limitKinds) as PolicyKey[]).flatMap((key) => {
    const [old, now] = [limitFigure(before.policy, key), limitFigure(after.policy, key)];
    const [was, is] = [before.policy.limits[key].value, after.policy.limits[key].value];
    if (JSON.stringify(was) === JSON.stringify(is)) return [];
    return [{ key, policy: after.policy.name, before: old, after: now, looser: isLooser(key, old, now) }];
  });
}

function isLooser(
  key: PolicyKey,
  old: LimitChange['before'],
  now: LimitChange['after'],
): boolean | undefined {
  const { safer } = limitKinds[key];
  if (safer === 'neither' || old.value === undefined || now.value === undefined) return undefined;
  // A range is as loose as its looser end.
  return safer === 'lower' ? now.value.high > old.value.high : now.value.low < old.value.low;
}
