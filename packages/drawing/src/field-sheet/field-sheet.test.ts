import { caution } from '@cribwright/engine';
import { message, name } from '@cribwright/messages';
import { english, value } from '@cribwright/messages/testing';
import { policyWith, samplePlans, tallCrib, trailerOnCar } from '@cribwright/model/testing';
import { analyze } from '@cribwright/rules';
import { expect, it } from 'vitest';
import { fieldSheet } from './field-sheet.js';

const sheetOf = (plan: typeof trailerOnCar) => fieldSheet(plan, analyze(plan));

it.each(Object.entries(samplePlans))('holds title, supports, order and caution: %s', (_name, plan) => {
  const page = sheetOf(plan);
  expect(page).toContain(`<h1>${plan.title}</h1>`);
  for (const crib of plan.cribs) expect(page).toContain(`crib ${crib.name}`);
  expect(page).toContain(caution);
  expect(page).not.toMatch(/NaN|undefined|Infinity/);
});

it('says what is unsafe before anything else it says of the checks', () => {
  expect(sheetOf(tallCrib)).toMatch(/<h2>Findings<\/h2><ul><li class="danger">/);
});

it('never calls a check that could not run clean', () => {
  const analysis = analyze(trailerOnCar);
  const [first] = analyze(tallCrib).findings;
  const notRun = first === undefined ? [] : [{ ...first, couldNotRun: true }];
  const page = fieldSheet(trailerOnCar, { ...analysis, findings: notRun });
  expect(page).toContain('<span class="notrun">not checked</span>');
  expect(page).not.toContain('The checks found nothing');
});

it('lists every limit made looser, with its reason', () => {
  const policy = policyWith('least overhang', 0.05);
  const limit = { ...policy.limits['least overhang'], loosened: true, reason: 'short timbers on the engine' };
  const loosened = { ...policy, limits: { ...policy.limits, 'least overhang': limit } };
  expect(sheetOf({ ...trailerOnCar, policy: loosened })).toContain(
    'least overhang: short timbers on the engine',
  );
});

it('lets no text of the plan become a tag', () => {
  const page = sheetOf({ ...trailerOnCar, title: '<script>alert(1)</script>' });
  expect(page).not.toContain('<script>');
});

it('writes out the calculations where they are asked for, and only there', () => {
  const analysis = analyze(trailerOnCar, { paper: true });
  const page = fieldSheet(trailerOnCar, analysis, { calculations: true });
  expect(page).toContain('<h1>Calculations</h1>');
  expect(page).toMatch(/<h2>car gives way: /);
  expect(page).toMatch(/weight of trailer as its supports carry it: [\d,]+ lb = [\d,.]+ lb \+ /);
  expect(fieldSheet(trailerOnCar, analysis)).not.toContain('<h1>Calculations</h1>');
  expect(fieldSheet(trailerOnCar, analyze(trailerOnCar), { calculations: true })).toContain(
    'The plan was checked without calculations.',
  );
});

it('says what each support takes over when the car beneath gives way', () => {
  const leaning = {
    ...trailerOnCar,
    vehicles: trailerOnCar.vehicles.map((v) =>
      v.name === 'trailer'
        ? { ...v, axles: v.axles.map((a) => ({ ...a, missing: ['driver' as const] })) }
        : v,
    ),
  };
  const analysis = analyze(leaning);
  const loss = analysis.stages.at(-1)?.losses.find((l) => english(l.title) === 'car gives way');
  const onA = loss?.reactions.filter((r) => r.element === 'crib/A').reduce((sum, r) => sum + r.load.high, 0);
  // Three significant figures, up. 1 lb is 4.4482216152605 N (NIST SP 811, appendix B.8).
  const exact = (onA ?? Number.NaN) / 4.4482216152605;
  const step = 10 ** (Math.floor(Math.log10(exact)) - 2);
  const pounds = (Math.ceil(exact / step - 1e-6) * step).toLocaleString('en-US');
  expect(fieldSheet(leaning, analysis)).toMatch(new RegExp(`<td>car gives way</td><td>[^<]*A ${pounds} lb`));
});

it('names what is unsafe and what was not checked before all else', () => {
  const page = sheetOf(tallCrib);
  expect(page).toMatch(/<div class="verdicts"><p class="danger">Unsafe: [^<]*A/);
  expect(page.indexOf('class="verdicts"')).toBeLessThan(page.indexOf('>Findings<'));
  const clean = fieldSheet(trailerOnCar, { ...analyze(trailerOnCar), findings: [] });
  expect(clean).not.toContain('class="verdicts"');
});

it('says before all else that the plan was not read whole, and what was not read, and so do its drawings', () => {
  const unread = [
    { file: 'fleet.crib', range: { start: { line: 2 } }, message: name('cargoo cannot start a line') },
  ];
  const page = fieldSheet(trailerOnCar, { ...analyze(trailerOnCar), partial: true, unread });
  expect(page.split('NOT READ WHOLE').length - 1).toBeGreaterThanOrEqual(3);
  expect(page).toContain('<li>Not read: fleet.crib line 3. cargoo cannot start a line</li>');
  expect(page.indexOf('NOT READ WHOLE')).toBeLessThan(page.indexOf('>Findings<'));
  expect(sheetOf(trailerOnCar)).not.toContain('NOT READ WHOLE');
});

it('names the friction of a vehicle that lies on its side, and where it is from', () => {
  const analysis = analyze(trailerOnCar, { push: true });
  const { push } = analysis;
  if (push === undefined) throw new Error('the push was not worked out');
  const source = { kind: 'published' as const, title: 'CTU Code', locator: 'appendix 2' };
  const grip = {
    ...push.least,
    label: message('figure.friction-of-body-on', { surface: name('asphalt') }),
    source,
  };
  const page = fieldSheet(trailerOnCar, { ...analysis, push: { ...push, grip } });
  expect(page).toContain(
    `The vehicle lies on the ground: friction of its body on asphalt ${value(grip)} (CTU Code, appendix 2).`,
  );
});
