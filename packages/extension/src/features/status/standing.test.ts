import { expect, it } from 'vitest';
import { standingOf } from './standing.js';

const none = { plans: 1, danger: 0, warning: 0, note: 0, accepted: 0, notRun: 0, pending: false };

it('says good only when every check ran and found nothing', () => {
  expect(standingOf(none, []).kind).toBe('clear');
  expect(standingOf('waiting', []).kind).toBe('waiting');
  expect(standingOf({ ...none, pending: true }, []).kind).toBe('waiting');
  expect(standingOf({ ...none, notRun: 1 }, []).kind).toBe('not run');
  expect(standingOf({ ...none, warning: 2, pending: true, loads: 'pending' }, []).kind).toBe('waiting');
  expect(standingOf({ ...none, danger: 2, pending: true, loads: 'pending' }, []).kind).toBe('danger');
  expect(standingOf(none, [{ severity: 0, message: 'no such unit' }]).kind).toBe('unread');
});

it('says nothing good of a file without a plan', () => {
  expect(standingOf({ ...none, plans: 0 }, []).kind).toBe('no plan');
  expect(standingOf({ ...none, plans: 0, warning: 1 }, []).kind).toBe('warning');
});

it('says that something was accepted before it says that nothing was found', () => {
  expect(standingOf({ ...none, accepted: 2 }, [])).toMatchObject({ kind: 'accepted', count: 2 });
  expect(standingOf({ ...none, accepted: 2, pending: true }, []).kind).toBe('waiting');
  expect(standingOf({ ...none, accepted: 2, warning: 1 }, []).kind).toBe('warning');
});

it('says nothing of the text before where nothing is checked any more', () => {
  const before = [{ severity: 0, message: 'Crib A stands 49 in' }];
  for (const kind of ['not checked', 'waiting'] as const)
    expect(standingOf(kind, before)).toEqual({ kind, count: 0, worst: undefined });
});

it('names the worst first', () => {
  const standing = standingOf({ ...none, danger: 1, warning: 2, notRun: 1 }, [
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
