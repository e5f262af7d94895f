import type { SourceNote } from '@cribwright/engine';

/** Where a value comes from, in words. Never empty. */
export function sourceInWords(source: SourceNote): string {
  switch (source.kind) {
    case 'published':
      return source.locator === undefined ? source.title : `${source.title}, ${source.locator}`;
    case 'common practice':
      return 'common practice, no source';
    case 'from memory':
      return source.title === undefined ? 'from memory' : `from memory: ${source.title}`;
    case 'policy': {
      const from = source.of === undefined ? '' : ` (${sourceInWords(source.of)})`;
      return `policy ${source.policy}: ${source.limit}${from}`;
    }
    case 'stated':
      return 'stated in the plan';
    case 'invented':
      return 'invented, for teaching only';
    case 'computed':
      return 'worked out';
    case 'unknown':
      return 'source not known';
  }
}
