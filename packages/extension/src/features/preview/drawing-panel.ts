import type { FromPanel, ToPanel } from '@cribwright/preview';
import type { Signed, SignedAnalysis } from '@cribwright/server/protocol';
import type { AnalysisReply } from '@cribwright/workspace';
import * as vscode from 'vscode';
import { Lapse } from '../../session/lapse.js';
import { readerWords } from '../../session/reader-words.js';
import type { Session } from '../../session/session.js';
import { changeText } from './change-text.js';
import { coursesEdit } from './courses-edit.js';
import { goTo } from './go-to.js';
import { type Drawable, joined } from './last-good.js';
import { loadPage } from './load-page.js';
import { panelWords } from './panel-words.js';
import { refusals } from './refusals.js';
import { firstLook, type Looking, showMessage } from './show-message.js';
import { staleWords } from './stale-words.js';
import { Turns } from './turns.js';

/** One panel and the file it draws. The text is the only truth: a drag or a key here asks for an edit of it. */
export class DrawingPanel {
  /** A locked panel stays with its file; one that is not follows the editor. */
  locked = false;
  private uri: vscode.Uri | undefined;
  private drawable: (Drawable & Signed) | undefined;
  /** What is drawn where the file is only a proposal, that the server does not know. */
  private given: AnalysisReply | undefined;
  private readonly looks = new Map<string, Looking>();
  private readonly turns = new Turns();
  private lit: string | undefined;
  private asked = 0;
  private wanted: { readonly format: string; readonly made: (data: string) => void } | undefined;
  private pageIsUp = false;
  private readonly up = new vscode.EventEmitter<void>();
  private readonly lapse = new Lapse(
    // What is only proposed is of no text that could change.
    () => this.given !== undefined || this.holds(),
    () => this.tellOutdated(),
  );

  constructor(
    readonly panel: vscode.WebviewPanel,
    private readonly session: Session,
  ) {
    panel.webview.onDidReceiveMessage((message: FromPanel) => void this.hear(message));
    panel.onDidDispose(() => {
      this.up.dispose();
      this.lapse.stop();
    });
    loadPage(panel.webview, session.context.extensionUri, panelWords(readerWords()));
  }

  get shows(): string | undefined {
    return this.uri?.toString();
  }

  /** Draws a file. Resolves once the page is up and has been given the drawing. */
  async show(uri: vscode.Uri, look?: Looking): Promise<void> {
    if (look) this.looks.set(uri.toString(), look);
    this.uri = uri;
    this.lit = undefined;
    this.name();
    this.lapse.look();
    await Promise.all([this.refresh(), this.whenUp()]);
  }

  /** Draws plans that are only proposed. Nothing can be changed in such a drawing. */
  async propose(uri: vscode.Uri, reply: AnalysisReply): Promise<void> {
    this.given = reply;
    this.drawable = undefined;
    await this.show(uri);
  }

  /** Asks for the analysis again. An answer that is overtaken by a later question is dropped. */
  async refresh(): Promise<void> {
    const { uri } = this;
    if (!uri) return;
    const question = ++this.asked;
    if (this.given !== undefined) {
      this.drawable = { ...joined(undefined, { ...this.given, uri: uri.toString() }), life: '' };
      return this.post();
    }
    try {
      await vscode.workspace.openTextDocument(uri);
      const reply = await this.session.server.analysis({ uri: uri.toString() });
      if (question !== this.asked) return;
      this.take(reply, uri);
    } catch (error) {
      if (question === this.asked) this.say(error instanceof Error ? error.message : String(error));
    }
  }

  /** The text of what is drawn, or the server that checks it, has changed. */
  textChanged(): void {
    this.lapse.look();
  }

  /** Draws how the plans lie now, before their checks have run. An answer to an older question is dropped. */
  layout(reply: SignedAnalysis): void {
    const { uri } = this;
    if (!uri || (this.drawable?.uri === uri.toString() && reply.version < this.drawable.version)) return;
    this.asked++;
    this.take(reply, uri);
  }

  private take(reply: SignedAnalysis, uri: vscode.Uri): void {
    const { life } = reply;
    this.drawable = { ...joined(this.drawable, { ...reply, uri: uri.toString() }), life };
    this.post();
    this.lapse.look();
  }

  /** Lights the shape of an element, and makes it the one that close-ups show. */
  light(element: string | undefined): void {
    const { uri } = this;
    if (!uri || element === this.lit) return;
    this.lit = element;
    this.send({ kind: 'light', uri: uri.toString(), element });
    const supports = this.plan()?.analysis.supports ?? [];
    if (element !== undefined && supports.some(({ id }) => id === element)) {
      this.look({
        ...this.looking(),
        choice: { ...this.looking().choice, subject: element },
      });
    }
  }

  say(text: string): void {
    if (this.uri) this.send({ kind: 'say', uri: this.uri.toString(), text });
  }

  lock(locked: boolean): void {
    this.locked = locked;
    this.name();
  }

  /** What is looked at now, so that an export saves what is seen. */
  seen() {
    const plan = this.plan();
    const pending = this.drawable?.pending === true;
    const outdated = this.holds() ? undefined : this.session.verdicts.why();
    return plan && this.uri ? { plan, looking: this.looking(), uri: this.uri, pending, outdated } : undefined;
  }

  /** Has the page make a picture of what it shows, as base64. */
  make(format: 'png' | 'pdf'): Promise<string> {
    this.panel.reveal(undefined, true);
    return new Promise((made) => {
      this.wanted = { format, made };
      this.send({ kind: 'make', uri: this.uri?.toString() ?? '', format });
    });
  }

  private async hear(message: FromPanel): Promise<void> {
    if (message.kind === 'ready') {
      this.pageIsUp = true;
      this.up.fire();
      this.turns.forget();
      this.post();
      return this.tellOutdated();
    }
    if (!this.uri || message.uri !== this.uri.toString()) return;
    switch (message.kind) {
      case 'drawn':
        return this.session.drawn.fire(message);
      case 'choose':
        return this.look(message);
      case 'keep':
        return void this.looks.set(message.uri, message.state);
      case 'go to':
        return goTo(this.plan()?.places ?? {}, message.element, message.property);
      case 'move':
        return this.change(message.version, () =>
          this.session.server.move({ ...message, plan: this.shown() }),
        );
      case 'courses': {
        const edit = coursesEdit(this.plan()?.plan, message.element, message.by);
        if ('refused' in edit) return this.say(refusals()[edit.refused]);
        return this.change(message.version, () =>
          this.session.server.edit({
            uri: message.uri,
            version: message.version,
            edits: [edit],
            plan: this.shown(),
          }),
        );
      }
      case 'export':
        if (message.data !== undefined && this.wanted?.format === message.format) {
          this.wanted.made(message.data);
          this.wanted = undefined;
          return;
        }
        await vscode.commands.executeCommand('cribwright.saveDrawing', message.format, message.data);
    }
  }

  private async change(version: number, ask: Parameters<typeof changeText>[3]): Promise<void> {
    if (!this.uri) return;
    if (this.given !== undefined)
      return this.say(vscode.l10n.t('This is only proposed. Apply the changes first.'));
    const refused = await changeText(this.session.client, this.uri, version, ask);
    if (refused === undefined) return;
    this.say(refused);
    this.post();
  }

  private look({ plan, choice }: Looking): void {
    if (!this.uri) return;
    this.looks.set(this.uri.toString(), { plan, choice });
    this.post();
  }

  private looking(): Looking {
    return this.looks.get(this.uri?.toString() ?? '') ?? firstLook;
  }

  /** Which plan of the file is shown. */
  private shown(): number {
    return Math.max(0, Math.min(this.looking().plan, (this.drawable?.plans.length ?? 1) - 1));
  }

  private plan() {
    return this.drawable?.plans[this.shown()];
  }

  private post(): void {
    if (this.drawable && this.drawable.uri === this.uri?.toString()) {
      const message = showMessage(
        this.drawable,
        this.looking(),
        staleWords(this.drawable),
        readerWords().locale,
      );
      if (this.pageIsUp) this.send(this.turns.next(message));
    }
  }

  /** Whether what is drawn is of the text as it stands. Before anything was drawn there is nothing to hold. */
  private holds(): boolean {
    const { uri, drawable } = this;
    if (!uri || !drawable) return true;
    return drawable.uri === uri.toString() && this.session.verdicts.holds(uri, drawable);
  }

  /** The page must not show as a verdict what is none any more. */
  private tellOutdated(): void {
    const text = this.lapse.lapsed ? this.session.verdicts.why() : undefined;
    this.send({ kind: 'outdated', uri: this.uri?.toString() ?? '', text });
  }

  private send(message: ToPanel): void {
    if (this.pageIsUp) void this.panel.webview.postMessage(message);
  }

  private name(): void {
    const file = this.uri?.path.split('/').pop() ?? '';
    if (this.given !== undefined) {
      this.panel.title = vscode.l10n.t('Drawing of {0}, made safe', file);
      return;
    }
    this.panel.title = this.locked
      ? vscode.l10n.t('Drawing of {0}, locked', file)
      : vscode.l10n.t('Drawing of {0}', file);
  }

  private whenUp(): Promise<void> {
    return this.pageIsUp ? Promise.resolve() : new Promise((up) => this.up.event(() => up()));
  }
}
