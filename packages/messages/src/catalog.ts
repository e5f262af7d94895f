import { FluentBundle, FluentNumber, FluentResource } from '@fluent/bundle';
import { fault } from './faults.js';
import { optionalHoles } from './generated/catalogs.js';
import { englishTexts } from './generated/texts/english.js';
import { spanishTexts } from './generated/texts/spanish.js';

type Format = (id: string, holes: Readonly<Record<string, string | number>>) => string | undefined;

/** The messages of a language, as Fluent text, by package. A bundle may hold those of some packages alone. */
const catalogs = { en: englishTexts, es: spanishTexts };

const known = new Map<string, Format>();

/** Formats messages of one language. Its catalog is read at the first call. */
export function catalogFor(locale: keyof typeof catalogs): Format {
  const before = known.get(locale);
  if (before !== undefined) return before;
  const bundle = new FluentBundle(locale === 'en' ? 'en-US' : locale, { useIsolating: false });
  for (const text of Object.values(catalogs[locale]()))
    for (const error of bundle.addResource(new FluentResource(text))) fault(error.message);
  const format: Format = (id, holes) => {
    const pattern = bundle.getMessage(id.replace('.', '--'))?.value;
    if (pattern == null) return undefined;
    const errors: Error[] = [];
    const args: Record<string, string | FluentNumber> = {};
    for (const name of optionalHoles[id] ?? []) args[name] = '';
    for (const [name, content] of Object.entries(holes))
      args[name] = typeof content === 'number' ? new FluentNumber(content) : content;
    const text = bundle.formatPattern(pattern, args, errors);
    if (errors.length > 0) fault(`${id}: ${errors.map((e) => e.message).join('; ')}`);
    return text;
  };
  known.set(locale, format);
  return format;
}
