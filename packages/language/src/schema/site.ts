import { type BlockSchema, property } from '../bound/block-schema.js';
import type { TextLabel } from '../bound/label-words.js';
import { list, optional, quantity, reference, sequence, symbol, text, word } from '../phrase/pattern.js';

const words = (key: string, label: TextLabel, doc: string, example: string) =>
  property(key, text(label, label), { doc, example, repeatable: true });

export const siteProperties = {
  address: property('address', text('address', 'address'), {
    doc: 'Where it is.',
    example: 'address "400 Old Mill Road, Alder Ridge"',
  }),
  contact: words('contact', 'contact', 'Whom to call.', 'contact "yard office, 555-0142"'),
  surface: property('surface', sequence(reference('surface', 'surface'), optional(text('where', 'where'))), {
    doc: 'What the yard is paved with, and where.',
    example: 'surface gravel "north lot"',
    repeatable: true,
  }),
  access: words('access', 'access', 'How to get in.', 'access "gate 2, 14 ft wide, code at dispatch"'),
  hazard: words('hazard', 'hazard', 'What to mind there.', 'hazard "overhead line along the east fence"'),
  fleet: property('fleet', list('types', reference('type', 'vehicle type')), {
    doc: 'The kinds of vehicle that use the site.',
    example: 'fleet VanTrailer53, DayCabTractor',
    repeatable: true,
  }),
  plans: property('uses plan', reference('plan', 'plan'), {
    doc: 'A plan written elsewhere that holds for this site. Plans may also stand inside the site.',
    example: 'uses plan TrailerOnCar',
    repeatable: true,
  }),
  responding: property('responding', list('caches', reference('cache', 'cache')), {
    doc: 'The units that are sent there first.',
    example: 'responding Rescue12',
    repeatable: true,
  }),
};

export const site: BlockSchema = {
  keyword: 'site',
  within: ['file'],
  doc: 'A terminal or yard: its surfaces, docks, access and hazards, the vehicles that use it, and its plans.',
  example:
    'site NorthYard "Cedar Freight, north yard" {\n  address "400 Old Mill Road, Alder Ridge"\n  surface gravel\n}',
  head: { name: 'optional', title: 'optional' },
  declares: 'site',
  element: 'site',
  bodyOptional: false,
  properties: Object.values(siteProperties),
};

export const dockProperties = {
  height: property('height', quantity('height', 'length'), {
    doc: 'Height of the dock floor above the yard.',
    example: 'height 48 in',
    required: true,
  }),
  doors: property('doors', text('doors', 'doors'), { doc: 'Which doors.', example: 'doors "1 to 12"' }),
  grade: property(
    'grade',
    sequence(
      quantity('grade', ['ratio', 'angle'], { percent: true }),
      optional(symbol(',')),
      optional(word('toward the dock')),
    ),
    {
      doc: 'How the apron falls toward the dock.',
      example: 'grade 3 %',
    },
  ),
};

export const dock: BlockSchema = {
  keyword: 'dock',
  within: ['site'],
  doc: 'A loading dock.',
  example: 'dock East {\n  height 48 in\n  doors "1 to 12"\n}',
  head: { name: 'required', title: 'optional' },
  declares: 'dock',
  bodyOptional: false,
  properties: Object.values(dockProperties),
};

export const siteBlocks: readonly BlockSchema[] = [site, dock];
