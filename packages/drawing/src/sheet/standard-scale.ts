/** A scale that a drafter's rule has. */
export interface Scale {
  /** One on the sheet stands for this many in the world. */
  readonly ratio: number;
  /** mm on the sheet for each m. */
  readonly perMeter: number;
  readonly words: string;
}

const us: readonly (readonly [number, string])[] = [
  [2, '6 in = 1 ft'],
  [4, '3 in = 1 ft'],
  [8, '1 1/2 in = 1 ft'],
  [12, '1 in = 1 ft'],
  [16, '3/4 in = 1 ft'],
  [24, '1/2 in = 1 ft'],
  [32, '3/8 in = 1 ft'],
  [48, '1/4 in = 1 ft'],
  [64, '3/16 in = 1 ft'],
  [96, '1/8 in = 1 ft'],
  [128, '3/32 in = 1 ft'],
  [192, '1/16 in = 1 ft'],
  [240, '1 in = 20 ft'],
  [360, '1 in = 30 ft'],
  [480, '1 in = 40 ft'],
  [600, '1 in = 50 ft'],
  [1200, '1 in = 100 ft'],
  [2400, '1 in = 200 ft'],
  [6000, '1 in = 500 ft'],
  [12000, '1 in = 1,000 ft'],
];
const si = [
  2, 5, 10, 15, 20, 25, 30, 40, 50, 75, 100, 125, 150, 200, 250, 300, 400, 500, 1000, 2000, 5000, 10000,
];

/** The largest standard scale at which `size` meters fit into `room` millimeters, both ways. */
export function standardScale(
  size: { readonly across: number; readonly down: number },
  room: { readonly across: number; readonly down: number },
  display: 'us' | 'si',
): Scale {
  const needed = Math.max((size.across * 1000) / room.across, (size.down * 1000) / room.down);
  const list: readonly (readonly [number, string])[] =
    display === 'us' ? us : si.map((ratio) => [ratio, ''] as const);
  const [ratio, words] = list.find(([r]) => r >= needed) ?? [Math.ceil(needed / 1000) * 1000, ''];
  return {
    ratio,
    perMeter: 1000 / ratio,
    words: words === '' ? `1 : ${ratio}` : `${words} (1 : ${ratio})`,
  };
}
