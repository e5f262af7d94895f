import type { Workings } from '@cribwright/engine';
import { term } from '@cribwright/messages';
import type { SizeUpItem } from '@cribwright/model';
import { practice, type Rule, type RuleFinding } from '../definition/rule.js';

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
      message: term(`size-up-missing.${item}`),
      fixes: [
        {
          title: term('size-up-missing.fix-add'),
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
  title: term('size-up-missing.title'),
  family: 'order and crew',
  severity: 'warning',
  judges: 'plan',
  readsAlso: ['size up'],
  protects: term('size-up-missing.protects'),
  sources: [practice],
  compares: [],
  check: missing,
};
