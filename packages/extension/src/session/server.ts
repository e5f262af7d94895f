import type {
  AnalysisChangedParams,
  AnalysisParams,
  BundledFileParams,
  BundledFileReply,
  BundledFilesReply,
  EditParams,
  EditReply,
  ElementAtParams,
  ElementAtReply,
  ExpectationsReply,
  MakeSafeParams,
  MakeSafeReply,
  RulePageParams,
  RulePageReply,
  SignedAnalysis,
} from '@cribwright/server/protocol';
import {
  AnalysisChanged,
  AnalysisRequest,
  BundledFileRequest,
  BundledFilesRequest,
  EditRequest,
  ElementAtRequest,
  ExpectationsRequest,
  LayoutDrawn,
  MakeSafeRequest,
  MoveRequest,
  RulePageRequest,
} from '@cribwright/server/protocol';
import type { MoveParams } from '@cribwright/workspace';
import * as vscode from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';

/** The language server's own requests, typed. Each waits for the server to be up and rejects when it is gone. */
export interface Server {
  readonly analysis: (params: AnalysisParams) => Promise<SignedAnalysis>;
  readonly edit: (params: EditParams) => Promise<EditReply>;
  readonly move: (params: MoveParams) => Promise<EditReply>;
  /** Takes seconds. Rejects where the token was canceled. */
  readonly makeSafe: (params: MakeSafeParams, token: vscode.CancellationToken) => Promise<MakeSafeReply>;
  readonly rulePage: (params: RulePageParams) => Promise<RulePageReply>;
  readonly elementAt: (params: ElementAtParams) => Promise<ElementAtReply>;
  readonly expectations: (params: AnalysisParams) => Promise<ExpectationsReply>;
  readonly bundledFile: (params: BundledFileParams) => Promise<BundledFileReply>;
  readonly bundledFiles: () => Promise<BundledFilesReply>;
  /** The analysis of a file changed. */
  readonly onAnalysis: vscode.Event<AnalysisChangedParams>;
  /** How the plans of a file lie now, before their checks have run. */
  readonly onLayout: vscode.Event<SignedAnalysis>;
}

export const serverOf = (
  client: BaseLanguageClient,
  started: Promise<void>,
  context: vscode.ExtensionContext,
): Server => {
  const changed = new vscode.EventEmitter<AnalysisChangedParams>();
  const layout = new vscode.EventEmitter<SignedAnalysis>();
  context.subscriptions.push(
    changed,
    layout,
    client.onNotification(AnalysisChanged, (params: AnalysisChangedParams) => changed.fire(params)),
    client.onNotification(LayoutDrawn, (params: SignedAnalysis) => layout.fire(params)),
  );
  const ask =
    <Params, Reply>(method: string) =>
    async (params: Params, token?: vscode.CancellationToken): Promise<Reply> => {
      await started;
      return client.sendRequest<Reply>(method, params, token);
    };
  return {
    analysis: ask(AnalysisRequest),
    edit: ask(EditRequest),
    move: ask(MoveRequest),
    makeSafe: ask(MakeSafeRequest),
    rulePage: ask(RulePageRequest),
    elementAt: ask(ElementAtRequest),
    expectations: ask(ExpectationsRequest),
    bundledFile: ask(BundledFileRequest),
    bundledFiles: () => ask<object, BundledFilesReply>(BundledFilesRequest)({}),
    onAnalysis: changed.event,
    onLayout: layout.event,
  };
};
