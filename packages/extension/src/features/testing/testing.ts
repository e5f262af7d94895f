import * as vscode from 'vscode';
import type { Feature } from '../../session/session.js';
import { planFiles } from './plan-files.js';

/** What plans expect of themselves (`expect safe`, `expect crib-height on A`), in the Testing view. */
export const testing: Feature = ({ context, server, verdicts }) => {
  const controller = vscode.tests.createTestController('cribwright', vscode.l10n.t('Plans'));
  context.subscriptions.push(controller);

  const fileItem = (uri: vscode.Uri): vscode.TestItem => {
    const known = controller.items.get(uri.toString());
    if (known) return known;
    const item = controller.createTestItem(uri.toString(), vscode.workspace.asRelativePath(uri), uri);
    item.canResolveChildren = true;
    controller.items.add(item);
    return item;
  };

  /** Lists what a file expects, and gives back each with its answer. A file that expects nothing is not shown. */
  const read = async (file: vscode.TestItem) => {
    const said = await server.expectations({ uri: file.id });
    const uri = vscode.Uri.parse(file.id);
    const answers = said.items.map((expectation) => {
      const child = controller.createTestItem(`${file.id}#${expectation.id}`, expectation.label, file.uri);
      const { start, end } = expectation.range;
      child.range = new vscode.Range(start.line, start.character, end.line, end.character);
      child.description = expectation.plan;
      return { child, expectation, holds: () => verdicts.holdsOrClosed(uri, said) };
    });
    file.children.replace(answers.map(({ child }) => child));
    if (answers.length === 0) controller.items.delete(file.id);
    return answers;
  };

  const discover = async (): Promise<void> => {
    for (const uri of await planFiles()) await read(fileItem(uri));
  };

  controller.resolveHandler = async (item) => {
    await (item ? read(item) : discover());
  };
  controller.refreshHandler = discover;

  const run = async (request: vscode.TestRunRequest): Promise<void> => {
    if (!request.include && controller.items.size === 0) await discover();
    const asked = request.include ?? [...controller.items].map(([, item]) => item);
    const left = new Set(request.exclude?.map(({ id }) => id));
    const files = new Map(asked.map((item) => item.parent ?? item).map((file) => [file.id, file]));
    const wanted = (child: vscode.TestItem, file: vscode.TestItem): boolean =>
      !left.has(child.id) && asked.some(({ id }) => id === child.id || id === file.id);

    const record = controller.createTestRun(request);
    for (const file of files.values()) {
      try {
        for (const { child, expectation, holds } of await read(file)) {
          if (!wanted(child, file)) continue;
          record.started(child);
          if (!holds()) record.errored(child, new vscode.TestMessage(verdicts.why()));
          else if (expectation.held) record.passed(child);
          else record.failed(child, failure(expectation.why, child));
        }
      } catch (error) {
        record.errored(file, new vscode.TestMessage(error instanceof Error ? error.message : String(error)));
      }
    }
    record.end();
  };

  /** What passed was of the text before, or of what it uses. */
  const invalidate = (): void => controller.invalidateTestResults();
  const onDisk = vscode.workspace.createFileSystemWatcher('**/*.crib');
  controller.createRunProfile(vscode.l10n.t('Check'), vscode.TestRunProfileKind.Run, run, true);
  context.subscriptions.push(
    onDisk,
    onDisk.onDidChange(invalidate),
    onDisk.onDidCreate(invalidate),
    onDisk.onDidDelete(invalidate),
    verdicts.onDidChangeServer(invalidate),
    vscode.workspace.onDidChangeTextDocument(({ document, contentChanges }) => {
      if (document.languageId === 'cribwright' && contentChanges.length > 0) invalidate();
    }),
    server.onAnalysis(({ uri }) => {
      const file = controller.items.get(vscode.Uri.parse(uri).toString());
      if (file) read(file).catch(invalidate);
    }),
  );
};

const failure = (why: string, { uri, range }: vscode.TestItem): vscode.TestMessage => {
  const message = new vscode.TestMessage(why);
  if (uri && range) message.location = new vscode.Location(uri, range);
  return message;
};
