import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { alike, drawScene, firstChoice, type Item } from '@cribwright/drawing';
import { heldPush, pushSystems, rest, restingSystems } from '@cribwright/engine';
import type { Plan } from '@cribwright/model';
import { analyze } from '@cribwright/rules';
import { parse } from '@cribwright/syntax';
import { openWorkspace } from '@cribwright/workspace';
import { best } from './best.js';
import { largePlan } from './large-plan.js';
import { panelTimes } from './panel-time.js';
import { roadTimes } from './road-time.js';
import { textTimes } from './text-time.js';

/**
 * How long the parts of the work take, as ratios to a bare parse of the same file: ratios say the same on every
 * machine, times do not. The last column is the time on this one.
 */
const examples = fileURLToPath(new URL('../../examples/', import.meta.url));
const uriOf = (path: string) => pathToFileURL(`${examples}${path}`).href;
const textAt = (uri: string) => readFileSync(fileURLToPath(uri), 'utf8');

const largest = readdirSync(`${examples}plans`)
  .filter((name) => name.endsWith('.crib'))
  .map((name) => ({ uri: uriOf(`plans/${name}`), text: textAt(uriOf(`plans/${name}`)) }))
  .sort((a, b) => b.text.length - a.text.length)[0];
if (largest === undefined) throw new Error('There is no example to measure.');
const { uri, text } = largest;

const workspace = openWorkspace({
  files: {
    read: async (path) => {
      try {
        return textAt(path);
      } catch {
        return undefined;
      }
    },
  },
  folders: [pathToFileURL(examples).href],
});
await workspace.load(uri);
const plan = workspace.check(uri).plans[0]?.plan;
if (plan === undefined) throw new Error(`${uri} holds no plan that can be checked.`);

let version = 1;
/** Types a change that the analysis must follow: one course more, one less. */
const edit = (change: (text: string, n: number) => string) => () => {
  version++;
  workspace.put(uri, change(text, version), version);
  return workspace.check(uri);
};
const figures = edit((t, n) =>
  t.replace(/([\d,]+) to ([\d,]+) lb/, (_all, low: string) => `${low} to ${50_000 + (n % 500)} lb`),
);
const comment = edit((t, n) => `// ${n}\n${t}`);

const [resting] = restingSystems(plan);
const [pushed] = pushSystems(plan);
if (resting === undefined || pushed === undefined) throw new Error('The example does not rest on anything.');
const ends = { endsAlone: true };
const sideways = { x: 0, y: 1, z: 0 };

const analyzed = (one: Plan) => ({ plan: one, analysis: analyze(one) });
const [large, moved] = [analyzed(largePlan()), analyzed(largePlan(0.05))];
const shapesIn = (items: readonly Item[]): number =>
  items.reduce((sum, item) => sum + (item.kind === 'group' ? shapesIn(item.items) : 1), 0);
const shapes = shapesIn(drawScene(large.plan, large.analysis, firstChoice).items);
type Layout = 'top' | 'side' | '3d';
/** For the first time: the plan is a new one in all its parts, so nothing of another drawing can serve again. */
const drawFirst = (view: Layout) => {
  const plans = Array.from({ length: 50 }, () => structuredClone(large.plan));
  return best(() => drawScene(plans.pop() ?? large.plan, large.analysis, { ...firstChoice, view }));
};
/** After an edit that moved one crib: the plan comes as a copy, and is drawn on what is left of the one before. */
const drawAgain = (view: Layout) => {
  let before = large.plan;
  const copies = Array.from({ length: 50 }, (_, i) => structuredClone((i % 2 === 0 ? moved : large).plan));
  return best(() => {
    before = alike(before, copies.pop() ?? moved.plan);
    return drawScene(before, large.analysis, { ...firstChoice, view });
  });
};
const panel = await panelTimes(large, moved);
const road = await roadTimes();
const written = await textTimes();

const bare = best(() => parse(text));
const again = drawAgain('top');
const rows: readonly (readonly [what: string, ms: number, target?: number])[] = [
  ['bare parse', bare],
  ['one resting solve of the finished system', best(() => rest(resting))],
  [
    'one direction of the push',
    best(() => heldPush(pushed.system, { ...pushed.push, direction: sideways })),
    1,
  ],
  ['while typing: all stages and losses, ends of the ranges', best(() => analyze(plan, ends)), 30],
  ['whole analysis, between the ends of the ranges too', best(() => analyze(plan), 20)],
  ['the same of 104 cribs', best(() => analyze({ ...large.plan }, ends), 20)],
  ['the same, what hangs on no load', best(() => analyze({ ...large.plan }, { loads: false }), 20)],
  ['whole analysis with the push from 24 directions', best(() => analyze(plan, { push: true }), 10)],
  ['edit of a weight to diagnostics', best(figures)],
  ['edit of a comment to diagnostics', best(comment)],
  [`drawing ${shapes} shapes from above, for the first time`, drawFirst('top')],
  ['the same after one crib was moved', again, 25],
  ['from the side after one crib was moved', drawAgain('side'), 25],
  ['in space for the first time', drawFirst('3d')],
  ['in space after one crib was moved', drawAgain('3d'), 50],
  ['panel, one crib of these moved: its own work', panel.work],
  ['panel, one crib of these moved: to the second frame', panel.frames],
  ['drawing, then the panel, to the second frame', again + panel.frames, 50],
  ['text of 104 cribs, parsed whole', written.parse],
  ['one line of it edited, to names and types', written.bound],
  ['the same, to how the plan lies', written.layout, 16],
  ['the same, to what hangs on no load', written.first, 33],
  ['edit of the text to how the plan lies, by the server', road.server],
  ['  then: the drawing', road.scene],
  ['  then: what of it is to be sent, as text', road.message],
  ['  then: on the way to the panel', road.arrives],
  ['  then: the panel, until its frame is painted', road.paint],
  ['edit of the text to the frame that shows it, painted', road.whole, 50],
  ['  to the frame after that', road.second],
  ['edit of the text to the drawing with its checks', road.checked],
];

const name = uri.split('/').at(-1) ?? uri;
console.log(`${name}: ${text.split('\n').length} lines, ${text.length} characters. A bare parse is 1.`);
for (const [what, ms, target] of rows)
  console.log(
    [
      what.padEnd(52),
      `${(ms / bare).toFixed(2)} ×`.padStart(10),
      `${ms.toFixed(2)} ms`.padStart(12),
      target === undefined ? '' : ms <= target ? `  under ${target} ms` : `  OVER ${target} ms`,
    ].join(''),
  );
