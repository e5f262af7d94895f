import { drawScene, firstChoice, fontFamily, svgOf } from '@cribwright/drawing';
import { count, message, term, type Words } from '@cribwright/messages';
import type { BlockChange, PlanChange } from '@cribwright/workspace';
import { toShow } from '../files/plans-in.js';
import { escaped } from '../lesson/escaped.js';
import type { Speech } from '../report/words.js';
import {
  blockName,
  blockNotes,
  figureWords,
  findingKind,
  limitWords,
  lineWords,
  listedFigures,
  severityOf,
  stockWords,
  summaryWords,
  titleOf,
  verdictWords,
} from './compare-words.js';
import { type CompareReport, isWorse, isWorseFinding } from './outcome.js';

const style = `
@page{margin:12mm}
body{font:11pt/1.45 ${fontFamily};color:#000;background:#fff;max-width:270mm;margin:0 auto;padding:4mm}
h1{font-size:17pt;margin:0 0 2mm}
h2{font-size:13pt;margin:7mm 0 1mm;border-bottom:.3mm solid #000;break-after:avoid}
h3{font-size:11pt;margin:4mm 0 1mm;break-after:avoid}
table{border-collapse:collapse;margin:1mm 0}
th,td{border:.2mm solid #595959;padding:.8mm 2mm;text-align:left;vertical-align:top}
td.number{text-align:right}
.worse{font-weight:700;border-left:1.2mm solid #a1001c;padding-left:2mm}
.path{color:#595959;font-size:9pt}
.drawings{display:flex;flex-wrap:wrap;gap:4mm}
figure{margin:0;flex:1 1 110mm;break-inside:avoid}
figcaption{font-weight:700}
svg{display:block;width:100%;height:auto}
.caution{break-inside:avoid;border:.6mm solid #000;padding:2mm;margin-top:6mm}
`.trim();

/** The comparison as one page that needs nothing from elsewhere, with both drawings of each plan side by side. */
export function comparePage(report: CompareReport, speech: Speech): string {
  const { words } = speech;
  const say = (id: Parameters<typeof term>[0]) => escaped(words.message(term(id)));
  const { blocks, plans } = report.comparison;
  const title = escaped(words.message(titleOf(report)));
  const lines = [
    '<!doctype html>',
    `<html lang="${words.locale}"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width"><title>${title}</title>`,
    `<style>${style}\n${plans.map(markStyle).join('\n')}</style></head><body><main>`,
    `<h1>${title}</h1>`,
    ...(report.unreadable.length === 0
      ? []
      : [
          `<p class="worse">${say('compare.not-all-compared')}</p><ul>`,
          ...report.unreadable.map(
            ({ path, why }) => `<li>${escaped(path)}: ${escaped(words.message(why))}</li>`,
          ),
          '</ul>',
        ]),
    `<p>${escaped(summaryWords(report).map(words.message).join(', '))}.</p>`,
    ...(blocks.length + plans.length === 0 ? [`<p>${say('compare.no-change')}</p>`] : []),
    ...plans.flatMap((plan, i) => planPart(plan, i, speech.wordsFor(plan))),
    ...(blocks.length === 0 ? [] : [`<h2>${say('compare.changes')}</h2>`, blockList(blocks, 0, words)]),
    `<p class="caution"><strong>${say('caution.heading')}</strong> ${say('caution.text')}</p>`,
    '</main></body></html>',
  ];
  return `${lines.join('\n')}\n`;
}

function planPart(plan: PlanChange, index: number, words: Words): readonly string[] {
  const say = (id: Parameters<typeof term>[0]) => escaped(words.message(term(id)));
  const { listed, more } = listedFigures(plan);
  return [
    `<h2>${escaped(plan.title)} <span class="path">${escaped(plan.path)}</span></h2>`,
    `<p${isWorse(plan) ? ' class="worse"' : ''}>${escaped(words.message(verdictWords(plan)))}</p>`,
    ...(plan.findings.length + plan.limits.length === 0
      ? []
      : [
          `<h3>${say('compare.findings')}</h3><ul>`,
          ...plan.findings.map(
            (f) =>
              `<li${isWorseFinding(f) ? ' class="worse"' : ''}>${escaped(words.message(findingKind(f)))} <strong>${escaped(words.message(severityOf(f)))}</strong> ${escaped(words.message(f.subject))}: ${escaped(words.message(f.message))} <span class="path">${escaped(f.rule)}</span></li>`,
          ),
          ...plan.limits.map((l) => {
            const { mark, text } = limitWords(l, words);
            return `<li${l.looser === true ? ' class="worse"' : ''}><strong>${escaped(mark)}</strong> ${escaped(text)}</li>`;
          }),
          '</ul>',
        ]),
    ...(listed.length === 0
      ? []
      : [
          `<h3>${say('compare.figures')}</h3><table><thead><tr><th>${say('compare.element')}</th><th>${say('compare.figure')}</th><th>${say('compare.before')} → ${say('compare.after')}</th><th>${say('compare.change')}</th></tr></thead><tbody>`,
          ...listed.map((f) => {
            const { values, by } = figureWords(f, words);
            return `<tr><td>${escaped(words.message(f.subject))}</td><td>${escaped(words.message(f.label))}</td><td>${escaped(values)}</td><td class="number">${escaped(by)}</td></tr>`;
          }),
          '</tbody></table>',
          ...(more > 0
            ? [`<p>${escaped(words.message(message('compare.more-figures', { count: count(more) })))}</p>`]
            : []),
        ]),
    ...(plan.stock.length === 0
      ? []
      : [
          `<h3>${say('compare.stock')}</h3><ul>`,
          ...plan.stock.map((s) => `<li>${escaped(stockWords(s).map(words.message).join('; '))}</li>`),
          '</ul>',
        ]),
    `<h3>${say('compare.drawing')}</h3><div class="drawings">`,
    ...(['before', 'after'] as const).map((side) =>
      drawing(plan, side, index, words, say(`compare.${side}`)),
    ),
    '</div>',
  ];
}

/** The drawing of one version from above. A version that has no such plan has none. */
function drawing(
  plan: PlanChange,
  side: 'before' | 'after',
  index: number,
  words: Words,
  caption: string,
): string {
  const reply = plan.replies[side];
  if (reply === undefined) return '';
  const { plan: drawn, analysis } = toShow(reply);
  const prefix = markClass(index, side);
  // Several drawings stand on one page: the ids of each are made its own.
  const svg = svgOf(drawScene(drawn, analysis, firstChoice, false, words))
    .replace(/(id|aria-labelledby|aria-describedby)="/g, `$1="${prefix}-`)
    .replaceAll('url(#', `url(#${prefix}-`);
  return `<figure class="${prefix}"><figcaption>${caption}</figcaption>${svg}</figure>`;
}

const markClass = (index: number, side: 'before' | 'after'): string => `plan-${index}-${side}`;

/** Frames what changed. A frame is seen in black and white too. */
const markStyle = (plan: PlanChange, index: number): string =>
  (['before', 'after'] as const)
    .flatMap((side) =>
      plan.marked[side].map(
        (id) =>
          `.${markClass(index, side)} [data-key="${cssText(id)}"]{outline:.5mm dashed #a1001c;outline-offset:.8mm}`,
      ),
    )
    .join('\n');

/** Text inside a string of a style sheet in a page: no sign may end the one or the other. */
const cssText = (text: string): string =>
  text.replace(/[^\p{L}\p{N} /_-]/gu, (c) => `\\${(c.codePointAt(0) ?? 0).toString(16)} `);

function blockList(blocks: readonly BlockChange[], depth: number, words: Words): string {
  const items = blocks.map((block) => {
    const notes = blockNotes(block).map(words.message).join(', ');
    const { path, line } = block.after ?? block.before ?? { path: '', line: 1 };
    const where =
      depth === 0 && path !== '' ? ` <span class="path">${escaped(`${path}:${line}`)}</span>` : '';
    const inner =
      block.kind !== 'changed'
        ? ''
        : [
            ...(block.lines.length === 0
              ? []
              : ['<ul>', ...block.lines.map((l) => `<li>${escaped(lineWords(l, words))}</li>`), '</ul>']),
            ...(block.blocks.length === 0 ? [] : [blockList(block.blocks, depth + 1, words)]),
          ].join('');
    return `<li><strong>${escaped(blockName(block))}</strong> ${escaped(notes)}${where}${inner}</li>`;
  });
  return `<ul>${items.join('')}</ul>`;
}
