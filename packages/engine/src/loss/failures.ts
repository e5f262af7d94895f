import { type List, type Message, message, type Name, name, term } from '@cribwright/messages';
import type { ElementId } from '@cribwright/model';
import type { SupportWorkings } from '../supports/support-workings.js';
import { type CaseRun, holds } from './case-run.js';
import { cornerWords } from './corner-words.js';
import { freeEnd } from './free-end.js';
import type { ComponentRun } from './loss-working.js';

/** A case in which something is not held. */
export interface Failure {
  readonly run: CaseRun;
  readonly part: ComponentRun;
  /** The vehicle that goes. */
  readonly vehicle: ElementId;
  readonly name: Message | Name;
  /** `the front`, `one side`. */
  readonly end: Message;
  /** `falls`: nothing holds it. `balances`: on a line. `unsolved`: neither rest nor fall could be proven. */
  readonly kind: 'falls' | 'balances' | 'unsolved';
  /** The corner of the ranges; `undefined` where nothing is a range. */
  readonly corner: List | undefined;
}

/** What fails in a case, or `undefined` where all rests. */
export function failureOf(w: SupportWorkings, part: ComponentRun, run: CaseRun): Failure | undefined {
  if (holds(run)) return undefined;
  const [first] = part.component.bodies;
  const plain = {
    run,
    part,
    vehicle: first?.vehicle ?? '',
    name: first?.name ?? name(''),
    end: term('loss.one-side'),
  };
  if (run.fall !== undefined) {
    const left = part.component.points.map(
      (p, i) => run.there[i] === true && run.loss?.points.includes(p.id) !== true,
    );
    const free = freeEnd(run.fall.motions, part.component, run.fall.corner, left, w.vehicles);
    const corner = cornerWords(part, run.fall.corner);
    return free === undefined
      ? { ...plain, end: term('loss.one-end'), kind: 'falls', corner }
      : {
          ...plain,
          vehicle: free.body.vehicle,
          name: free.body.name,
          end: free.end,
          kind: 'falls',
          corner,
        };
  }
  return run.balance === undefined
    ? { ...plain, kind: 'unsolved', corner: undefined }
    : { ...plain, kind: 'balances', corner: cornerWords(part, run.balance) };
}

/** ` with trailer heaviest`, with the blank before it; or nothing. */
export const withCorner = (corner: List | undefined): Message | Name =>
  corner === undefined ? name('') : message('loss.with', { corner });
