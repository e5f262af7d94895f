import { wordsIn } from '@cribwright/messages';
import type { Checked } from '@cribwright/workspace/internal';
import type { Feature } from '../context/feature.js';
import type { FeatureContext } from '../context/feature-context.js';
import type { AnalysisParams, ExpectationsReply } from '../protocol/requests.js';
import { ExpectationsRequest } from '../protocol/requests.js';
import { type UnitsChoice, unitsFor } from './units-for.js';

/** `cribwright/expectations`: whether each `expect` of a file holds, for the Testing view. */
export const expectations: Feature = {
  serve(session) {
    session.connection.onRequest(
      ExpectationsRequest,
      async ({ uri }: AnalysisParams): Promise<ExpectationsReply> => {
        const checked = await session.whole(uri, 'push');
        return {
          life: session.life,
          version: checked?.version ?? 0,
          items: checked ? itemsOf(session, uri, checked) : [],
        };
      },
    );
  },
};

const nowhere = { start: { line: 0, character: 0 }, end: { line: 0, character: 0 } };

/** A plan that could not be read whole holds nothing: what it says of itself is not known. */
export const itemsOf = (
  desk: Pick<FeatureContext, 'locale'> & UnitsChoice,
  uri: string,
  checked: Checked,
): ExpectationsReply['items'] =>
  checked.plans.flatMap(({ plan, analysis, places, partial }, p) => {
    const words = wordsIn(desk.locale, unitsFor(desk, { plan }));
    return analysis.expectations.map(({ ref, text, held, why }, i) => ({
      id: `${uri}#${p}/${i}`,
      label: words.message(text),
      plan: plan.title,
      range: places[placeKey(ref)]?.range ?? places[ref.element]?.range ?? nowhere,
      held: held && !partial,
      why: words.message(why),
    }));
  });

const placeKey = ({ element, property }: { element: string; property?: string }): string =>
  property === undefined ? element : `${element}#${property}`;
