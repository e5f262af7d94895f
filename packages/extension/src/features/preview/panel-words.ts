import { message, name, type TermId, term, type Words } from '@cribwright/messages';
import type { PanelTerm, PanelWords } from '@cribwright/preview';

/** Terms of the catalog `panel`, by the name under which the page knows them. */
const terms: Readonly<Record<PanelTerm, TermId>> = {
  waiting: 'panel.waiting',
  views: 'panel.views',
  plan: 'panel.plan',
  whatIf: 'panel.what-if',
  nothingLost: 'panel.nothing-lost',
  stages: 'panel.stages',
  stage: 'panel.stage',
  stageBefore: 'panel.stage-before',
  stageNext: 'panel.stage-next',
  finished: 'panel.finished',
  play: 'panel.play',
  stop: 'panel.stop',
  choose: 'panel.choose',
  crib: 'panel.crib',
  strut: 'panel.strut',
  zoom: 'panel.zoom',
  zoomIn: 'panel.zoom-in',
  zoomOut: 'panel.zoom-out',
  fit: 'panel.fit',
  fitAll: 'panel.fit-all',
  rotate: 'panel.rotate',
  rotateTools: 'panel.rotate-tools',
  noPerspective: 'panel.no-perspective',
  fromCorner: 'panel.from-corner',
  fromAbove: 'panel.from-above',
  fromSide: 'panel.from-side',
  fromBehind: 'panel.from-behind',
  threeD: 'panel.three-d',
  more: 'panel.more',
  keyTab: 'panel.key-tab',
  keyTabDoes: 'panel.key-tab-does',
  keyPage: 'panel.key-page',
  keyPageDoes: 'panel.key-page-does',
  keyEnter: 'panel.key-enter',
  keyEnterDoes: 'panel.key-enter-does',
  keyAlt: 'panel.key-alt',
  keyAltDoes: 'panel.key-alt-does',
  keyStage: 'panel.key-stage',
  keyStageDoes: 'panel.key-stage-does',
  keyZoom: 'panel.key-zoom',
  keyZoomDoes: 'panel.key-zoom-does',
  keyDrag: 'panel.key-drag',
  keyDragDoes: 'panel.key-drag-does',
  keyEscape: 'panel.key-escape',
  keyEscapeDoes: 'panel.key-escape-does',
  exportTools: 'panel.export',
  copy: 'panel.copy',
  copyPicture: 'panel.copy-picture',
  copied: 'panel.copied',
  closeNotice: 'panel.close-notice',
  inWords: 'panel.in-words',
  notChecked: 'panel.not-checked',
  pushPending: 'panel.push-pending',
  nothingFound: 'panel.nothing-found',
  caution: 'caution.text',
};

/** What stays in braces: the page puts the words in with `filled`. */
const hole = (key: string) => name(`{${key}}`);

/**
 * The words of the panel in one language. The host makes them: the page is loaded without the catalogs, and a change
 * of language needs no new page.
 */
export const panelWords = (words: Words): PanelWords => ({
  ...(Object.fromEntries(
    Object.entries(terms).map(([key, id]) => [key, words.message(term(id))]),
  ) as Readonly<Record<PanelTerm, string>>),
  stageOf: words.message(
    message('panel.stage-of', { number: hole('number'), total: hole('total'), title: hole('title') }),
  ),
  either: words.message(message('panel.either', { first: hole('first'), second: hole('second') })),
  threeDFailed: words.message(message('panel.three-d-failed', { reason: hole('reason') })),
  saveAs: words.message(message('panel.save-as', { format: hole('format') })),
  noClipboard: words.message(message('panel.no-clipboard', { reason: hole('reason') })),
  noPicture: words.message(message('panel.no-picture', { reason: hole('reason') })),
});
