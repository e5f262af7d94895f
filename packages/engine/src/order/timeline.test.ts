import { english } from '@cribwright/messages/testing';
import { between, exactly } from '@cribwright/model';
import { minute, planOf, step } from '@cribwright/model/testing';
import { describe, expect, it } from 'vitest';
import { timelineOf } from './timeline.js';

const plan = planOf({
  steps: [
    step(1, 'chock', [], { takes: exactly(minute), crew: 1 }),
    step(2, 'build', [], { takes: between(4 * minute, 6 * minute), crew: 2, after: ['step/1'] }),
    step(3, 'build', [], { takes: exactly(3 * minute), crew: 2, after: ['step/1'] }),
    step(4, 'check', [], { takes: exactly(minute), crew: 1, after: ['step/2', 'step/3'] }),
  ],
});

describe('time line', () => {
  const line = timelineOf(plan);
  it('starts each step when those it waits for are done', () =>
    expect(line?.rows.map((r) => [r.number, r.start.high / minute, r.end.high / minute])).toEqual([
      [1, 0, 1],
      [2, 1, 7],
      [3, 1, 4],
      [4, 7, 8],
    ]));
  it('adds up ranges', () => expect(line?.total.value).toEqual({ low: 6 * minute, high: 8 * minute }));
  it('names the steps whose delay delays the end', () =>
    expect(line?.rows.filter((r) => r.critical).map((r) => r.number)).toEqual([1, 2, 4]));
  it('counts the people at work at one time', () => expect(line?.crewPeak.value).toEqual(exactly(4)));
  it('says which steps have no time', () => {
    const untimed = planOf({ steps: [step(1, 'build', [], { takes: undefined })] });
    expect(timelineOf(untimed)?.total.assumes?.map((a) => english(a))).toEqual([
      'steps without a time count as none: 1',
    ]);
  });
  it('is not there without steps', () => expect(timelineOf(planOf({}))).toBeUndefined());
});
