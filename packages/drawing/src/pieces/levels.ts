import { message, name as named } from '@cribwright/messages';
import { place, type Ref, underside } from '@cribwright/model';
import type { Look } from '../look/look.js';
import { baseHeight } from '../space/crib-solids.js';
import { moreWords } from '../text/more-words.js';
import type { Say } from '../text/say.js';
import { shortName } from '../text/short-name.js';

export interface Level {
  readonly key: string;
  readonly height: number;
  readonly words: string;
  readonly ref?: Ref | undefined;
}

/** Heights worth reading: the ground, the undersides that are captured, the cribs' tops, the bodies' tops. */
export function levels(look: Look): readonly Level[] {
  const { plan, say } = look;
  const found = new Map<string, { height: number; names: string[]; ref: Ref }>();
  const put = (height: number, name: string, ref: Ref) => {
    const key = String(Math.round(height * 1000));
    const own = found.get(key);
    if (own === undefined) found.set(key, { height, names: [name], ref });
    else if (!own.names.includes(name)) own.names.push(name);
  };
  const placed = place(plan);
  for (const { given, top } of placed.vehicles.all) {
    if (given.position.kind === 'upright')
      put(top.low, say.message(message('piece.top-of', { name: named(shortName(given.name)) })), {
        element: given.id,
      });
  }
  for (const crib of placed.cribs.all) {
    put(baseHeight(crib) + crib.heightWithShims, shortName(crib.crib.name), crib.crib.ref);
    // Of one that pitches, each place has another height: the close-up of the crib shows it.
    for (const met of crib.contacts.flatMap((c) => c.given)) {
      if (met.vehicle.position.kind !== 'upright') continue;
      put(
        underside(met.vehicle, met.part, met.place.at).low,
        `${shortName(met.vehicle.name)} ${shortName(met.part.name)}`,
        { element: met.vehicle.id, property: met.part.id },
      );
    }
  }
  return [...found.values()].map(({ height, names, ref }) => ({
    key: String(Math.round(height * 1000)),
    height,
    words: `${say.long(height)}: ${listed(names, say)}`,
    ref,
  }));
}

/** Two or three names in full, of more the first two and how many; a vehicle that all share is named once. */
function listed(names: readonly string[], say: Say): string {
  const [first = '', ...rest] = names;
  const vehicle = first.slice(0, first.indexOf(' ') + 1);
  const short = [
    first,
    ...rest.map((n) => (vehicle !== '' && n.startsWith(vehicle) ? n.slice(vehicle.length) : n)),
  ];
  return short.length <= 3
    ? short.join(', ')
    : moreWords(short.slice(0, 2).join(', '), short.length - 2, say);
}
