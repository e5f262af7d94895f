/** @jsxRuntime automatic @jsxImportSource preact */

import { message, name, term, type Words } from '@cribwright/messages';
import type { Plan } from '@cribwright/model';
import type { JSX } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { cautionIn } from '../caution.js';
import type { Shown } from '../look/look.js';
import type { ViewId } from '../scene/scene.js';
import { drawScene, firstChoice, viewsOf } from '../scenes/draw-scene.js';
import { light } from '../svg/palette.js';
import { SceneSvg } from '../svg/scene-svg.js';
import { styleSheet } from '../svg/style-sheet.js';
import { planWords, sayIn } from '../text/say.js';
import { Calculations } from './calculations.js';
import { Findings, Loosened } from './findings.js';
import { GivesWay } from './gives-way.js';
import { NotWhole } from './not-whole.js';
import { SiteFacts } from './site.js';
import { pageStyle } from './style.js';
import { Supports } from './supports.js';
import { Verdicts } from './verdicts.js';
import { Found, Materials, Work } from './work.js';

const drawn: readonly ViewId[] = ['top', 'side'];

/** The sheet a crew carries, words on one side and drawings on the other, as a web page that prints. */
export const fieldSheet = (plan: Plan, analysis: Shown, options: SheetOptions = {}): string =>
  `<!doctype html>\n${renderToString(
    <Page
      plan={plan}
      analysis={analysis}
      calculations={options.calculations ?? false}
      words={options.words ?? planWords(plan)}
    />,
  )}\n`;

export interface SheetOptions {
  /** Also the loads as built, and when a vehicle beneath gives way, with the calculations. */
  readonly calculations?: boolean;
  /** The language and the units of the sheet; left out, English and the plan's units. */
  readonly words?: Words;
}

interface PageProps {
  readonly plan: Plan;
  readonly analysis: Shown;
  readonly calculations: boolean;
  readonly words: Words;
}

function Page({ plan, analysis, calculations, words }: PageProps): JSX.Element {
  const views = viewsOf(plan, analysis).filter((v) => drawn.includes(v.id));
  const { least, grip } = analysis.push ?? {};
  const say = sayIn(words);
  const { message: t } = words;
  const caution = cautionIn(words);
  const policy = name(plan.policy.name);
  return (
    <html lang={words.locale}>
      <head>
        <meta charset="utf-8" />
        <title>{plan.title}</title>
        <style>{pageStyle}</style>
        <style>{styleSheet(light)}</style>
      </head>
      <body>
        <h1>{plan.title}</h1>
        <p class="where">
          {t(
            plan.policy.authority === undefined
              ? message('field-sheet.policy', { policy })
              : message('field-sheet.policy-of', { policy, authority: name(plan.policy.authority) }),
          )}
        </p>
        <SiteFacts plan={plan} words={words} />
        <NotWhole analysis={analysis} words={words} />
        <Verdicts plan={plan} analysis={analysis} words={words} />
        <h2>{t(term('field-sheet.findings'))}</h2>
        <Findings analysis={analysis} words={words} />
        {least === undefined ? undefined : (
          <p>
            {t(
              least.governs === undefined
                ? message('field-sheet.push', { least: name(say.figure(least)) })
                : message('field-sheet.push-toward', {
                    least: name(say.figure(least)),
                    direction: least.governs,
                  }),
            )}
            {grip === undefined
              ? ''
              : ` ${t(
                  message('field-sheet.lies-on-ground', {
                    grip: name(`${words.label(grip)} ${say.figure(grip)}`),
                    source: name(words.source(grip.source)),
                  }),
                )}`}
          </p>
        )}
        <h2>{t(term('field-sheet.supports'))}</h2>
        <Supports plan={plan} analysis={analysis} words={words} />
        <h2>{t(term('field-sheet.losses'))}</h2>
        <GivesWay plan={plan} analysis={analysis} words={words} />
        <div class="halves">
          <section>
            <h2>{t(term('field-sheet.order-of-work'))}</h2>
            <Work analysis={analysis} words={words} />
            <h2>{t(term('field-sheet.changes-on-scene'))}</h2>
            <div class="blank" />
            <div class="blank" />
          </section>
          <section>
            <h2>{t(term('field-sheet.as-found'))}</h2>
            <Found plan={plan} analysis={analysis} words={words} />
            <h2>{t(term('field-sheet.from-caches'))}</h2>
            <Materials analysis={analysis} words={words} />
          </section>
        </div>
        <Loosened plan={plan} words={words} />
        <h2>{t(term('field-sheet.assumptions'))}</h2>
        <ul class="small">
          {analysis.assumptions.map(words.message).map((a) => (
            <li key={a}>{a}</li>
          ))}
        </ul>
        <h2>{caution.heading}</h2>
        <p class="caution">{caution.text}</p>
        <div class="drawings">
          {views.map((v) => (
            <SceneSvg
              key={v.id}
              scene={drawScene(plan, analysis, { ...firstChoice, view: v.id }, false, words)}
            />
          ))}
        </div>
        {calculations ? <Calculations analysis={analysis} words={words} /> : undefined}
      </body>
    </html>
  );
}
