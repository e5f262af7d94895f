import { type AnalysisParams, type AnalysisReply, AnalysisRequest } from '../protocol/requests.js';
import type { Feature } from './feature.js';

/** `cribwright/analysis`: everything known of the plans in a file, for the drawing. */
export const analysis: Feature = {
  serve(session) {
    session.connection.onRequest(AnalysisRequest, async ({ uri }: AnalysisParams): Promise<AnalysisReply> => {
      const checked = await session.checked(uri);
      return checked
        ? {
            uri,
            version: checked.version,
            state: checked.state,
            pending: checked.pending,
            plans: checked.plans,
          }
        : { uri, version: 0, state: 'no plan', pending: false, plans: [] };
    });
  },
};
