import type { Feature } from '../context/feature.js';
import { sameUri } from '../context/open-documents.js';
import { type AnalysisParams, AnalysisRequest, type SignedAnalysis } from '../protocol/requests.js';
import { forDrawing } from './for-drawing.js';
import { inUnitsOf } from './units-for.js';

/** `cribwright/analysis`: everything known of the plans in a file, for the drawing. */
export const analysis: Feature = {
  serve(session) {
    session.connection.onRequest(
      AnalysisRequest,
      async ({ uri }: AnalysisParams, token): Promise<SignedAnalysis> => {
        session.drawn.add(sameUri(uri));
        const checked = await session.whole(uri, 'loads', token);
        return checked
          ? {
              uri,
              life: session.life,
              version: checked.version,
              state: checked.state,
              pending: checked.pending !== undefined,
              plans: checked.plans.map((reply) => forDrawing(inUnitsOf(session, reply))),
            }
          : { uri, life: session.life, version: 0, state: 'no plan', pending: false, plans: [] };
      },
    );
  },
};
