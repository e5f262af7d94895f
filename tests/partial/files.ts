import { mkdirSync, mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { run } from '@cribwright/cli';

/** A small plan in which nothing is unsafe. It reads from two files beside it. */
export const safeFiles: Readonly<Record<string, string>> = {
  'plan.crib': `use "library/vehicles.crib"
use "fleet.crib"
use "policy.crib"

plan "Flatbed at the scale house" {
  policy  AlderRidge
  ground {
    surface  asphalt
    grade    0 %
  }
  vehicle truck : CountyFlatbed {
    cargo   "lumber" usual from 4 ft to 20 ft height 4 to 6 ft
    brakes  set
  }
  steps {
    1  chock  truck both directions  crew 1  takes 1 min
  }
  size up {
    fuel       "no leak seen"
    battery    "disconnected"
    cargo      "lumber, banded"
    brakes     "spring brakes set"
  }
  accept loss-of-support on truck because "nobody works under it" by "training captain" until 2027-03-01
  expect safe
}
`,
  'fleet.crib': `use "weights.crib"

let usual = 4,000 lb

vehicle type CountyFlatbed "county flatbed" {
  length  24 ft
  width   8 ft
  height  9 ft
  center  42 in high
  axle 1 {
    at          4 ft
    empty       steer
    track       6 ft
    suspension  spring
  }
  axle 2 {
    at          20 ft
    empty       7,000 lb
    track       6 ft
    suspension  spring
  }
}
`,
  'weights.crib': 'let steer = 8,000 lb\n',
  'policy.crib': `policy AlderRidge : Shipped "Alder Ridge County" {
  authority  "training division"
}
`,
};

export interface Ended {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}

/** Runs the command line on files of a new folder. */
export async function ran(files: Readonly<Record<string, string>>, ...args: string[]): Promise<Ended> {
  const cwd = mkdtempSync(join(tmpdir(), 'cribwright-partial-'));
  for (const [name, text] of Object.entries(files)) {
    mkdirSync(dirname(join(cwd, name)), { recursive: true });
    writeFileSync(join(cwd, name), text);
  }
  let out = '';
  let err = '';
  const code = await run(args, {
    cwd,
    env: {},
    isTTY: false,
    today: '2026-11-25',
    out: (text) => {
      out += text;
    },
    err: (text) => {
      err += text;
    },
    stdin: async () => '',
  });
  return { code, out, err };
}

/** The files with a piece of one of them changed. The piece must be there. */
export function withSlip(
  name: string,
  from: string,
  to: string,
  files: Readonly<Record<string, string>> = safeFiles,
): Readonly<Record<string, string>> {
  const text = files[name];
  if (text === undefined || !text.includes(from)) throw new Error(`${name} has no “${from}”`);
  return { ...files, [name]: text.replace(from, () => to) };
}
