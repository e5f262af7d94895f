import { it } from 'vitest';
import { samplePlans } from '../testing/sample-plans.js';
import { inOneGo } from '../workings/stepwise.js';
import { workingsOf } from '../workings/workings.js';
import { standingSteps } from './run-standing.js';

it('x', () => {
  for (const [name, plan] of Object.entries(samplePlans)) {
    const w = workingsOf(plan, { push: true });
    const w0 = workingsOf(plan, { push: false });
    const t = performance.now();
    inOneGo(standingSteps(w0));
    const t1 = performance.now();
    const s = inOneGo(standingSteps(w));
    const t2 = performance.now();
    console.log('=====', name, (t1 - t).toFixed(0), 'ms cases', (t2 - t1).toFixed(0), 'ms all', JSON.stringify(s.leftOut));
    for (const g of s.groups) {
      console.log(g.group.bodies.map((b) => b.name + b.corners.length).join('+'), 'loose', g.loose.join());
      for (const st of g.stages) {
        const f = st.asBuilt.failure;
        console.log(' ', st.stage.title, f === undefined ? 'rests' : `${f.kind} ${f.moved.join()}`);
        for (const l of st.losses) if (l.failure) console.log('     loss', l.loss?.title, l.failure.kind, l.failure.moved.join());
      }
      const last = g.stages.at(-1);
      if (last) console.log('   loads', [...last.asBuilt.loads].map(([k, v]) => `${k}=${(v.most / 4.448).toFixed(0)}`).join(' '));
      for (const p of g.pushes) {
        const min = p.directions.reduce((a, b) => (a.push / a.weight < b.push / b.weight ? a : b));
        console.log('   push', p.vehicle, p.directions.map((d) => (d.ends === undefined ? '?' : ((100 * d.push) / d.weight).toFixed(1))).join(' '), JSON.stringify(min.ends)?.slice(0, 300));
      }
    }
  }
}, 200000);
