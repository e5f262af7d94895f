import { english } from '@cribwright/messages/testing';
import { hastyTrailer } from '@cribwright/model/testing';
import { describe, expect, it } from 'vitest';
import { analyze } from '../analysis/analyze.js';

const plan = (until: string, on = 'vehicle/trailer', rule = 'strut-one-sided') => ({
  ...hastyTrailer,
  acceptances: [
    {
      id: 'accept/1',
      rule,
      on,
      reason: 'wall on the other side',
      by: 'training captain',
      until,
      ref: { element: 'accept/1' },
    },
  ],
});
const of = (id: string, ...[given, today]: readonly [ReturnType<typeof plan>, string?]) =>
  analyze(given, today === undefined ? {} : { today }).findings.filter((f) => f.rule === id);

describe('acceptance-expired', () => {
  it('marks what is accepted, up to its day', () => {
    for (const today of ['2026-11-25', '2027-03-01']) {
      expect(of('strut-one-sided', plan('2027-03-01'), today)[0]?.accepted?.by).toBe('training captain');
      expect(of('acceptance-expired', plan('2027-03-01'), today)).toEqual([]);
    }
  });
  it('is over the day after', () => {
    expect(of('strut-one-sided', plan('2027-03-01'), '2027-03-02')[0]?.accepted).toBeUndefined();
    expect(english(of('acceptance-expired', plan('2027-03-01'), '2027-03-02')[0]?.message)).toContain(
      'That date has passed',
    );
  });
  it('does not count without a day, and says that the check could not run', () => {
    expect(of('strut-one-sided', plan('2027-03-01'))[0]?.accepted).toBeUndefined();
    expect(of('acceptance-expired', plan('2027-03-01'))[0]?.couldNotRun).toBe(true);
  });
  it('names a line that is about nothing', () =>
    expect(
      of('acceptance-expired', plan('2027-03-01', 'crib/A', 'crib-height'), '2026-01-01')[0]?.severity,
    ).toBe('note'));
  it('cannot read a date that is none', () =>
    expect(english(of('acceptance-expired', plan('next spring'), '2026-01-01')[0]?.message)).toContain(
      '2027-03-01',
    ));
});
