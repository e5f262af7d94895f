import { type FigureSource, sourceInWords } from '@cribwright/engine';
import type { Locale } from './say.js';

/** A source in a reader's language. Titles and their places stay as they are printed. */
export function sourceWords(note: FigureSource, locale: Locale): string {
  if (locale === 'en') return sourceInWords(note);
  switch (note.kind) {
    case 'published':
      return sourceInWords(note);
    case 'common practice':
      return 'práctica común, sin fuente';
    case 'from memory':
      return note.title === undefined ? 'de memoria' : `de memoria: ${note.title}`;
    case 'policy': {
      const of = note.of === undefined ? '' : `: ${sourceWords(note.of, locale)}`;
      return `norma ${note.policy}, ${note.limit}${of}`;
    }
    case 'stated':
      return 'escrito en el plan';
    case 'invented':
      return 'inventado para el ejemplo';
    case 'computed':
      return 'calculado';
    case 'unknown':
      return 'fuente desconocida';
  }
}
