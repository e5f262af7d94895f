import { codeOf, problemKeys } from '@cribwright/language/internal';
import { type Message, term, withOpenHoles } from '@cribwright/messages';
import { plain } from '../context/markdown.js';
import { type Locale, say as translate } from '../l10n/say.js';

/** The page of a message about the text of a plan: what it says, and what it offers. `undefined` for no such code. */
export function textPage(code: string, locale: Locale): string | undefined {
  const keys = problemKeys.filter((key) => codeOf(key) === code);
  if (keys.length === 0) return undefined;
  const sentences = (fixes: boolean): readonly string[] =>
    keys
      .filter((key) => key.endsWith('fix') === fixes)
      .map((key) => `- ${plain(translate(withOpenHoles(`language.${key}`), locale))}`);
  const section = (title: Message, lines: readonly string[]): readonly string[] =>
    lines.length === 0 ? [] : [`## ${translate(title, locale)}`, lines.join('\n')];
  return [
    `# ${code}`,
    translate(term('editor.about-syntax'), locale),
    ...section(term('editor.messages'), sentences(false)),
    ...section(term('editor.fixes'), sentences(true)),
  ]
    .join('\n\n')
    .concat('\n');
}
