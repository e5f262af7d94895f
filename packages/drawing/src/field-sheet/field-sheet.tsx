/** @jsxRuntime automatic @jsxImportSource preact */

import { caution } from '@cribwright/engine';
import { wordsIn } from '@cribwright/messages';
import type { Plan } from '@cribwright/model';
import type { JSX } from 'preact';
import { renderToString } from 'preact-render-to-string';
import type { Shown } from '../look/look.js';
import type { ViewId } from '../scene/scene.js';
import { drawScene, firstChoice, viewsOf } from '../scenes/draw-scene.js';
import { light } from '../svg/palette.js';
import { SceneSvg } from '../svg/scene-svg.js';
import { styleSheet } from '../svg/style-sheet.js';
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
  `<!doctype html>\n${renderToString(<Page plan={plan} analysis={analysis} calculations={options.calculations ?? false} />)}\n`;

export interface SheetOptions {
  /** Also the loads as built, and when a vehicle beneath gives way, with the calculations. */
  readonly calculations?: boolean;
}

interface PageProps {
  readonly plan: Plan;
  readonly analysis: Shown;
  readonly calculations: boolean;
}

function Page({ plan, analysis, calculations }: PageProps): JSX.Element {
  const views = viewsOf(plan, analysis).filter((v) => drawn.includes(v.id));
  const { least, grip } = analysis.push ?? {};
  const words = wordsIn('en', plan.display);
  return (
    <html lang="en">
      <head>
        <meta charset="utf-8" />
        <title>{plan.title}</title>
        <style>{pageStyle}</style>
        <style>{styleSheet(light)}</style>
      </head>
      <body>
        <h1>{plan.title}</h1>
        <p class="where">
          Policy {plan.policy.name}
          {plan.policy.authority === undefined ? '' : `, ${plan.policy.authority}`}
        </p>
        <SiteFacts plan={plan} words={words} />
        <NotWhole analysis={analysis} />
        <Verdicts plan={plan} analysis={analysis} />
        <h2>What the checks say</h2>
        <Findings analysis={analysis} words={words} />
        {least === undefined ? undefined : (
          <p>
            Pushed sideways it holds up to {words.value(least)} from its weakest side
            {least.governs === undefined ? '' : ` (${words.message(least.governs)})`}.
            {grip === undefined
              ? ''
              : ` It lies on the ground: ${words.figure(grip)} (${words.source(grip.source)}).`}
          </p>
        )}
        <h2>Supports</h2>
        <Supports plan={plan} analysis={analysis} words={words} />
        <h2>If something gives way, at most</h2>
        <GivesWay plan={plan} analysis={analysis} words={words} />
        <div class="halves">
          <section>
            <h2>Order of work</h2>
            <Work analysis={analysis} words={words} />
            <h2>Changes on scene</h2>
            <div class="blank" />
            <div class="blank" />
          </section>
          <section>
            <h2>As found</h2>
            <Found plan={plan} analysis={analysis} words={words} />
            <h2>From the caches</h2>
            <Materials analysis={analysis} words={words} />
          </section>
        </div>
        <Loosened plan={plan} />
        <h2>Assumptions</h2>
        <ul class="small">
          {analysis.assumptions.map(words.message).map((a) => (
            <li key={a}>{a}</li>
          ))}
        </ul>
        <p class="caution">{caution}</p>
        <div class="drawings">
          {views.map((v) => (
            <SceneSvg key={v.id} scene={drawScene(plan, analysis, { ...firstChoice, view: v.id })} />
          ))}
        </div>
        {calculations ? <Calculations analysis={analysis} words={words} /> : undefined}
      </body>
    </html>
  );
}
