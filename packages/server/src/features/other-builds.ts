import { type Build, buildsFor, workingsOf } from '@cribwright/engine';
import type { BoundFile } from '@cribwright/language';
import { blockAt } from '@cribwright/language/internal';
import { count, message, name, quantity } from '@cribwright/messages';
import type { PlanEdit } from '@cribwright/model';
import { show } from '@cribwright/units';
import type { Checked } from '@cribwright/workspace/internal';
import { planEditChanges } from '@cribwright/workspace/internal';
import type { CancellationToken, CodeAction } from 'vscode-languageserver';
import type { FeatureContext } from '../context/feature-context.js';
import { say as translate } from '../l10n/say.js';
import { planAround } from './plan-around.js';
import { workspaceEdit } from './workspace-edit.js';

export const otherBuildKind = 'refactor.rewrite.cribwright';

/** How many other ways are worth reading. */
const most = 5;

/**
 * Other ways to build the crib at the cursor from what the units carry: those that reach, stand and carry, the fewest
 * timbers first. The plan is checked again with the one that is taken.
 */
export async function otherBuilds(
  desk: FeatureContext,
  file: BoundFile,
  checked: Checked,
  offset: number,
  token?: CancellationToken,
): Promise<CodeAction[]> {
  const block = blockAt(file, offset);
  const reply = planAround(file, checked, offset);
  if (block?.schema.keyword !== 'crib' || !block.parent || !reply) return [];
  const w = workingsOf(reply.plan);
  const crib = w.cribs().find((c) => c.crib.id === block.elementId);
  if (!crib) return [];
  for (const _step of w.resting.steps()) {
    await desk.pause();
    if (token?.isCancellationRequested === true) return [];
  }
  const plan = { block: block.parent, text: file.text };
  return buildsFor(crib, w)
    .filter((b) => !sameBuild(b.crib, crib.crib))
    .slice(0, most)
    .flatMap((build) => {
      const made = planEditChanges(plan, editsFor(build, reply.plan.display));
      if ('refused' in made) return [];
      return [{ title: titleOf(desk, build), kind: otherBuildKind, edit: workspaceEdit(desk, made.changes) }];
    });
}

type Crib = Build['crib'];

const sameBuild = (a: Crib, b: Crib): boolean =>
  a.courses === b.courses &&
  a.timber.name === b.timber.name &&
  a.timber.length === b.timber.length &&
  layoutOf(a) === layoutOf(b);

const layoutOf = ({ layout }: Crib): string => `${layout.lengthwise} by ${layout.crosswise}`;

function editsFor({ crib }: Build, system: 'us' | 'si'): readonly PlanEdit[] {
  const set = (property: string, text: string): PlanEdit => ({
    kind: 'set',
    at: { element: crib.id, property },
    text,
  });
  const length = show(crib.timber.length, 'length', 'in', { rounding: 'nearest', system });
  return [
    set('timber', `${crib.timber.name} ${length} long`),
    set('layout', layoutOf(crib)),
    set('courses', String(crib.courses)),
  ];
}

const titleOf = (desk: FeatureContext, { crib, timbers, use }: Build): string =>
  translate(
    message('editor.other-build', {
      crib: name(crib.name),
      layout: name(layoutOf(crib)),
      timber: name(crib.timber.name),
      courses: count(crib.courses),
      timbers: count(timbers),
      // Toward the unsafe side a use is never shown smaller than it is.
      use: quantity('share', Math.ceil(use * 100 - 1e-9) / 100, 'up'),
    }),
    desk.locale,
  );
