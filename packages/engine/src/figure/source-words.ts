import type { FigureSource } from './figure.js';

/** A source as a reader sees it: `NDS 2018, 3.10.4`, `policy Shipped: common practice, no source`. */
export function sourceInWords(note: FigureSource): string {
  switch (note.kind) {
    case 'published':
      return note.locator === undefined ? note.title : `${note.title}, ${note.locator}`;
    case 'common practice':
      return 'common practice, no source';
    case 'from memory':
      return note.title === undefined ? 'from memory' : `from memory: ${note.title}`;
    case 'policy':
      return `policy ${note.policy}, ${note.limit}${note.of === undefined ? '' : `: ${sourceInWords(note.of)}`}`;
    case 'stated':
      return 'stated in the plan';
    case 'invented':
      return 'invented for the example';
    case 'computed':
      return 'worked out';
    case 'unknown':
      return 'source not known';
  }
}
