import { moveEdit } from '../edits/move-edit.js';
import { type EditReply, type MoveParams, MoveRequest } from '../protocol/requests.js';
import { editReply } from './edit.js';
import type { Feature } from './feature.js';
import type { FeatureContext } from './feature-context.js';
import { replyOf } from './plan-around.js';

/** `cribwright/move`: something was dragged in the drawing. The smallest change of the text that puts it there. */
export const move: Feature = {
  serve(session) {
    session.connection.onRequest(MoveRequest, (params: MoveParams) => moveOf(session, params));
  },
};

export async function moveOf(
  desk: FeatureContext,
  { uri, version, element, moves, to, plan }: MoveParams,
): Promise<EditReply> {
  const checked = await desk.checked(uri);
  return editReply(desk, { uri, version, element, plan }, (file, block) =>
    moveEdit(file, block, checked && replyOf(file, checked, block), { element, moves, to }),
  );
}
