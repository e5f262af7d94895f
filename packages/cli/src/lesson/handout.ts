import { drawScene, firstChoice, fontFamily, svgOf, viewsOf } from '@cribwright/drawing';
import { count, message, name, type Phrase, term, type Words } from '@cribwright/messages';
import type { Answer, Exercise, Lesson, PlanReply } from '@cribwright/workspace';
import { toShow } from '../files/plans-in.js';
import { formulaText, sourceText } from '../report/figure-text.js';
import type { Speech } from '../report/words.js';
import { escaped } from './escaped.js';

const style = `
@page{margin:12mm}
body{font:11pt/1.4 ${fontFamily};color:#000;max-width:186mm;margin:0 auto}
h1{font-size:18pt;margin:0 0 2mm}
h2{font-size:13pt;margin:6mm 0 1mm;border-bottom:.3mm solid #000;break-after:avoid}
.exercise{break-inside:avoid}
.blank{border-bottom:.2mm solid #000;height:8mm}
.hint{font-style:italic}
.key{break-inside:avoid;border-left:1mm solid #000;padding-left:3mm}
svg{display:block;width:100%;height:auto;max-height:88mm;break-inside:avoid;margin:0 0 3mm}
.paper[class]{fill:#fff}
.caution{break-inside:avoid;border:.6mm solid #000;padding:2mm;margin-top:6mm;font-weight:700}
`.trim();

/**
 * A lesson as a page to hand out, or, with its key, as the instructor's copy. Needs nothing from elsewhere.
 *
 * @param speech the language of headings, questions and keys; each exercise is in the units of its plan or in those
 * asked for. What the author of the lesson wrote stays as it is.
 * @param errors the text of the lesson has errors, so that a part may be missing: the page says so
 */
export function handout(lesson: Lesson, speech: Speech, withKey: boolean, errors = false): string {
  const { words } = speech;
  const say = (said: Phrase): string => escaped(words.message(said));
  const points = lesson.exercises.reduce((sum, e) => sum + (e.points ?? 0), 0);
  const title = withKey ? message('handout.key-title', { lesson: name(lesson.title) }) : name(lesson.title);
  return [
    '<!doctype html>',
    `<html lang="${words.locale}"><head><meta charset="utf-8"><title>${escaped(lesson.title)}</title>`,
    `<style>${style}</style></head><body>`,
    `<h1>${say(title)}</h1>`,
    errors || lesson.plans.some((p) => p.partial)
      ? `<p class="caution">${say(term('handout.not-whole'))}</p>`
      : '',
    lesson.about === undefined ? '' : `<p><strong>${escaped(lesson.about)}</strong></p>`,
    withKey ? '' : `<p>${say(message('handout.student', { points: count(points) }))}</p>`,
    ...lesson.paragraphs.map((p) => `<p>${escaped(p)}</p>`),
    ...lesson.plans.map((reply) => drawings(reply, speech.wordsFor(reply.plan))),
    ...lesson.exercises.map((e, i) => exercise(e, i + 1, withKey, speech)),
    `<p class="caution">${say(term('caution.text'))}</p>`,
    '</body></html>',
    '',
  ]
    .filter((line, i, all) => line !== '' || i === all.length - 1)
    .join('\n');
}

/** A student sees how it stands, not what the checks say of it: the drawing carries no findings. */
function drawings(reply: PlanReply, words: Words): string {
  const { plan, analysis } = toShow(reply);
  const bare = { ...analysis, findings: [], supports: analysis.supports.map(withoutAnswers) };
  const svgs = viewsOf(plan, bare)
    .filter((v) => v.id === 'side' || v.id === 'end')
    .map((v) => svgOf(drawScene(plan, bare, { ...firstChoice, view: v.id }, false, words)));
  return `<h2>${escaped(plan.title)}</h2>\n${svgs.join('')}`;
}

const withoutAnswers = (support: PlanReply['analysis']['supports'][number]) => ({
  ...support,
  figures: {},
  contacts: [],
  worst: undefined,
});

function exercise(
  { name: title, ask, hints, points, answer, plan }: Exercise,
  number: number,
  withKey: boolean,
  speech: Speech,
): string {
  const words = plan === undefined ? speech.words : speech.wordsOf({ reply: plan });
  const worth =
    points === undefined ? '' : ` (${words.message(message('handout.points', { points: count(points) }))})`;
  const body = withKey
    ? `<div class="key">${key(answer, words)}</div>`
    : `${hints.map((h) => `<p class="hint">${escaped(h)}</p>`).join('')}<div class="blank"></div><div class="blank"></div>`;
  return `<div class="exercise"><h2>${number}. ${escaped(words.message(title))}${worth}</h2><p>${escaped(words.message(ask))}</p>${body}</div>`;
}

function key(answer: Answer, words: Words): string {
  const say = (said: Phrase): string => escaped(words.message(said));
  switch (answer.kind) {
    case 'figure': {
      const { figure } = answer;
      return `<p><strong>${escaped(words.value(figure))}</strong></p><p>${escaped(formulaText(figure, words))}</p><p>${escaped(sourceText(figure, words))}</p>`;
    }
    case 'faults':
      return answer.findings
        .map((f) => `<p><strong>${escaped(f.rule)}</strong>: ${say(f.message)}</p>`)
        .join('');
    case 'finish':
      return `<p><strong>${say(answer.key)}</strong></p>`;
    case 'none':
      return `<p><strong>${say(message('handout.no-key', { why: answer.why }))}</strong></p>`;
  }
}
