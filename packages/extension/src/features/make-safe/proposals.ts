import type { MakeSafeReply } from '@cribwright/server/protocol';
import * as vscode from 'vscode';
import { proposalScheme } from '../../session/proposal-scheme.js';

/** Changes that were proposed for a file, until they are applied or replaced by others. */
export interface Proposal {
  readonly of: vscode.Uri;
  readonly reply: MakeSafeReply;
}

/** The proposed texts as read-only documents, one for each file. */
export class Proposals implements vscode.TextDocumentContentProvider {
  private readonly byUri = new Map<string, Proposal>();
  private readonly changed = new vscode.EventEmitter<vscode.Uri>();
  readonly onDidChange = this.changed.event;

  provideTextDocumentContent(uri: vscode.Uri): string {
    const found = this.at(uri);
    // The server may write an address in another way.
    const texts = Object.entries(found?.reply.texts ?? {});
    return texts.find(([of]) => vscode.Uri.parse(of).toString() === found?.of.toString())?.[1] ?? '';
  }

  put(proposal: Proposal): vscode.Uri {
    const uri = proposalFor(proposal.of);
    this.byUri.set(uri.toString(), proposal);
    this.changed.fire(uri);
    return uri;
  }

  at(uri: vscode.Uri): Proposal | undefined {
    return this.byUri.get(uri.toString());
  }

  drop(uri: vscode.Uri): void {
    this.byUri.delete(uri.toString());
  }

  dispose(): void {
    this.changed.dispose();
  }
}

/** One for each file, whatever its scheme: a virtual file and one on disk may have the same path. */
const proposalFor = (of: vscode.Uri): vscode.Uri =>
  vscode.Uri.from({ scheme: proposalScheme, path: of.path, query: of.toString() });
