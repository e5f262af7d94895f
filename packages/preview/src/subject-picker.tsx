/** @jsxRuntime automatic @jsxImportSource preact */
import type { ViewChoice } from '@cribwright/drawing/page';
import type { JSX } from 'preact';
import { filled } from './filled.js';
import type { Show } from './joined.js';
import type { PanelWords } from './panel-words.js';
import { useWords } from './words-context.js';

const kinds: Readonly<Partial<Record<ViewChoice['view'], readonly string[]>>> = {
  crib: ['crib'],
  strut: ['strut'],
  'height limits': ['crib'],
};

/** Chooses the support that a close-up is about. */
export function SubjectPicker(props: {
  readonly show: Show;
  readonly choice: ViewChoice;
  readonly choose: (subject: string) => void;
}): JSX.Element | null {
  const { show, choice } = props;
  const words = useWords();
  const wanted = show.views.find((v) => v.id === choice.view)?.about ?? kinds[choice.view] ?? [];
  const list = show.subjects.filter((s) => wanted.includes(s.kind));
  if (list.length === 0) return null;
  return (
    <label class="picker">
      {kindWords(wanted, words)}
      <select value={choice.subject ?? ''} onChange={(e) => props.choose(e.currentTarget.value)}>
        {list.some((s) => s.id === choice.subject) ? null : <option value="">{words.choose}</option>}
        {list.map((s) => (
          <option key={s.id} value={s.id}>
            {s.name}
          </option>
        ))}
      </select>
    </label>
  );
}

/** `crib`, `crib or strut`. */
const kindWords = (kinds: readonly string[], words: PanelWords): string =>
  kinds
    .map((kind) => (kind === 'strut' ? words.strut : words.crib))
    .reduce((first, second) => filled(words.either, { first, second }));
