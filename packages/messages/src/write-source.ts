import type { FigureSource } from './values/values.js';

type Format = (id: string, holes: Readonly<Record<string, string>>) => string;

/** A source as a reader sees it: `NDS 2018, 3.10.4`, `policy Shipped, use limit: common practice, no source`. */
export function writeSource(note: FigureSource, format: Format): string {
  switch (note.kind) {
    case 'published':
      return note.locator === undefined ? note.title : `${note.title}, ${note.locator}`;
    case 'common practice':
      return format('source.common-practice', {});
    case 'from memory':
      return note.title === undefined
        ? format('source.from-memory', {})
        : format('source.from-memory-of', { title: note.title });
    case 'policy':
      return note.of === undefined
        ? format('source.policy', { policy: note.policy, limit: note.limit })
        : format('source.policy-of', {
            policy: note.policy,
            limit: note.limit,
            of: writeSource(note.of, format),
          });
    case 'stated':
      return format('source.stated', {});
    case 'invented':
      return format('source.invented', {});
    case 'computed':
      return format('source.computed', {});
    case 'unknown':
      return format('source.unknown', {});
  }
}
