import type { BoundFile } from '@cribwright/language';
import { openWorkspace } from '@cribwright/workspace';
import type { FeatureContext } from '../context/feature-context.js';
import { defaultSettings, type Settings } from '../context/settings.js';

const folder = 'memory:/';

/** A desk over files in memory, for tests of one feature. Names are paths from one folder. */
export function contextOf(
  files: Readonly<Record<string, string>>,
  { settings = {}, locale = 'en' }: { settings?: Partial<Settings>; locale?: FeatureContext['locale'] } = {},
): FeatureContext {
  const texts = new Map(Object.entries(files).map(([name, text]) => [`${folder}${name}`, text]));
  const source = { read: async (uri: string) => texts.get(uri) };
  const workspace = openWorkspace({ files: source, folders: [folder] });
  const file = async (uri: string): Promise<BoundFile | undefined> => {
    await workspace.load(uri);
    return workspace.bound(uri);
  };
  return {
    workspace,
    settings: { ...defaultSettings, ...settings },
    locale,
    file,
    checked: async (uri) => ((await file(uri)) ? workspace.check(uri) : undefined),
    async whole(uri, wanted) {
      if (!(await file(uri))) return undefined;
      for (const _step of workspace.complete(uri, wanted));
      return workspace.check(uri);
    },
    async everyFile() {
      const found = await Promise.all([...texts.keys()].map(file));
      return found.filter((f) => f !== undefined);
    },
    copyWith: (changed) =>
      openWorkspace({
        files: { read: async (uri) => changed.get(uri) ?? texts.get(uri) },
        folders: [folder],
        timeLimit: { now: () => 0, over: -1 },
      }),
    pause: async () => undefined,
  };
}

/** A file whose text has `<|>` where the cursor stands, beside other files. */
export async function atCursor(marked: string, others: Readonly<Record<string, string>> = {}, more = {}) {
  const offset = marked.indexOf('<|>');
  if (offset < 0) throw new Error('the text has no <|>');
  const text = marked.replace('<|>', '');
  const desk = contextOf({ 'plan.crib': text, ...others }, more);
  const file = await desk.file(`${folder}plan.crib`);
  if (!file) throw new Error('the file was not read');
  return { desk, file, offset, text };
}
