import type { Ref } from '@cribwright/engine';
import { baseHeight, stackHeight } from '../space/crib-solids.js';
import { shortName } from '../text/short-name.js';
import type { Look } from '../views/look.js';

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
  for (const vehicle of plan.vehicles) {
    if (vehicle.position.kind === 'upright')
      put(vehicle.height, `top of ${shortName(vehicle.name)}`, { element: vehicle.id });
  }
  for (const crib of plan.cribs) {
    put(baseHeight(crib, plan) + stackHeight(crib), shortName(crib.name), crib.ref);
    for (const capture of crib.captures) {
      const vehicle = plan.vehicles.find((v) => v.id === capture.vehicle);
      const part = vehicle?.parts.find((p) => p.name === capture.part || p.id === capture.part);
      if (vehicle === undefined || part === undefined || vehicle.position.kind !== 'upright') continue;
      put(part.height.low, `${shortName(vehicle.name)} ${shortName(part.name)}`, {
        element: vehicle.id,
        property: part.id,
      });
    }
  }
  return [...found.values()].map(({ height, names, ref }) => ({
    key: String(Math.round(height * 1000)),
    height,
    words: `${say.long(height)}: ${listed(names)}`,
    ref,
  }));
}

/** Two or three names in full, of more the first two and how many; a vehicle that all share is named once. */
function listed(names: readonly string[]): string {
  const [first = '', ...rest] = names;
  const vehicle = first.slice(0, first.indexOf(' ') + 1);
  const short = [
    first,
    ...rest.map((n) => (vehicle !== '' && n.startsWith(vehicle) ? n.slice(vehicle.length) : n)),
  ];
  return short.length <= 3
    ? short.join(', ')
    : `${short.slice(0, 2).join(', ')} and ${short.length - 2} more`;
}
