import { count, message, name, shown, term } from '@cribwright/messages';
import { type SafetyPlan, type SafetyStep, makeSafe as search } from '@cribwright/workspace';
import { textChanges } from '@cribwright/workspace/internal';
import { type CancellationToken, LSPErrorCodes, ResponseError } from 'vscode-languageserver';
import type { Feature } from '../context/feature.js';
import type { FeatureContext } from '../context/feature-context.js';
import { inSteps } from '../context/in-steps.js';
import { say as translate } from '../l10n/say.js';
import { type MakeSafeParams, type MakeSafeReply, MakeSafeRequest } from '../protocol/requests.js';
import { forDrawing } from './for-drawing.js';
import { inUnitsOf, unitsOfProblem } from './units-for.js';
import { workspaceEdit } from './workspace-edit.js';

/** `cribwright/makeSafe`: changes that leave nothing unsafe, found on a copy of the files. */
export const makeSafe: Feature = {
  serve(session) {
    session.connection.onRequest(MakeSafeRequest, ({ uri }: MakeSafeParams, token) =>
      safetyOf(session, uri, token),
    );
  },
};

/** Rejects where the request was canceled. */
export async function safetyOf(
  desk: FeatureContext,
  uri: string,
  token?: CancellationToken,
): Promise<MakeSafeReply> {
  const file = await desk.file(uri);
  const version = file?.version ?? 0;
  const found = file && (await searched(desk, file.uri, token));
  if (file === undefined || found === undefined)
    return {
      version,
      summary: translate(term('editor.no-file'), desk.locale),
      steps: [],
      left: [],
      texts: {},
      edit: { changes: {} },
      analysis: { uri, version, state: 'no plan', pending: false, plans: [] },
    };
  const changes = Object.entries(found.texts).map(
    ([target, text]) => [target, textChanges(desk.workspace.bound(target)?.text ?? '', text)] as const,
  );
  return {
    version,
    summary: translate(summaryOf(found), desk.locale),
    steps: found.steps.map((step) => stepWords(desk, step)),
    left: found.left.map((p) => translate(p.message, desk.locale, unitsOfProblem(desk, p))),
    texts: found.texts,
    edit: workspaceEdit(desk, Object.fromEntries(changes)),
    analysis: {
      uri,
      version,
      state: found.after?.state ?? 'no plan',
      pending: found.after?.pending !== undefined,
      plans: (found.after?.plans ?? []).map((reply) => forDrawing(inUnitsOf(desk, reply))),
    },
  };
}

async function searched(
  desk: FeatureContext,
  uri: string,
  token: CancellationToken | undefined,
): Promise<SafetyPlan> {
  const copy = desk.copyWith(new Map());
  await copy.load(uri);
  const found = await inSteps(
    search(copy, uri),
    () => desk.pause(),
    () => token?.isCancellationRequested === true,
  );
  if (found === undefined) throw new ResponseError(LSPErrorCodes.RequestCancelled, '');
  return found.value;
}

const summaryOf = ({ steps, left }: SafetyPlan) =>
  steps.length === 0
    ? left.length === 0
      ? term('advice.nothing-to-do')
      : message('advice.no-fix', { count: count(left.length) })
    : left.length === 0
      ? message('advice.all-safe', { count: count(steps.length) })
      : message('advice.some-left', { count: count(steps.length), left: count(left.length) });

function stepWords(
  desk: FeatureContext,
  { problem, title, on, effect, unsafe: [before, after] }: SafetyStep,
): MakeSafeReply['steps'][number] {
  const say = (words: Parameters<typeof translate>[0]) =>
    translate(words, desk.locale, unitsOfProblem(desk, problem));
  return {
    title: say(title),
    rule: on === undefined ? problem.code : say(message('advice.rule-on', { rule: name(problem.code), on })),
    effect:
      effect &&
      say(
        message('advice.effect', {
          label: effect.label,
          before: shown(effect.before),
          after: shown(effect.after),
        }),
      ),
    unsafe: say(message('advice.unsafe', { before: count(before), after: count(after) })),
  };
}
