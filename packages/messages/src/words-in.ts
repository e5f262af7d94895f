import type { System } from '@cribwright/units';
import { catalogFor } from './catalog.js';
import { fault } from './faults.js';
import { showFigureValue, showQuantity } from './show-quantity.js';
import type { Figure, FigureSource, Hole, List, Message, Phrase, Quantity } from './values/values.js';
import { writeCalculation } from './write-calculation.js';
import { writeSource } from './write-source.js';

/** Languages that words are made in. */
export type Locale = 'en' | 'es';

/** Makes words in one language and one system of units. */
export interface Words {
  readonly locale: Locale;
  readonly units: System;
  /** A message, label, term or other phrase. */
  readonly message: (m: Phrase) => string;
  /** A figure's name: `height limit`. */
  readonly label: (f: Figure) => string;
  /** A figure's value as its calculation uses it: `38.5 in`, `36,000 to 42,000 lb`, `not known`. */
  readonly value: (f: Pick<Figure, 'value' | 'quantity' | 'rounding' | 'unit'>) => string;
  /** Name and value: `height 38.5 in`. */
  readonly figure: (f: Figure) => string;
  /** How a figure was computed: with names (`ratio × width`) and with numbers (`1.5 × 16 in`). */
  readonly calculation: (f: Figure) => { readonly names: string; readonly numbers: string } | undefined;
  /** A number as a sentence or a drawing says it: tape fractions, three significant figures. */
  readonly quantity: (q: Quantity) => string;
  readonly source: (s: FigureSource) => string;
}

const made = new Map<string, Words>();

/** The words of a language and a system of units. Cheap to call again. */
export function wordsIn(locale: Locale, units: System): Words {
  const key = `${locale} ${units}`;
  const known = made.get(key);
  if (known !== undefined) return known;
  const words = makeWords(locale, units);
  made.set(key, words);
  return words;
}

function makeWords(locale: Locale, units: System): Words {
  const notKnown = () => format('word.not-known', {});

  const format = (id: string, holes: Readonly<Record<string, string | number>>): string => {
    const text = catalogFor(locale)(id, holes) ?? (locale === 'en' ? undefined : catalogFor('en')(id, holes));
    if (text !== undefined) return text;
    fault(`No message ${id} in ${locale}.`);
    return [id, ...Object.values(holes)].join(' ');
  };

  /** What is said once is said again after the next edit, most of it word for word. */
  const said = new WeakMap<Message, string>();
  const message = (m: Phrase): string => {
    if (m.kind === 'name') return m.text;
    if (m.kind === 'list') return list(m);
    const before = said.get(m);
    if (before !== undefined) return before;
    const text = written(m);
    said.set(m, text);
    return text;
  };

  const written = (m: Message): string => {
    const holes: Record<string, string | number> = {};
    for (const [name, content] of Object.entries(m.holes))
      holes[name] = content.kind === 'count' ? content.count : hole(content);
    return format(m.id, holes).trimEnd();
  };

  const list = ({ items, join }: List): string => {
    const words = items.map(hole).filter((t) => t !== '');
    if (join === 'none') return words.join('');
    if (join === 'groups') return words.join('; ');
    if (join === 'plain' || words.length < 2) return words.join(', ');
    const last = words.at(-1) ?? '';
    return format(join === 'and' ? 'word.list-and' : 'word.list-or', {
      first: words.slice(0, -1).join(', '),
      last,
    });
  };

  /** Numbers are made with `to` between the ends of a range; other languages have a word of their own. */
  const range = (number: string): string => {
    const [low, high] = locale === 'en' ? [] : number.split(' to ');
    return low === undefined || high === undefined ? number : format('word.range', { low, high });
  };
  const quantity = (q: Quantity): string => range(showQuantity(q, units) ?? notKnown());
  const value: Words['value'] = (f) => range(showFigureValue(f, units) ?? notKnown());
  const label = (f: Figure): string => message(f.label);
  const calculation: Words['calculation'] = (f) =>
    writeCalculation(f, { units, label, message, format, notKnown, value });

  const hole = (content: Hole): string => {
    switch (content.kind) {
      case 'name':
        return content.text;
      case 'count':
        return String(content.count);
      case 'quantity':
        return quantity(content);
      case 'figure':
        return value(content.figure);
      case 'calculation':
        return calculation(content.figure)?.numbers ?? value(content.figure);
      case 'list':
        return list(content);
      case 'message':
        return message(content);
    }
  };

  return {
    locale,
    units,
    message,
    label,
    value,
    figure: (f) => `${label(f)} ${value(f)}`,
    calculation,
    quantity,
    source: (s) => writeSource(s, format),
  };
}
