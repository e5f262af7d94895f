/** @jsxRuntime automatic @jsxImportSource preact */
import { type Analysis, type Figure, type LoadCase, type PaperTrail, print } from '@cribwright/engine';
import type { JSX } from 'preact';

/** The loads as built, and when a vehicle beneath gives way, with the calculations written out. */
export function Calculations({ analysis }: { readonly analysis: Analysis }): JSX.Element {
  const stage = analysis.stages.at(-1);
  const cases = stage === undefined ? [] : [stage.asBuilt, ...stage.losses];
  const worked = cases.filter((c) => (c.paper ?? []).length > 0);
  return (
    <section class="calculations">
      <h1>Calculations</h1>
      {worked.length === 0 ? <p>They were not asked for when the plan was checked.</p> : undefined}
      {worked.map((c) =>
        c.paper?.map((trail) => <Trail key={`${c.id} ${trail.corner}`} of={c} trail={trail} />),
      )}
    </section>
  );
}

function Trail({ of, trail }: { readonly of: LoadCase; readonly trail: PaperTrail }): JSX.Element {
  const loads = of.reactions.flatMap((r) => {
    const figure = trail.loads[r.id];
    return figure === undefined ? [] : [{ id: r.id, figure }];
  });
  const carrying = loads.filter(({ figure }) => (figure.value?.high ?? 0) > 0);
  return (
    <section>
      <h2>
        {of.title}
        {trail.corner === '' ? '' : `: ${trail.corner}`}
      </h2>
      <Lines figures={trail.settling} />
      <table>
        <tbody>
          {carrying.map(({ id, figure }) => (
            <tr key={id}>
              <td>{figure.label}</td>
              <td class="number">{print(figure)}</td>
              <td>{figure.formula?.numbers ?? ''}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p>{`The other ${loads.length - carrying.length} contacts carry nothing: no contact pulls.`}</p>
      <Lines figures={trail.checks} />
    </section>
  );
}

const Lines = ({ figures }: { readonly figures: readonly Figure[] }): JSX.Element => (
  <ul>
    {figures.map((f) => (
      <li key={f.label}>
        {f.label}: {print(f)}
        {f.formula === undefined ? '' : ` = ${f.formula.numbers}`}
      </li>
    ))}
  </ul>
);
