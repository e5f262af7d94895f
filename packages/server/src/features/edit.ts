import type { BoundBlock, BoundFile } from '@cribwright/language';
import { term } from '@cribwright/messages';
import { type Changes, elementIn, planEditChanges } from '@cribwright/workspace/internal';
import type { Feature } from '../context/feature.js';
import type { FeatureContext } from '../context/feature-context.js';
import { say as translate } from '../l10n/say.js';
import { type EditParams, type EditReply, EditRequest } from '../protocol/requests.js';
import { workspaceEdit } from './workspace-edit.js';

/** `cribwright/edit`: turns changes of the plan into changes of its text, in the text's own units and style. */
export const edit: Feature = {
  serve(session) {
    session.connection.onRequest(EditRequest, (params: EditParams) => editOf(session, params));
  },
};

export const editOf = (
  desk: FeatureContext,
  { uri, version, edits, plan }: EditParams,
): Promise<EditReply> => {
  const first = edits[0];
  const element = first && (first.kind === 'insert' ? first.into : first.at).element;
  return editReply(desk, { uri, version, element, plan }, (file, block) =>
    planEditChanges({ block, text: file.text }, edits),
  );
};

export interface EditTarget {
  readonly uri: string;
  readonly version: number;
  readonly element: string | undefined;
  /** Which plan of the file, from 0. Without it, the first that has the element. */
  readonly plan: number | undefined;
}

/** Refuses where the text is no longer the one that the client speaks of. */
export async function editReply(
  desk: FeatureContext,
  { uri, version, element, plan }: EditTarget,
  change: (file: BoundFile, plan: BoundBlock) => Changes,
): Promise<EditReply> {
  const refused = (why: Parameters<typeof translate>[0]): EditReply => ({
    refused: translate(why, desk.locale),
  });
  const file = await desk.file(uri);
  if (!file) return refused(term('editor.no-file'));
  if (file.version !== version) return refused(term('editor.moved-on'));
  const plans = plansIn(file.blocks);
  const block =
    plan === undefined
      ? (plans.find((p) => element !== undefined && elementIn(p, element)) ?? plans[0])
      : plans[plan];
  if (!block) return refused(term('editor.no-plan'));
  const changes = change(file, block);
  return 'refused' in changes ? refused(changes.refused) : { edit: workspaceEdit(desk, changes.changes) };
}

/** Plans at the top, and inside sites and lessons, in the order of the text. */
export const plansIn = (blocks: readonly BoundBlock[]): readonly BoundBlock[] =>
  blocks.flatMap((b) => (b.schema.keyword === 'plan' ? [b] : plansIn(b.blocks)));
