import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { inOneGo } from '@cribwright/engine/internal';
import { count, message, name, shown, wordsIn } from '@cribwright/messages';
import {
  type Checked,
  makeSafe,
  openWorkspace,
  type SafetyPlan,
  type Workspace,
} from '@cribwright/workspace';
import { describe, expect, it } from 'vitest';

/**
 * Every example with faults is made safe by the fixes that the checks offer, and by nothing else. `steps/` holds the
 * fixes that were taken, in order, with what each did. `UPDATE_GOLDEN=1` writes what is taken now: read the difference.
 */
const update = process.env.UPDATE_GOLDEN === '1';
const examples = new URL('../../examples/', import.meta.url);
const plans = new URL('plans/', examples);
const faulty = readdirSync(plans).filter((file) => file.endsWith('-faulty.crib'));
const today = '2026-11-01';
const words = wordsIn('en', 'us');

function read(uri: string): string | undefined {
  try {
    return readFileSync(new URL(uri), 'utf8');
  } catch {
    return undefined;
  }
}

async function opened(uri: string): Promise<Workspace> {
  const workspace = openWorkspace({
    files: { read: async (file) => read(file) },
    folders: [examples.href],
    today,
  });
  await workspace.load(uri);
  return workspace;
}

function checkedWhole(workspace: Workspace, uri: string): Checked {
  for (const _step of workspace.complete(uri, 'push'));
  return workspace.check(uri);
}

/** Its `expect` lines named the faults. Now it is to be safe. */
const expectingSafe = (text: string): string =>
  text.replace(/^ *expect .*\n/gm, '').replace(/\}\s*$/, '\n  expect safe\n}\n');

function written(file: string, { steps }: SafetyPlan): string {
  const lines = steps.flatMap(({ title, problem, on, effect, unsafe: [before, after] }, i) => [
    `${i + 1}. ${words.message(title)} (${words.message(message('advice.rule-on', { rule: name(problem.code), on: on ?? name('the text') }))})`,
    ...(effect === undefined
      ? []
      : [
          `   - ${words.message(
            message('advice.effect', {
              label: effect.label,
              before: shown(effect.before),
              after: shown(effect.after),
            }),
          )}`,
        ]),
    `   - ${words.message(message('advice.unsafe', { before: count(before), after: count(after) }))}`,
  ]);
  return `# ${file}\n\n${lines.join('\n')}\n`;
}

describe('examples with faults', () => {
  it('are there', () => expect(faulty.length).toBeGreaterThan(3));

  it.each(faulty)('%s is made safe by the fixes that are offered', async (file) => {
    const uri = new URL(file, plans).href;
    const workspace = await opened(uri);
    const before = read(uri) ?? '';
    const found = inOneGo(makeSafe(workspace, uri));

    expect(found.left).toEqual([]);
    expect(workspace.bound(uri)?.text).toBe(before);
    const golden = new URL(`steps/${file.replace('.crib', '.md')}`, import.meta.url);
    if (update) writeFileSync(golden, written(file, found));
    expect(written(file, found)).toBe(readFileSync(golden, 'utf8'));

    // Read anew from its text alone, it holds what it then says of itself.
    for (const [target, text] of Object.entries(found.texts))
      workspace.put(target, target === uri ? expectingSafe(text) : text, 1);
    const after = checkedWhole(workspace, uri);
    expect(after.plans.map((p) => p.analysis.expectations.map((e) => e.held))).toEqual([[true]]);
    expect(after.problems.filter((p) => p.severity === 'danger' || p.finding?.couldNotRun === true)).toEqual(
      [],
    );
  });
});
