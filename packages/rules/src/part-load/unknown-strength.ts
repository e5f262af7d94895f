import type { Workings } from '@cribwright/engine';
import { partLoads } from '@cribwright/engine/internal';
import { message, name, shown, term } from '@cribwright/messages';
import type { RuleFinding } from '../definition/rule.js';

/**
 * A crushed car under a truck, or a part that a crib stands on, of which no rating is stated. The plan may say that the
 * part can bear; how much is not known, and is not assumed. The loss of the car is among the cases that are checked
 * (loss-of-support), so that no check waits for its strength.
 */
export function unknownStrength(w: Workings): readonly RuleFinding[] {
  const standing = partLoads(w).filter(
    (p) => p.by === 'stands on' && p.part.mayBear && p.part.rating === undefined,
  );
  return [
    ...w.plan.contacts.flatMap((c): readonly RuleFinding[] => {
      const [lower, upper] = [w.vehicles.get(c.lower), w.vehicles.get(c.upper)];
      const part = lower?.parts.find((p) => p.id === c.lowerPart);
      if (c.coupled || lower === undefined || upper === undefined || part?.rating !== undefined) return [];
      const load = w.loads().get(`${c.id}#1`)?.load;
      // Without a load there is nothing to say beyond what the rules on loads say.
      if (load?.value === undefined || load.value.high <= 0) return [];
      return [
        {
          subject: { element: lower.id },
          at: c.ref,
          severity: 'warning',
          message: message('part-load.vehicle-unknown', {
            lower: name(lower.name),
            upper: name(upper.name),
            load: shown(load),
          }),
          figures: [load],
          governs: load.governs ?? term('figure.as-built'),
        },
      ];
    }),
    ...standing.flatMap((p): readonly RuleFinding[] =>
      p.load.value === undefined || p.load.value.high <= 0
        ? []
        : [
            {
              subject: p.subject,
              at: p.at,
              severity: 'note',
              message: message('part-load.base-unknown', {
                part: name(p.part.name),
                vehicle: name(p.vehicle.name),
                support: p.support,
                load: shown(p.load),
              }),
              figures: [p.load],
              related: [{ at: p.part.ref, message: term('part-load.part-here') }],
            },
          ],
    ),
  ];
}
