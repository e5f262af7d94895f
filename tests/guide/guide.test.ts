import { beforeAll, describe, expect, it } from 'vitest';
import { complaints, filesOf } from './changed-program.js';

const put = (before: string, after: string) => (text: string) => text.replace(before, after);
const jack =
  "interface Jack { readonly kind: 'jack'; readonly id: ElementId; readonly name: string; readonly ref: Ref }";

describe('what the compiler asks for', () => {
  let found: readonly string[] = [];

  // One program for both changes: each asks for its own.
  beforeAll(() => {
    const kind = put('export type Support = Crib |', `export ${jack}\nexport type Support = Jack | Crib |`);
    const property = put(
      '  readonly slidIn: boolean;',
      '  readonly slidIn: boolean;\n  readonly color: string;',
    );
    found = complaints({ 'packages/model/src/plan/support.ts': (text) => kind(property(text)) });
  });

  it('names the files that a new kind of support needs, and they are at most 20', () => {
    const files = filesOf(found.filter((line) => !line.includes('color')));
    expect(files).toEqual([
      'packages/drawing/src/space/thing-kinds.ts',
      'packages/drawing/src/space/things.ts',
      'packages/engine/src/element/element-message.ts',
      'packages/engine/src/ground/ground-working.ts',
      'packages/engine/src/loss/losses.ts',
      'packages/engine/src/materials/needs.ts',
      'packages/engine/src/push/push-contacts.ts',
      'packages/engine/src/results/support-results.ts',
      'packages/engine/src/supports/placed-supports.ts',
      'packages/language/src/binding/visible.ts',
      'packages/language/src/kind/support-kinds.ts',
      'packages/language/src/lowering/plan.ts',
      'packages/model/src/placed/place.ts',
      'packages/model/src/plan/supports-of.ts',
      'packages/rules/src/crib-clash/rule.ts',
      'packages/rules/src/egress-blocked/rule.ts',
    ]);
    expect(files.length).toBeLessThanOrEqual(20);
  });

  it('asks the lowering for a new property of a crib', () =>
    expect(filesOf(found.filter((line) => line.includes('color')))).toEqual([
      'packages/language/src/lowering/crib.ts',
    ]));
});
