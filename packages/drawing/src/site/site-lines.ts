import { list, type Message, message, name, type Phrase, quantity, term } from '@cribwright/messages';
import type { Dock, Site } from '@cribwright/model';

/** What the sheet says of the site that a plan is written for, line by line: nothing of what is not stated. */
export const siteLines = (site: Site): readonly Message[] => [
  ...(site.address === undefined ? [] : [message('site.address', { address: name(site.address) })]),
  ...lines(site.contacts, (contact) => message('site.contact', { contact })),
  ...lines(site.access, (access) => message('site.access', { access })),
  ...lines(site.hazards, (hazard) => message('site.hazard', { hazard })),
  ...site.docks.map(dockLine),
  ...together(
    site.surfaces.map((s) => (s.where === undefined ? s.name : `${s.name} (${s.where})`)),
    (surfaces) => message('site.surfaces', { surfaces }),
  ),
  ...together(site.fleet, (fleet) => message('site.fleet', { fleet })),
  ...together(site.responding, (units) => message('site.responding', { units })),
  ...together(site.otherPlans, (plans) => message('site.other-plans', { plans })),
];

const lines = (texts: readonly string[], line: (text: Phrase) => Message): readonly Message[] =>
  texts.map((text) => line(name(text)));

const together = (texts: readonly string[], line: (texts: Phrase) => Message): readonly Message[] =>
  texts.length === 0 ? [] : [line(list(texts.map(name), 'plain'))];

function dockLine(dock: Dock): Message {
  const doors = dock.doors === undefined ? [] : [message('site.doors', { doors: name(dock.doors) })];
  const grade =
    dock.grade === undefined ? [] : [message('site.apron', { grade: quantity('share', dock.grade, 'up') })];
  const height =
    dock.height === undefined
      ? term('site.height-not-stated')
      : message('site.height', { height: quantity('length', dock.height, 'nearest') });
  return message('site.dock', { dock: name(dock.name), facts: list([height, ...doors, ...grade], 'plain') });
}
