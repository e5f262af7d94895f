import { type Figure, term } from '@cribwright/messages';
import { exactly, type Ground, given } from '@cribwright/model';
import { share } from '@cribwright/model/internal';

/** How steep the ground is, whichever way it falls, as the plan states it. */
export const gradeFigure = ({ grade, ref }: Ground): Figure =>
  given(share('grade', term('figure.grade'), 'up', { ref }), exactly(Math.abs(grade)), { kind: 'stated' });
