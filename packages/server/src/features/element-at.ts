import type { Feature } from '../context/feature.js';
import { type ElementAtParams, type ElementAtReply, ElementAtRequest } from '../protocol/requests.js';
import { elementAt } from './plan-around.js';

/** `cribwright/elementAt`: which element of the plan the cursor stands in, for the drawing to light up. */
export const elementAtCursor: Feature = {
  serve(session) {
    session.connection.onRequest(
      ElementAtRequest,
      async ({ uri, offset }: ElementAtParams): Promise<ElementAtReply> => {
        const file = await session.file(uri);
        const found = file && elementAt(file, offset);
        if (!found) return { ref: undefined };
        const { element, property } = found;
        return { ref: property === undefined ? { element } : { element, property } };
      },
    );
  },
};
