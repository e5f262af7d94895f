import { messages } from '../../finding/message.js';
import type { SizeUpItem } from '../../model/plan.js';
import type { Workings } from '../../workings/workings.js';
import { practice, type Rule, type RuleFinding } from '../rule.js';

const words = {
  fuel: 'The size-up says nothing of fuel. Look for leaks, and say what was found.',
  battery: 'The size-up says nothing of batteries. Look for high voltage, and say what was found.',
  cargo: 'The size-up says nothing of the cargo. Ask what it is and whether it may move.',
  brakes:
    'The size-up says nothing of the brakes. Air brakes and their springs hold energy: say how they stand.',
  'fix-add': 'Add the line to the size-up',
} as const;
const say = messages('size-up-missing', words);

const needed = ['fuel', 'battery', 'cargo', 'brakes'] as const satisfies readonly SizeUpItem['item'][];

/** A finding left as dots is not one. */
const said = (finding: string) => !/^[.…\s]*$/.test(finding);

function missing({ plan }: Workings): readonly RuleFinding[] {
  if (plan.vehicles.length === 0) return [];
  const has = new Set(plan.sizeUp.filter((s) => said(s.finding)).map((s) => s.item));
  const into = plan.sizeUp.length > 0 ? { element: 'size up' } : plan.ref;
  return needed
    .filter((item) => !has.has(item))
    .map((item) => ({
      subject: plan.ref,
      at: into,
      message: say(item, {}),
      fixes: [
        {
          title: say('fix-add', {}),
          edits: [
            {
              kind: 'insert' as const,
              into,
              text: plan.sizeUp.length > 0 ? `${item} "…"` : `size up {\n  ${item} "…"\n}`,
            },
          ],
          safe: false,
        },
      ],
    }));
}

export const rule: Rule = {
  id: 'size-up-missing',
  title: 'Size-up that leaves something out',
  family: 'order and crew',
  severity: 'warning',
  protects: 'Fuel, batteries, cargo and the energy in brakes hurt those who did not look for them.',
  sources: [practice],
  compares: [],
  words,
  check: missing,
};
