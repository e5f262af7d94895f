import { parse } from '@cribwright/syntax';
import { openWorkspace } from '@cribwright/workspace';
import { best } from './best.js';
import { largePlanText } from './large-plan-text.js';

/** How long the language takes over the text of a plan with very many cribs, ms. */
export interface TextTimes {
  /** All of it parsed anew. */
  readonly parse: number;
  /** After an edit of one line: parsed and bound. */
  readonly bound: number;
  /** The same, and made into the plan, its places and its layout. */
  readonly layout: number;
  /** The same, and checked for all that hangs on no load. */
  readonly first: number;
}

export async function textTimes(): Promise<TextTimes> {
  const uri = 'file:///alder-ridge/large.crib';
  const workspace = openWorkspace({
    files: { read: async () => undefined },
    folders: ['file:///alder-ridge'],
    // Whatever the machine, the loads are left for later.
    timeLimit: { now: () => performance.now(), over: 0 },
  });
  workspace.put(uri, largePlanText(), 1);
  await workspace.load(uri);
  workspace.check(uri);
  const texts = Array.from({ length: 60 }, (_, i) => largePlanText(i + 1));
  let version = 1;
  const edit = () => workspace.put(uri, texts[++version % texts.length] ?? '', version);
  return {
    parse: best(() => parse(texts[++version % texts.length] ?? '')),
    bound: best(() => {
      edit();
      return workspace.bound(uri);
    }),
    layout: best(() => {
      edit();
      return workspace.layout(uri);
    }),
    first: best(() => {
      edit();
      workspace.layout(uri);
      return workspace.check(uri);
    }),
  };
}
