import { limitValue } from '@cribwright/model/internal';
import type { SupportWorkings } from '../supports/support-workings.js';

/** Share of a capacity that the policy lets a support carry. */
export const useLimit = (w: SupportWorkings): number => limitValue(w.plan.policy, 'use limit')?.low ?? 1;
