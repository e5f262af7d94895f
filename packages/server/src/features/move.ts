import type { MoveParams } from '@cribwright/workspace';
import { moveEdit } from '@cribwright/workspace/internal';
import type { Feature } from '../context/feature.js';
import type { FeatureContext } from '../context/feature-context.js';
import { type EditReply, MoveRequest } from '../protocol/requests.js';
import { editReply } from './edit.js';
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
