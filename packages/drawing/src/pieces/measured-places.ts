import type { Plan, Ref } from '@cribwright/model';
import type { Look } from '../look/look.js';
import type { SheetPoint } from '../scene/scene.js';
import { at3, type Point3 } from '../scene/vector.js';
import type { Station } from '../sheet/stations.js';
import { sideWords } from '../words/describe.js';
import { listOf } from './support-label.js';

interface Place {
  readonly name: string;
  readonly ref: Ref;
  readonly at: Point3;
}

/** Where each support stands: the middle of a crib, the base of a strut, an anchor in the ground. */
function places(look: Look): readonly Place[] {
  const { plan } = look;
  return [
    ...plan.cribs.map((c) => ({ name: c.name, ref: c.ref, at: at3(c.at.x, c.at.y, 0) })),
    ...plan.stepChocks.map((c) => ({ name: c.name, ref: c.ref, at: at3(c.at.x, c.at.y, 0) })),
    ...plan.struts.map((s) => ({ name: s.name, ref: s.ref, at: at3(s.foot.x, s.foot.y, 0) })),
    ...anchors(plan),
  ];
}

/** Each anchor in the ground once, however many ties are anchored to it. */
function anchors({ ties }: Plan): readonly Place[] {
  const found = new Map<string, Place>();
  for (const { from, to, ref } of ties) {
    for (const end of [from, to]) {
      if (end.kind === 'ground anchor')
        found.set(end.name, { name: end.name, ref, at: at3(end.x, end.y, 0) });
    }
  }
  return [...found.values()];
}

/** Supports at the same distance share one label: `A, B  19 ft 6 in`. */
function shared(list: readonly Place[], axis: 'x' | 'y'): readonly (readonly Place[])[] {
  const groups = new Map<number, Place[]>();
  for (const place of list) {
    const key = Math.round(place.at[axis] * 1000);
    const own = groups.get(key);
    if (own === undefined) groups.set(key, [place]);
    else own.push(place);
  }
  return [...groups.values()];
}

const names = (list: readonly Place[], { say }: Look): string =>
  listOf(
    list.map((p) => p.name),
    say,
  );

/** Distances back from the front of the main vehicle. */
export const alongStations = (look: Look, toSheet: (p: Point3) => SheetPoint): readonly Station[] =>
  shared(places(look), 'x').flatMap((list) => {
    const [first] = list;
    if (first === undefined) return [];
    const low = Math.max(...list.map((p) => toSheet(p.at).y));
    return [
      {
        key: `x ${names(list, look)}`,
        at: toSheet(first.at).x,
        from: low + 2,
        words: `${names(list, look)}: ${look.say.long(first.at.x)}`,
        ref: first.ref,
      },
    ];
  });

/** A distance off the centerline, with the rearmost of the supports that stand at it; m. */
interface AcrossStation {
  readonly key: string;
  readonly across: number;
  readonly rearmost: number;
  readonly words: string;
  readonly ref: Ref;
}

/** Distances off the centerline, to be placed by the view. */
export const acrossStations = (look: Look): readonly AcrossStation[] =>
  shared(places(look), 'y').flatMap((list) => {
    const [first] = list;
    return first === undefined
      ? []
      : [
          {
            key: `y ${names(list, look)}`,
            across: first.at.y,
            rearmost: Math.max(...list.map((p) => p.at.x)),
            words: `${names(list, look)}: ${look.say.message(sideWords(first.at.y, look.say))}`,
            ref: first.ref,
          },
        ];
  });

/** Distances off the centerline, along the bottom of a view from behind. */
export const offCenterStations = (look: Look, toSheet: (p: Point3) => SheetPoint): readonly Station[] =>
  acrossStations(look).map((s) => ({
    key: s.key,
    at: toSheet(at3(0, s.across, 0)).x,
    from: 0,
    words: s.words,
    ref: s.ref,
  }));
