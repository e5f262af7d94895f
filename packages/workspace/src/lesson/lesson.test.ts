import { english, value } from '@cribwright/messages/testing';
import { expect, it } from 'vitest';
import { openWorkspace } from '../workspace/open-workspace.js';
import { lessonsIn } from './lesson.js';

const uri = 'file:///class/lesson.crib';

const plan = `
  plan Stand "Stand" {
    ground { surface concrete }
    vehicle trailer : VanTrailer53 { cargo 20,000 lb from 6 ft to 44 ft height 70 in }
    crib B {
      timber Fir4x4 24 in long
      layout 2 by 2
      courses 11
      at 20 ft 6 in, passenger side 3 ft 6.75 in
      captures rail
    }
  }`;

async function lessonWith(exercise: string) {
  const workspace = openWorkspace({ files: { read: async () => undefined }, folders: ['file:///class'] });
  workspace.put(
    uri,
    `use "library/vehicles.crib"\nlesson "Height" {\n  read "One."\n  read "Two."${plan}\n  exercise Ask {\n${exercise}\n  }\n}\n`,
    1,
  );
  await workspace.load(uri);
  const file = workspace.bound(uri);
  const [lesson] = file === undefined ? [] : lessonsIn(file, workspace.check(uri).plans);
  const exercises = lesson?.exercises ?? [];
  return { lesson, first: exercises[0], answer: exercises[0]?.answer };
}

it('works a figure out of the plan', async () => {
  const { lesson, first, answer } = await lessonWith('work out height limit of B\nhint "Count."\npoints 2');
  expect(lesson).toMatchObject({ title: 'Height', paragraphs: ['One.', 'Two.'] });
  expect(first).toMatchObject({ hints: ['Count.'], points: 2 });
  expect(english(first?.ask)).toBe('Calculate the height limit of crib B.');
  expect(answer?.kind === 'figure' && value(answer.figure)).toBe('24 in');
});

it('takes what the checks find for the key of a fault', async () => {
  const { answer } = await lessonWith('ask "Which?"\nfind fault on B');
  expect(answer?.kind === 'faults' && answer.findings.map((f) => f.rule)).toContain('crib-height');
});

it('takes the fix that the checks work out for the key of what is to be finished', async () => {
  const { answer } = await lessonWith('finish B leave out "courses"');
  expect(answer).toMatchObject({ kind: 'finish', subject: 'B', leaveOut: 'courses' });
  expect(answer?.kind === 'finish' && english(answer.key)).toBe('Use 6 courses');
});

it('takes the line as written where it holds', async () => {
  const { answer } = await lessonWith('finish B leave out "layout"');
  expect(answer?.kind === 'finish' && english(answer.key)).toBe('layout 2 by 2');
});

it('says why there is no key, and never leaves one blank', async () => {
  expect((await lessonWith('ask "What?"')).answer).toMatchObject({ kind: 'none' });
  const { answer } = await lessonWith('work out pressure of B contact 3');
  expect(answer?.kind === 'none' && english(answer.why)).toBe(
    'There is no pressure on the ground to calculate for crib B.',
  );
});
