import type { BoundFile, TextChange } from '@cribwright/language';
import { list, type Message, message, shown, term } from '@cribwright/messages';
import { append } from '@cribwright/syntax/internal';
import { type Checked, clash, isUnsafe, type Problem, type ProblemFix } from '@cribwright/workspace/internal';
import {
  type CancellationToken,
  type CodeAction,
  type CodeActionContext,
  CodeActionKind,
  CodeActionTriggerKind,
  type Diagnostic,
  type Range,
} from 'vscode-languageserver';
import type { Feature } from '../context/feature.js';
import type { FeatureContext } from '../context/feature-context.js';
import { offsetAt, spanOf } from '../context/positions.js';
import { say as translate } from '../l10n/say.js';
import { makeSafeCommand } from './code-lens.js';
import { plansIn } from './edit.js';
import { type FixProof, fixProofs } from './fix-proof.js';
import { otherBuildKind, otherBuilds } from './other-builds.js';
import { replyOf } from './plan-around.js';
import { diagnosticOf } from './publish-diagnostics.js';
import { unitsOfProblem } from './units-for.js';
import { workspaceEdit } from './workspace-edit.js';

export const fixAllKind = `${CodeActionKind.SourceFixAll}.cribwright`;

/** `textDocument/codeAction`: fixes for one finding, and one action for all that have a single safe answer. */
export const codeAction: Feature = {
  offers: () => ({
    codeActionProvider: {
      codeActionKinds: [CodeActionKind.QuickFix, fixAllKind, otherBuildKind, makeSafeKind],
    },
  }),
  serve(session) {
    session.connection.onCodeAction(async ({ textDocument, range, context }, token) => {
      const file = await session.file(textDocument.uri);
      const checked = file && (await session.checked(textDocument.uri, token));
      if (!file || !checked) return null;
      const wanted = (kind: string): boolean =>
        !context.only || context.only.some((only) => kind === only || kind.startsWith(`${only}.`));
      return [
        ...(wanted(CodeActionKind.QuickFix)
          ? await quickFixes(session, file, checked, range, { context, token })
          : []),
        ...(wanted(fixAllKind) ? fixAll(session, file, checked) : []),
        ...(wanted(makeSafeKind) ? makeSafeAction(session, file, checked, offsetAt(file, range.start)) : []),
        // A search: made when someone asks, not at every step of the cursor.
        ...(wanted(otherBuildKind) && asked(context)
          ? await otherBuilds(session, file, checked, offsetAt(file, range.start), token)
          : []),
      ];
    });
  },
};

/** A kind of its own, so that it can be asked for alone. */
export const makeSafeKind = `${CodeActionKind.RefactorRewrite}.cribwright.makeSafe`;

/** On the first line of a plan in which something is unsafe: the search is made by the command, not here. */
export function makeSafeAction(
  desk: Pick<FeatureContext, 'locale'>,
  file: BoundFile,
  checked: Checked,
  offset: number,
): CodeAction[] {
  const plan = plansIn(file.blocks).find(
    ({ span, bodySpan }) => span.start <= offset && offset <= (bodySpan?.start ?? span.end),
  );
  const reply = plan && replyOf(file, checked, plan);
  if (reply === undefined || !checked.problems.some((p) => p.plan === reply.plan.title && isUnsafe(p)))
    return [];
  const title = translate(term('editor.make-safe'), desk.locale);
  return [{ title, kind: makeSafeKind, command: { title, command: makeSafeCommand, arguments: [file.uri] } }];
}

const asked = ({ only, triggerKind }: CodeActionContext): boolean =>
  only !== undefined || triggerKind === CodeActionTriggerKind.Invoked;

/**
 * Worked out from the file itself, not from what the client sends: on save it sends nothing. Where somebody asked,
 * each is tried out first: it says what it does to the figure in question, and what helps nothing is left out. At a step
 * of the cursor none is tried, and none is preferred.
 */
export async function quickFixes(
  desk: FeatureContext,
  file: BoundFile,
  checked: Checked,
  range: Range,
  { context, token }: { readonly context?: CodeActionContext; readonly token?: CancellationToken } = {},
): Promise<CodeAction[]> {
  const { start, end } = spanOf(file, range);
  const here = ({ problems }: Checked) =>
    problems.filter(({ span, fixes }) => fixes.length > 0 && span.start <= end && start <= span.end);
  if (context?.triggerKind === CodeActionTriggerKind.Automatic)
    return here(checked).flatMap((p) => fixesOf(desk, file, p, undefined));
  // What hangs on the loads must be known, or all of it would seem new.
  const before =
    here(checked).length === 0 ? checked : ((await desk.whole(file.uri, 'loads', token)) ?? checked);
  const proofs = await fixProofs(desk, file, here(before), before, token);
  return here(before).flatMap((p) => fixesOf(desk, file, p, proofs));
}

function fixesOf(
  desk: FeatureContext,
  file: BoundFile,
  problem: Problem,
  proofs: ReadonlyMap<ProblemFix, FixProof> | undefined,
): CodeAction[] {
  const diagnostics: Diagnostic[] = [diagnosticOf(desk, file, problem)];
  const tried = problem.fixes.map((fix) => ({ fix, proof: proofs?.get(fix) }));
  const holds = (proof: FixProof | undefined) => proof?.remains === false && proof.raises.length === 0;
  // What helps nothing is not shown; what trades one danger for another, only where there is nothing better.
  const anyHolds = tried.some(({ proof }) => holds(proof));
  const shows = ({ proof }: (typeof tried)[number]) =>
    proofs === undefined ||
    problem.finding === undefined ||
    (proof !== undefined && (holds(proof) || (!anyHolds && (!proof.remains || proof.nearer))));
  // A fix of the text has nothing to prove: it makes readable what was not.
  const preferred = ({ proof }: (typeof tried)[number]) =>
    proofs !== undefined && tried.length === 1 && (problem.finding === undefined || holds(proof));
  return tried
    .filter(shows)
    .sort((a, b) => Number(holds(b.proof)) - Number(holds(a.proof)))
    .map((one) => ({
      title: translate(titleOf(one.fix.title, one.proof), desk.locale, unitsOfProblem(desk, problem)),
      kind: CodeActionKind.QuickFix,
      diagnostics,
      edit: workspaceEdit(desk, one.fix.edits),
      ...(preferred(one) ? { isPreferred: true } : {}),
    }));
}

function titleOf(fix: Message, proof: FixProof | undefined): Message {
  if (proof === undefined) return fix;
  const { raises, remains, effect } = proof;
  const does =
    effect === undefined
      ? fix
      : message('editor.fix-effect', {
          fix,
          effect: message('advice.effect', {
            label: effect.label,
            before: shown(effect.before),
            after: shown(effect.after),
          }),
        });
  if (raises.length > 0) return message('editor.fix-raises', { fix: does, what: list(raises, 'plain') });
  return remains ? message('editor.fix-remains', { fix: does }) : does;
}

/** The first safe fix of each problem, as far as they do not touch one another. */
export function fixAll(desk: FeatureContext, file: BoundFile, checked: Checked): CodeAction[] {
  const changes: TextChange[] = [];
  for (const { fixes } of checked.problems) {
    const edits = fixes.find((f) => f.safe)?.edits;
    if (!edits || Object.keys(edits).some((uri) => uri !== file.uri)) continue;
    const own = edits[file.uri] ?? [];
    if (own.some((a) => changes.some((b) => clash(a, b)))) continue;
    append(changes, own);
  }
  if (changes.length === 0) return [];
  return [
    {
      title: translate(term('editor.fix-all'), desk.locale),
      kind: fixAllKind,
      edit: workspaceEdit(desk, { [file.uri]: changes }),
    },
  ];
}
