/** @jsxRuntime automatic @jsxImportSource preact */

import type { Analysis, LoadCase, PaperTrail } from '@cribwright/engine';
import type { Figure } from '@cribwright/messages';
import { message, name, term, type Words } from '@cribwright/messages';
import type { JSX } from 'preact';

/** The loads as built, and when a vehicle beneath gives way, with the calculations written out. */
export function Calculations({
  analysis,
  words,
}: {
  readonly analysis: Analysis;
  readonly words: Words;
}): JSX.Element {
  const stage = analysis.stages.at(-1);
  const cases = stage === undefined ? [] : [stage.asBuilt, ...stage.losses];
  const worked = cases.filter((c) => (c.paper ?? []).length > 0);
  return (
    <section class="calculations">
      <h1>{words.message(term('field-sheet.calculations'))}</h1>
      {worked.length === 0 ? <p>{words.message(term('field-sheet.calculations-not-run'))}</p> : undefined}
      {worked.map((c) =>
        c.paper?.map((trail, i) => <Trail key={`${c.id} ${i}`} of={c} trail={trail} words={words} />),
      )}
    </section>
  );
}

function Trail({
  of,
  trail,
  words,
}: {
  readonly of: LoadCase;
  readonly trail: PaperTrail;
  readonly words: Words;
}): JSX.Element {
  const loads = of.reactions.flatMap((r) => {
    const figure = trail.loads[r.id];
    return figure === undefined ? [] : [{ id: r.id, figure }];
  });
  const carrying = loads.filter(({ figure }) => (figure.value?.high ?? 0) > 0);
  return (
    <section>
      <h2>
        {words.message(
          trail.corner === undefined
            ? of.title
            : message('field-sheet.case-corner', { title: of.title, corner: trail.corner }),
        )}
      </h2>
      <Lines figures={trail.settling} words={words} />
      <table>
        <tbody>
          {carrying.map(({ id, figure }) => (
            <tr key={id}>
              <td>{words.label(figure)}</td>
              <td class="number">{words.value(figure)}</td>
              <td>{words.calculation(figure)?.numbers ?? ''}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p>
        {words.message(
          message('field-sheet.idle-contacts', { contacts: name(String(loads.length - carrying.length)) }),
        )}
      </p>
      <Lines figures={trail.checks} words={words} />
    </section>
  );
}

const Lines = ({
  figures,
  words,
}: {
  readonly figures: readonly Figure[];
  readonly words: Words;
}): JSX.Element => (
  <ul>
    {figures.map((f) => (
      <li key={words.label(f)}>
        {words.label(f)}: {words.value(f)}
        {f.formula === undefined ? '' : ` = ${words.calculation(f)?.numbers}`}
      </li>
    ))}
  </ul>
);
