import type { BoundFile } from '@cribwright/language';
import { openWorkspace, today } from '@cribwright/workspace';
import type { Checked, Pending } from '@cribwright/workspace/internal';
import type { CancellationToken, Connection, InitializeParams } from 'vscode-languageserver';
import { LSPErrorCodes, ResponseError } from 'vscode-languageserver';
import type { Session } from '../context/feature.js';
import { inSteps } from '../context/in-steps.js';
import { isOlderVersion } from '../context/older-version.js';
import { openDocuments, sameUri } from '../context/open-documents.js';
import { localeOf, longestCheck, readSettings, type Settings } from '../context/settings.js';
import { debounce } from './debounce.js';
import { scheduleDiagnostics } from './diagnostic-scheduler.js';
import type { Platform } from './platform.js';
import { publisher } from './publisher.js';
import { watchPlanFiles } from './watch-plan-files.js';

/** Plans in the opened folders beyond this many are not looked through by what goes across files. */
const mostFiles = 2000;

/** Without typing for this long, in ms, what is heavy may begin. Of a large plan each step of it takes a while. */
const idleDelay = 250;

/** ms; a drawing is on the glass by then. */
const threeFrames = 50;
const longIdleDelay = 1000;

/** Ties one client to a workspace: keeps texts in step, checks what changed, and answers the features' questions. */
export function startSession(
  connection: Connection,
  { files, turn }: Platform,
  params: InitializeParams,
): Session {
  const open = openDocuments();
  let folders = foldersOf(params);
  let settings: Settings = readSettings(params.initializationOptions?.settings);
  let known: Promise<readonly string[]> | undefined;
  const workspace = openWorkspace({
    files,
    get folders() {
      return folders;
    },
    get today() {
      return today();
    },
    timeLimit: { now: () => performance.now(), over: longestCheck(params.initializationOptions) },
  });

  const pause = () => new Promise<void>((next) => turn(next));

  async function file(uri: string): Promise<BoundFile | undefined> {
    const key = sameUri(uri);
    await workspace.load(key);
    return workspace.bound(key);
  }
  async function checked(uri: string, token?: CancellationToken): Promise<Checked | undefined> {
    if (!(await file(uri))) return undefined;
    if (token) {
      // Lets a cancellation that waits come first: an edit has made the question pointless.
      await pause();
      if (token.isCancellationRequested) throw canceled();
    }
    const overtaken = () => token?.isCancellationRequested === true;
    if (!(await inSteps(workspace.prepare(sameUri(uri)), pause, overtaken))) throw canceled();
    const found = workspace.check(sameUri(uri));
    if (found.pending && session.served.get(found.uri) !== 'loads')
      session.served.set(found.uri, found.pending);
    return found;
  }
  async function whole(
    uri: string,
    wanted: Pending,
    token?: CancellationToken,
  ): Promise<Checked | undefined> {
    if (!(await file(uri))) return undefined;
    const overtaken = () => token?.isCancellationRequested === true;
    if (!(await inSteps(workspace.complete(sameUri(uri), wanted), pause, overtaken))) throw canceled();
    const found = await checked(uri, token);
    if (found) answered(found);
    return found;
  }
  /** More is worked out than a hint or a lens said: the client asks for these again. */
  function answered({ uri, pending }: Checked): void {
    const served = session.served.get(uri);
    if (served === undefined || served === pending || (served === 'push' && pending === 'loads')) return;
    session.served.delete(uri);
    due.trigger();
  }
  const listed = async (): Promise<readonly string[]> =>
    (await Promise.all(folders.map((folder) => files.list(folder, mostFiles)))).flat().map(sameUri);

  const edited = (): readonly string[] =>
    open
      .all()
      .map((d) => sameUri(d.uri))
      .filter((uri) => !isOlderVersion(uri));

  const session: Session = {
    connection,
    client: params.capabilities,
    life: newLife(),
    workspace,
    drawn: new Set(),
    served: new Map(),
    get settings() {
      return settings;
    },
    get locale() {
      return localeOf(settings, params.locale);
    },
    file,
    checked,
    whole,
    async everyFile() {
      known ??= listed();
      const uris = new Set([...(await known), ...edited()]);
      const found: BoundFile[] = [];
      for (const uri of uris) {
        const each = await file(uri);
        if (each) found.push(each);
      }
      return found;
    },
    copyWith: (texts) =>
      openWorkspace({
        files: {
          read: async (uri, within) =>
            texts.get(uri) ?? workspace.bound(uri)?.text ?? (await files.read(uri, within)),
        },
        folders,
        today: today(),
        // Nothing at once: whoever asks for it pauses after each step.
        timeLimit: { now: () => 0, over: -1 },
      }),
    pause,
  };

  const { report, layout, send, clear, refresh } = publisher(session, open);
  const work = scheduleDiagnostics({
    turn,
    idleDelay: () => {
      const long = open.all().some(({ uri }) => workspace.isSlow(sameUri(uri)));
      return new Promise((done) => setTimeout(done, long ? longIdleDelay : idleDelay));
    },
    layoutDelay: () => new Promise((done) => setTimeout(done, threeFrames)),
    layout,
    check: report,
    complete: (uri, wanted) => workspace.complete(sameUri(uri), wanted),
    send,
    clear,
  });
  /** Once a burst has passed: a client asks again for each. */
  const due = debounce(turn, refresh);
  /** A file changed: it and whatever uses it are looked at again, the file itself first. */
  function changed(uri: string): void {
    const users = workspace.dependents(sameUri(uri)).filter((u) => open.get(u));
    for (const user of users) work.touch(user);
    if (open.get(uri)) work.touch(sameUri(uri));
    if (users.length > 0) due.trigger();
  }
  function everything(): void {
    for (const document of open.all()) work.touch(sameUri(document.uri));
    due.trigger();
  }

  connection.onDidOpenTextDocument((opened) => {
    const { uri, text } = open.open(opened);
    workspace.put(sameUri(uri), text.getText(), text.version);
    changed(uri);
  });
  connection.onDidChangeTextDocument((change) => {
    const document = open.change(change);
    if (!document) return;
    workspace.put(sameUri(document.uri), document.text.getText(), document.text.version);
    changed(document.uri);
  });
  connection.onDidCloseTextDocument(({ textDocument: { uri } }) => {
    if (!open.close(uri)) return;
    work.forget(sameUri(uri));
    session.drawn.delete(sameUri(uri));
    session.served.delete(sameUri(uri));
    workspace.drop(sameUri(uri));
    changed(uri);
  });
  connection.onDidChangeWatchedFiles(({ changes }) => {
    known = undefined;
    for (const { uri } of changes) {
      // What the editor holds open counts; the file on the disk follows when it is saved.
      if (open.get(uri)) continue;
      const users = workspace.dependents(sameUri(uri));
      workspace.drop(sameUri(uri));
      for (const user of users) if (open.get(user)) work.touch(user);
    }
    due.trigger();
  });

  async function pullSettings(pushed: unknown): Promise<void> {
    const canPull = params.capabilities.workspace?.configuration === true;
    const pull = () => connection.workspace.getConfiguration('cribwright').catch(() => pushed);
    settings = readSettings(canPull ? await pull() : pushed);
    everything();
  }
  connection.onDidChangeConfiguration(({ settings: pushed }) =>
    pullSettings(isSection(pushed) ? pushed.cribwright : undefined),
  );
  connection.onInitialized(async () => {
    watchPlanFiles(connection, params.capabilities);
    if (params.capabilities.workspace?.workspaceFolders)
      connection.workspace.onDidChangeWorkspaceFolders(({ added, removed }) => {
        const gone = new Set(removed.map((f) => f.uri));
        folders = [...folders.filter((f) => !gone.has(f)), ...added.map((f) => f.uri)];
        known = undefined;
        workspace.foldersChanged();
        // What a `use` may reach hangs on the folders: everything open is read anew.
        for (const { uri, text } of open.all()) {
          workspace.drop(sameUri(uri));
          workspace.put(sameUri(uri), text.getText(), text.version);
        }
        everything();
      });
    if (params.capabilities.workspace?.configuration) await pullSettings(undefined);
  });
  return session;
}

const canceled = () => new ResponseError(LSPErrorCodes.RequestCancelled, 'canceled');

const newLife = (): string =>
  [...globalThis.crypto.getRandomValues(new Uint8Array(8))]
    .map((b) => b.toString(16).padStart(2, '0'))
    .join('');

const foldersOf = ({ workspaceFolders, rootUri }: InitializeParams): readonly string[] =>
  workspaceFolders?.map((f) => f.uri) ?? (rootUri ? [rootUri] : []);

const isSection = (value: unknown): value is { readonly cribwright?: unknown } =>
  typeof value === 'object' && value !== null;
