import * as vscode from 'vscode';
import type { Verdicts } from './verdicts.js';

type Answer = vscode.CodeLens[] | null | undefined;

/** ms; the editor keeps the lenses of the text before for as long as nobody answers. */
const patience = 300;

/**
 * The line above each plan holds a verdict, and the editor keeps old ones: while the server thinks, and for half a
 * minute after it is gone. So the server's lenses pass through here, and a lens of our own says that nothing is checked.
 */
export class Lenses implements vscode.Disposable {
  private readonly stale = new vscode.EventEmitter<void>();
  /** Answers that came too late for the one who asked. */
  private readonly late = new Map<string, { readonly version: number; readonly lenses: Answer }>();
  private readonly own: vscode.Disposable[] = [this.stale];

  follow(verdicts: Verdicts): void {
    const provider: vscode.CodeLensProvider = {
      onDidChangeCodeLenses: this.stale.event,
      provideCodeLenses: () => (verdicts.stopped ? [restartLens(verdicts.why())] : []),
    };
    this.own.push(
      vscode.languages.registerCodeLensProvider({ language: 'cribwright' }, provider),
      verdicts.onDidChangeServer(() => {
        this.late.clear();
        this.stale.fire();
      }),
      vscode.workspace.onDidCloseTextDocument(({ uri }) => this.late.delete(uri.toString())),
    );
  }

  /** The server's answer; where it takes long, that it is not there, and then asks the editor to ask again. */
  async inTime(
    document: vscode.TextDocument,
    ask: () => vscode.ProviderResult<vscode.CodeLens[]>,
  ): Promise<Answer> {
    const key = document.uri.toString();
    const { version } = document;
    const before = this.late.get(key);
    this.late.delete(key);
    if (before?.version === version) return before.lenses;
    const asked = Promise.resolve(ask());
    let timer: ReturnType<typeof setTimeout> | undefined;
    const tooLong = new Promise<'too long'>((done) => {
      timer = setTimeout(() => done('too long'), patience);
    });
    const first = await Promise.race([asked, tooLong]);
    clearTimeout(timer);
    if (first !== 'too long') return first;
    asked.then(
      (lenses) => {
        if (document.version !== version) return;
        this.late.set(key, { version, lenses });
        this.stale.fire();
      },
      () => undefined,
    );
    return [new vscode.CodeLens(top, { title: vscode.l10n.t('checking'), command: '' })];
  }

  dispose(): void {
    for (const one of this.own) one.dispose();
  }
}

const top = new vscode.Range(0, 0, 0, 0);

const restartLens = (title: string): vscode.CodeLens =>
  new vscode.CodeLens(top, { title, command: 'cribwright.restart' });
