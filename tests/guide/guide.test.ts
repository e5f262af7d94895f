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
      'packages/drawing/src/pieces/elevation.ts',
      'packages/drawing/src/pieces/support-label.ts',
      'packages/drawing/src/views/top.ts',
      'packages/engine/src/element/element-message.ts',
      'packages/engine/src/results/support-results.ts',
      'packages/language/src/lowering/plan.ts',
      'packages/language/src/schema/accept.ts',
      'packages/language/src/schema/expect.ts',
      'packages/language/src/schema/lesson.ts',
      'packages/language/src/schema/steps.ts',
      'packages/model/src/plan/supports-of.ts',
    ]);
    expect(files.length).toBeLessThanOrEqual(20);
  });

  it('asks the lowering for a new property of a crib', () =>
    expect(filesOf(found.filter((line) => line.includes('color')))).toEqual([
      'packages/language/src/lowering/crib.ts',
    ]));
});
