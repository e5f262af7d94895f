import type { Words } from '@cribwright/messages';
import { cautionIn } from '../caution.js';
import { at, group, line, rectangle, text } from '../scene/draw.js';
import type { Frame, Item, Scene, SpaceScene, ViewChoice } from '../scene/scene.js';
import { textWidth } from '../text/font-metrics.js';
import { wrap } from '../text/wrap.js';
import { badge, type LegendEntry, legend } from './legend.js';
import { scaleBar } from './scale-bar.js';
import { leading, margin, sheetWidth, type } from './sizes.js';
import type { Scale } from './standard-scale.js';

/** One part of what the checks say, in a few words, with its sign. */
export interface Verdict {
  readonly level: 'danger' | 'warning';
  /** `Unsafe: ` */
  readonly start: string;
  /** What it is said of: `A`, `trailer`, `step 2`. */
  readonly names: readonly string[];
  /** Says that there are more names than these: `A, B and 3 more`. */
  readonly andMore: (names: string, more: number) => string;
}

export interface Heading {
  readonly title: string;
  readonly lines: readonly string[];
  /** What must not be overlooked, each on a line of its own. */
  readonly alarms?: readonly string[];
  /** How far the drawing is from done, beside the title: it comes and goes without moving anything. */
  readonly standing?: string;
  /** What is unsafe or was not checked, in the same place. */
  readonly verdicts?: readonly Verdict[];
}

/** Title and what is shown, over a fine rule. `bottom` is where the drawing may begin. */
export function heading(
  { title, lines, alarms = [], standing, verdicts = [] }: Heading,
  width = sheetWidth,
): { readonly items: readonly Item[]; readonly bottom: number } {
  const room = width - 2 * margin;
  let y = margin;
  const items: Item[] = [];
  const put = (key: string, words: string, size: number, weight: 'normal' | 'bold') => {
    wrap(words, room, size, weight).forEach((part, i) => {
      y += size * (i === 0 ? 1 : leading);
      items.push(text(`${key} ${i}`, at(margin, y), part, size, { weight }));
    });
  };
  put('title', title, type.title, 'bold');
  if (standing !== undefined) {
    const end = width - margin;
    items.push(
      ...badge('standing', 'warning', end - textWidth(standing, type.subtitle, 'bold') - 3.4, y - 1.2, 3.8),
      text('standing', at(end, y), standing, type.subtitle, {
        anchor: 'end',
        weight: 'bold',
        tone: 'warning',
      }),
    );
  }
  items.push(...besideTitle(verdicts, margin + textWidth(title, type.title, 'bold') + 12, width - margin, y));
  lines.forEach((words, i) => {
    y += 1.6;
    put(`line ${i}`, words, type.subtitle, 'normal');
  });
  alarms.forEach((alarm, a) => {
    const key = a === 0 ? 'alarm' : `alarm ${a + 1}`;
    wrap(alarm, room - 6, type.subtitle, 'bold').forEach((part, i) => {
      y += type.subtitle * (i === 0 ? 1 : leading) + (i === 0 ? 1.6 : 0);
      if (i === 0) items.push(...badge(key, 'danger', margin + 2, y - 1.2, 3.8));
      items.push(
        text(`${key} ${i}`, at(margin + 6, y), part, type.subtitle, { weight: 'bold', tone: 'danger' }),
      );
    });
  });
  y += 2.6;
  items.push(line('rule', 'scale', at(margin, y), at(width - margin, y)));
  return { items: [group('heading', items)], bottom: y + 3 };
}

/** What must be seen first, at the end of the title's line: in bold, with its sign; shortened where there is no room. */
function besideTitle(verdicts: readonly Verdict[], from: number, to: number, y: number): readonly Item[] {
  const size = type.subtitle;
  const sign = 5.4;
  let right = to;
  const items: Item[] = [];
  // The last is put first, so that the gravest stands at the left and takes the room that is left.
  [...verdicts].reverse().forEach((v, i, all) => {
    const share = (right - from) / (all.length - i) - sign - (i === 0 ? 0 : 4);
    const words = listed(v, share, size);
    if (words === undefined) return;
    const end = right - (i === 0 ? 0 : 4);
    const left = end - textWidth(words, size, 'bold');
    items.push(
      ...badge(`verdict ${v.level}`, v.level, left - 3.2, y - 1.2, 3.8),
      text(`verdict ${v.level}`, at(left, y), words, size, { weight: 'bold', tone: v.level }),
    );
    right = left - sign;
  });
  return items;
}

/** As many names as there is room for, and how many more there are. */
function listed({ start, names, andMore }: Verdict, room: number, size: number): string | undefined {
  for (let n = names.length; n > 0; n--) {
    const more = names.length - n;
    const shown = names.slice(0, n).join(', ');
    const words = `${start}${more === 0 ? shown : andMore(shown, more)}`;
    if (textWidth(words, size, 'bold') <= room) return words;
  }
  const count = `${start}${names.length}`;
  return textWidth(count, size, 'bold') <= room ? count : undefined;
}

/** A finished sheet: heading above, legend, scale and the caution below. */
export interface Sheet {
  readonly choice: ViewChoice;
  readonly heading: Heading;
  /** The drawing in words. */
  readonly spoken: string;
  /** Where the drawing begins is what `heading().bottom` says; `bottom` is where it ends. */
  readonly body: readonly Item[];
  readonly bottom: number;
  readonly legend: readonly LegendEntry[];
  readonly scale?: Scale;
  /** The reader's language and units. */
  readonly words: Words;
  readonly frame?: Frame;
  readonly width?: number;
  readonly space?: SpaceScene;
}

export function sheet(s: Sheet): Scene {
  const width = s.width ?? sheetWidth;
  const head = heading(s.heading, width);
  const { text: caution } = cautionIn(s.words);
  const top = s.bottom + 3;
  const bar = s.scale === undefined ? undefined : scaleBar(s.scale, s.words.units, width - margin, top + 4);
  const signs = legend(s.legend, margin, top, (bar?.left ?? width - margin) - margin);
  const under = Math.max(signs.bottom, bar === undefined ? top : top + 10);
  const warning = cautionBox(caution, under + 2.5, width);
  return {
    choice: s.choice,
    title: s.heading.title,
    words: s.spoken,
    width,
    height: warning.bottom + margin,
    frame: s.frame,
    items: [...head.items, ...s.body, group('legend', signs.items), ...(bar?.items ?? []), ...warning.items],
    caution,
    display: s.words.units,
    language: s.words.locale,
    ...(s.space === undefined ? {} : { space: s.space }),
  };
}

function cautionBox(
  caution: string,
  top: number,
  width: number,
): { readonly items: readonly Item[]; readonly bottom: number } {
  const [pad, size] = [2.2, type.small];
  const lines = wrap(caution, width - 2 * margin - 2 * pad, size);
  const high = lines.length * size * leading + 2 * pad - size * 0.35;
  return {
    items: [
      group('caution', [
        rectangle('frame', 'warning', margin, top, width - 2 * margin, high, 'light', { width: 0.3 }),
        ...lines.map((words, i) =>
          text(`line ${i}`, at(margin + pad, top + pad + size * 0.8 + i * size * leading), words, size),
        ),
      ]),
    ],
    bottom: top + high,
  };
}
