import { expect, it } from 'vitest';
import { standingOf } from './standing.js';

const none = { danger: 0, warning: 0, note: 0, notRun: 0, pending: false };

it('says good only when every check ran and found nothing', () => {
  expect(standingOf(none, []).kind).toBe('clear');
  expect(standingOf(undefined, []).kind).toBe('waiting');
  expect(standingOf({ ...none, pending: true }, []).kind).toBe('waiting');
  expect(standingOf({ ...none, notRun: 1 }, []).kind).toBe('not run');
  expect(standingOf({ ...none, warning: 2, pending: true, loads: 'pending' }, []).kind).toBe('waiting');
  expect(standingOf({ ...none, danger: 2, pending: true, loads: 'pending' }, []).kind).toBe('danger');
  expect(standingOf(none, [{ severity: 0, message: 'no such unit' }]).kind).toBe('unread');
});

it('names the worst first', () => {
  const standing = standingOf({ danger: 1, warning: 2, note: 0, notRun: 1, pending: false }, [
    { severity: 1, message: 'look again' },
    { severity: 0, message: 'Crib A stands 49 in' },
  ]);
  expect(standing).toEqual({
    kind: 'danger',
    count: 1,
    worst: 'Crib A stands 49 in',
  });
});

it('puts a check that could not run before one to look at again', () => {
  expect(standingOf({ ...none, warning: 3, notRun: 1 }, []).kind).toBe('not run');
});
