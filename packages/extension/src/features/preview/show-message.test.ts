import { unchecked } from '@cribwright/engine';
import { tallCrib, trailerOnCar } from '@cribwright/model/testing';
import { analyze } from '@cribwright/rules';
import { expect, it } from 'vitest';
import type { Drawable } from './last-good.js';
import { firstLook, showMessage } from './show-message.js';

const uri = 'file:///plans/van.crib';
const drawable = (...plans: (typeof trailerOnCar)[]): Drawable => ({
  uri,
  version: 7,
  plans: plans.map((plan) => ({ plan, analysis: analyze(plan), places: {}, partial: false, unread: [] })),
  errors: false,
  stale: undefined,
  pending: false,
});

it('names the file, the version and what can be chosen', () => {
  const show = showMessage(drawable(trailerOnCar), firstLook, undefined);
  expect(show).toMatchObject({ uri, version: 7, shown: 0, stale: undefined });
  expect(show.scenes.length).toBeGreaterThan(0);
  expect(show.subjects.map(({ id }) => id)).toContain('crib/A');
  expect(show.stages.length).toBe(drawable(trailerOnCar).plans[0]?.analysis.stages.length);
});

it('counts what is unsafe, and does not count what a reviewer accepted', () => {
  const one = drawable(tallCrib);
  const plan = one.plans[0];
  const dangers =
    plan?.analysis.findings.filter(({ severity, couldNotRun }) => severity === 'danger' && !couldNotRun) ??
    [];
  expect(dangers.length).toBeGreaterThan(0);
  expect(showMessage(one, firstLook, undefined).tally.danger).toBe(dangers.length);
  const accepted = {
    ...one,
    plans: one.plans.map((p) => ({
      ...p,
      analysis: {
        ...p.analysis,
        findings: p.analysis.findings.map((f) => ({
          ...f,
          accepted: { by: 'Capt. Example', reason: 'drill', until: '2099-01-01' },
        })),
      },
    })),
  };
  const { tally } = showMessage(accepted, firstLook, undefined);
  expect(tally.danger).toBe(0);
  expect(tally.parts.map(({ text }) => text)).toEqual([`${tallFindings(one)} accepted`]);
});

/** Findings that somebody may accept: a check that could not run is none. */
const tallFindings = ({ plans }: Drawable): number =>
  plans.flatMap(({ analysis }) => analysis.findings).filter((f) => f.couldNotRun !== true).length;

it('counts a check that could not run where the text has errors, in whichever part of it', () => {
  const partial = { ...drawable(trailerOnCar), errors: true };
  const [plan] = partial.plans;
  const clean = {
    ...partial,
    plans: plan ? [{ ...plan, analysis: { ...plan.analysis, findings: [] } }] : [],
  };
  const { tally } = showMessage(clean, firstLook, 'the text has errors');
  expect(tally.parts.map(({ text }) => text)).toEqual(['1 check could not run']);
});

it('says of a plan whose checks have not run that it is not checked, and keeps what was chosen', () => {
  const plans = [{ plan: tallCrib, analysis: unchecked(tallCrib), places: {}, partial: false, unread: [] }];
  const look = { plan: 0, choice: { ...firstLook.choice, stage: 1, lost: 'car gives way' } };
  const show = showMessage(
    { uri, version: 8, plans, errors: false, stale: undefined, pending: true },
    look,
    undefined,
  );
  expect(show.tally).toMatchObject({ danger: 0, pending: true, unchecked: true });
  expect(show.losses).toBeUndefined();
  expect(show.scenes[0]?.choice).toEqual(look.choice);
  expect(show.scenes[0]?.words).toContain('The checks have not run yet');
  expect(show.views?.map(({ id }) => id)).toContain('utilization');
});

it('lets go of choices that the plan does not have', () => {
  const look = { plan: 9, choice: { view: 'crib', subject: 'crib/Gone', stage: 99, lost: 'gone' } } as const;
  const show = showMessage(drawable(trailerOnCar), look, 'old');
  expect(show.shown).toBe(0);
  expect(show.stale).toBe('old');
  const choice = show.scenes[0]?.choice;
  expect(choice).toMatchObject({ view: 'crib', stage: undefined, lost: undefined });
  expect(choice?.subject).not.toBe('crib/Gone');
});

it('says so where there is nothing to draw', () => {
  expect(showMessage(drawable(), firstLook, 'nothing')).toMatchObject({
    scenes: [],
    plans: [],
    stale: 'nothing',
  });
});

it('draws on the sheet itself that not all of the text could be read', () => {
  const whole = drawable(trailerOnCar);
  const part = { ...whole, plans: whole.plans.map((p) => ({ ...p, partial: true })) };
  const old = { ...whole, plans: whole.plans.map((p) => ({ ...p, old: true as const })) };
  const words = 'NOT READ WHOLE';
  expect(JSON.stringify(showMessage(whole, firstLook, undefined).scenes)).not.toContain(words);
  expect(JSON.stringify(showMessage(part, firstLook, undefined).scenes)).toContain(words);
  expect(JSON.stringify(showMessage(old, firstLook, 'old').scenes)).toContain(words);
});

it('says the same in another language, of the same findings', () => {
  const one = drawable(tallCrib);
  const [en, es] = (['en', 'es'] as const).map((locale) => showMessage(one, firstLook, undefined, locale));
  expect(en?.tally.parts[0]?.text).toMatch(/^\d+ unsafe$/);
  expect(es?.tally.parts[0]?.text).toMatch(/^\d+ inseguros?$/);
  expect(es?.tally).toMatchObject({ danger: en?.tally.danger, notRun: en?.tally.notRun });
  expect(es?.words.whatIf).toBe('Supuesto');
  expect(es?.words.saveAs).toBe('Guardar como {format}');
  expect(es?.views.map(({ name }) => name)).toContain('Alturas');
  expect(es?.scenes[0]?.language).toBe('es');
});
