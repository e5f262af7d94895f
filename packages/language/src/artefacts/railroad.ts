import { message, term, type Words } from '@cribwright/messages';
import { nameLabels, textLabels } from '../bound/label-words.js';
import type { Shape } from '../bound/shape.js';
import { dueOf } from '../phrase/dimension-words.js';
import { kindWords } from '../phrase/kind-words.js';

/** A piece of a railroad drawing: its size, and how to draw it with its entry at (x, y). */
interface Track {
  readonly width: number;
  /** Above and below the line that runs through it. */
  readonly up: number;
  readonly down: number;
  draw(x: number, y: number): string;
}

const gap = 10;
const bow = 8;

/** A line of the language to be drawn: its key, then its phrase. */
export interface DrawnLine {
  readonly key: string;
  readonly phrase: Shape;
  /** It starts with a number in place of a key. */
  readonly numbered?: boolean;
}

/** The railroad drawing of all lines of one block, one below the other, with what is to be filled in in a language. */
export function railroadOf(title: string, lines: readonly DrawnLine[], words: Words): string {
  const tracks = lines.map((line) =>
    row([box(line.key, line.numbered !== true), trackOf(line.phrase, words)]),
  );
  const margin = 14;
  const width = Math.max(...tracks.map((t) => t.width)) + 2 * margin + 2 * gap;
  let y = margin;
  const drawn = tracks.map((track, i) => {
    y += track.up;
    const at = y;
    y += track.down + 18;
    const end = margin + gap + track.width;
    const label = [lines[i]?.key ?? '', spelled(lines[i]?.phrase ?? nothing, words)].join(' ').trim();
    return [
      `<g><title>${plainText(label)}</title>`,
      `<path d="M${n(margin)} ${n(at - 6)}v12M${n(margin)} ${n(at)}h${gap}M${n(end)} ${n(at)}h${gap}M${n(end + gap)} ${n(at - 6)}v12"/>`,
      track.draw(margin + gap, at),
      '</g>',
    ].join('');
  });
  const height = y - 18 + margin;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${n(width)}" height="${n(height)}" viewBox="0 0 ${n(width)} ${n(height)}" role="img">`,
    `<title>${plainText(title)}</title>`,
    '<style>path{fill:none;stroke:#5a6672;stroke-width:1.5}rect{fill:#fff;stroke:#5a6672;stroke-width:1.2}rect.word{fill:#e8eef4}text{font:13px ui-monospace,Consolas,monospace;fill:#1c2733;text-anchor:middle}@media(prefers-color-scheme:dark){path,rect{stroke:#9fb0c0}rect{fill:#1e252d}rect.word{fill:#2d3a47}text{fill:#e6edf3}}</style>',
    ...drawn,
    '</svg>',
    '',
  ].join('\n');
}

const nothing: Shape = { kind: 'sequence', items: [] };

function trackOf(p: Shape, words: Words): Track {
  const track = (item: Shape): Track => trackOf(item, words);
  switch (p.kind) {
    case 'word':
      return p.words.length === 1 ? box(p.words[0] ?? '', true) : branches(p.words.map((w) => box(w, true)));
    case 'choice':
      return branches(p.words.map((w) => box(w, true)));
    case 'symbol':
      return box(p.symbol, true);
    case 'sequence':
      return row(p.items.map(track));
    case 'optional':
      return branches([straight, track(p.item)]);
    case 'either':
      return branches(p.items.map(track));
    case 'any order':
      return loop(branches([straight, ...p.items.map(track)]), undefined);
    case 'list':
      return loop(track(p.item), ',');
    case 'group':
      return track(p.item);
    default:
      return box(label(p, words), false);
  }
}

/** What is to be filled in, in words. */
function label(p: Shape, { message: say }: Words): string {
  switch (p.kind) {
    case 'quantity': {
      const { dimensions, range } = p.rule;
      if (dimensions.length === 0) return say(term('reference.value'));
      const quantity = dueOf(dimensions);
      return say(range ? message('reference.or-a-range', { quantity }) : quantity);
    }
    case 'reference':
      return say(kindWords(p.kinds));
    case 'part':
      return say(term('reference.part'));
    case 'name':
      return say(message('reference.name-of', { what: term(nameLabels[p.label]) }));
    case 'text':
      return `"${say(term(textLabels[p.label]))}"`;
    case 'date':
      return say(term('reference.date'));
    case 'size':
      return say(term('reference.size'));
    case 'rule':
      return say(term('reference.name-of-a-check'));
    case 'expression':
      return say(term('reference.calculation'));
    case 'arguments':
      return say(term('reference.name-is-value'));
    default:
      return '';
  }
}

/** A line as text, for readers who do not see the drawing. */
function spelled(p: Shape, words: Words): string {
  const all = (items: readonly Shape[], between: string): string =>
    items.map((item) => spelled(item, words)).join(between);
  switch (p.kind) {
    case 'word':
    case 'choice':
      return p.words.join(' | ');
    case 'symbol':
      return p.symbol;
    case 'sequence':
      return all(p.items, ' ');
    case 'either':
      return `(${all(p.items, ' | ')})`;
    case 'any order':
      return `(${all(p.items, ' | ')})*`;
    case 'optional':
      return `[${spelled(p.item, words)}]`;
    case 'list':
      return `${spelled(p.item, words)} , …`;
    case 'group':
      return spelled(p.item, words);
    default:
      return `‹${label(p, words)}›`;
  }
}

const straight: Track = { width: 10, up: 0, down: 0, draw: (x, y) => `<path d="M${n(x)} ${n(y)}h10"/>` };

const box = (text: string, word: boolean): Track => {
  const width = text.length * 7.9 + 18;
  return {
    width,
    up: 13,
    down: 13,
    draw: (x, y) =>
      `<rect class="${word ? 'word' : 'fill'}" x="${n(x)}" y="${n(y - 13)}" width="${n(width)}" height="26" rx="${word ? 13 : 2}"/>` +
      `<text x="${n(x + width / 2)}" y="${n(y + 4.5)}">${plainText(text)}</text>`,
  };
};

const row = (items: readonly Track[]): Track => {
  const list = items.filter((t) => t.width > 0);
  const width = list.reduce((sum, t) => sum + t.width, 0) + Math.max(0, list.length - 1) * gap;
  return {
    width,
    up: Math.max(0, ...list.map((t) => t.up)),
    down: Math.max(0, ...list.map((t) => t.down)),
    draw: (x, y) => {
      let at = x;
      return list
        .map((t, i) => {
          const link = i > 0 ? `<path d="M${n(at)} ${n(y)}h${gap}"/>` : '';
          at += i > 0 ? gap : 0;
          const drawn = t.draw(at, y);
          at += t.width;
          return link + drawn;
        })
        .join('');
    },
  };
};

/** One way or another: the first runs straight on, the others below it. */
const branches = (items: readonly Track[]): Track => {
  const [first, ...rest] = items;
  if (!first || rest.length === 0) return first ?? straight;
  const inner = Math.max(...items.map((t) => t.width));
  const width = inner + 4 * bow;
  let depth = first.down;
  const tops = rest.map((t) => {
    const at = depth + 8 + t.up;
    depth = at + t.down;
    return at;
  });
  return {
    width,
    up: first.up,
    down: depth,
    draw: (x, y) => {
      const lay = (t: Track, dy: number) => {
        const lead = (inner - t.width) / 2;
        const left = x + 2 * bow;
        const turn =
          dy === 0
            ? `M${n(x)} ${n(y)}H${n(left + lead)}M${n(left + lead + t.width)} ${n(y)}H${n(x + width)}`
            : `M${n(x)} ${n(y)}q${bow} 0 ${bow} ${bow}V${n(y + dy - bow)}q0 ${bow} ${bow} ${bow}H${n(left + lead)}` +
              `M${n(left + lead + t.width)} ${n(y + dy)}H${n(x + width - 2 * bow)}q${bow} 0 ${bow} ${-bow}V${n(y + bow)}q0 ${-bow} ${bow} ${-bow}`;
        return `<path d="${turn}"/>${t.draw(left + lead, y + dy)}`;
      };
      return lay(first, 0) + rest.map((t, i) => lay(t, tops[i] ?? 0)).join('');
    },
  };
};

/** Once or more, with a mark between. */
const loop = (item: Track, between: string | undefined): Track => {
  const back = between === undefined ? straight : box(between, true);
  const inner = Math.max(item.width, back.width);
  const width = inner + 4 * bow;
  const depth = item.down + 8 + back.up;
  return {
    width,
    up: item.up,
    down: depth + back.down,
    draw: (x, y) => {
      const lead = (inner - item.width) / 2;
      const left = x + 2 * bow;
      const mid = left + (inner - back.width) / 2;
      const d =
        `M${n(x)} ${n(y)}H${n(left + lead)}M${n(left + lead + item.width)} ${n(y)}H${n(x + width)}` +
        `M${n(x + width - 2 * bow)} ${n(y)}q${bow} 0 ${bow} ${bow}V${n(y + depth - bow)}q0 ${bow} ${-bow} ${bow}H${n(mid + back.width)}` +
        `M${n(mid)} ${n(y + depth)}H${n(left)}q${-bow} 0 ${-bow} ${-bow}V${n(y + bow)}q0 ${-bow} ${bow} ${-bow}`;
      return `<path d="${d}"/>${item.draw(left + lead, y)}${back.draw(mid, y + depth)}`;
    },
  };
};

const n = (value: number): string => String(Math.round(value * 10) / 10 + 0);
const plainText = (text: string): string =>
  text.replace(/[&<>"]/g, (c) => ({ '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' })[c] ?? c);
