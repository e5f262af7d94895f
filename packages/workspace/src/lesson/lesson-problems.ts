import type { Analysis } from '@cribwright/engine';
import type { BoundBlock, BoundFile, LanguageProblem, PropertySchema } from '@cribwright/language';
import {
  exerciseProperties,
  figureKey,
  planOfExercise,
  problem,
  read,
  type Surroundings,
} from '@cribwright/language/internal';
import { count as countHole, name as nameHole } from '@cribwright/messages';

/** A plan's block with what the checks say of it. */
export interface Analyzed {
  readonly block: BoundBlock;
  readonly analysis: Analysis;
}

/** Exercises that have no key: the plan is not said, the figure is not there, there is no fault to find or to mend. */
export function lessonProblems(
  file: BoundFile,
  around: Surroundings,
  plans: readonly Analyzed[],
): readonly LanguageProblem[] {
  const lessons = file.blocks.filter((b) => b.schema.keyword === 'lesson');
  return lessons.flatMap((lesson) => {
    const exercises = lesson.blocks.filter((b) => b.schema.keyword === 'exercise');
    const count = lesson.blocks.filter((b) => b.schema.keyword === 'plan').length;
    return exercises.flatMap((exercise) => exerciseProblems(exercise, count, around, plans));
  });
}

function exerciseProblems(
  exercise: BoundBlock,
  count: number,
  around: Surroundings,
  plans: readonly Analyzed[],
): readonly LanguageProblem[] {
  const shape = around.shapeOf(exercise.uri);
  const about = shape && planOfExercise(exercise, shape, around);
  if (!about) {
    const said = exercise.properties.some((p) => p.schema === exerciseProperties.plan);
    return said ? [] : [problem('exercise-plan', exercise.headSpan, { count: countHole(count) })];
  }
  const analysis = plans.find((p) => p.block === about)?.analysis;
  if (!analysis) return [];
  return [
    ...figureProblems(exercise, analysis),
    ...faultProblems(exercise, analysis),
    ...finishProblems(exercise, analysis),
  ];
}

const lines = <T>(exercise: BoundBlock, schema: PropertySchema<T>) =>
  exercise.properties.flatMap((line) =>
    line.schema === schema && line.match ? [{ line, values: read(schema, line.match) }] : [],
  );

const support = (analysis: Analysis, name: string) => analysis.supports.find((s) => s.name === name);

function figureProblems(exercise: BoundBlock, analysis: Analysis): readonly LanguageProblem[] {
  return lines(exercise, exerciseProperties.workOut).flatMap(({ line, values }) => {
    const on = support(analysis, values.on.text);
    const there =
      on?.figures[figureKey(values.figure.text)] ?? (values.contact ? on?.contacts.length : undefined);
    if (!on || there) return [];
    return [
      problem('exercise-figure', line.span, { on: nameHole(on.name), figure: nameHole(values.figure.text) }),
    ];
  });
}

const faultsOn = (analysis: Analysis, name: string | undefined) =>
  analysis.findings.filter(
    (f) =>
      f.severity !== 'note' &&
      f.rule !== 'expectation-unmet' &&
      (name === undefined || f.subject.element.endsWith(`/${name}`)),
  );

function faultProblems(exercise: BoundBlock, analysis: Analysis): readonly LanguageProblem[] {
  return lines(exercise, exerciseProperties.find).flatMap(({ line, values }) =>
    faultsOn(analysis, values.on?.text).length > 0 ? [] : [problem('exercise-fault', line.span, {})],
  );
}

function finishProblems(exercise: BoundBlock, analysis: Analysis): readonly LanguageProblem[] {
  return lines(exercise, exerciseProperties.finish).flatMap(({ line, values }) =>
    values.leaveOut || faultsOn(analysis, values.on.text).length > 0
      ? []
      : [problem('exercise-finish', line.span, { on: nameHole(values.on.text) })],
  );
}
