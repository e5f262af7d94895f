import { type Message, term } from '@cribwright/messages';
import { type BlockSchema, property } from '../bound/block-schema.js';
import type { TextLabel } from '../bound/label-words.js';
import { list, optional, quantity, reference, sequence, symbol, text, word } from '../phrase/pattern.js';

const words = (key: string, label: TextLabel, doc: Message, example: string) =>
  property(key, text(label, label), { doc, example, repeatable: true });

export const siteProperties = {
  address: property('address', text('address', 'address'), {
    doc: term('doc.site--address'),
    example: 'address "400 Old Mill Road, Alder Ridge"',
  }),
  contact: words('contact', 'contact', term('doc.site--contact'), 'contact "yard office, 555-0142"'),
  surface: property('surface', sequence(reference('surface', 'surface'), optional(text('where', 'where'))), {
    doc: term('doc.site--surface'),
    example: 'surface gravel "north lot"',
    repeatable: true,
  }),
  access: words(
    'access',
    'access',
    term('doc.site--access'),
    'access "gate 2, 14 ft wide, code at dispatch"',
  ),
  hazard: words('hazard', 'hazard', term('doc.site--hazard'), 'hazard "overhead line along the east fence"'),
  fleet: property('fleet', list('types', reference('type', 'vehicle type')), {
    doc: term('doc.site--fleet'),
    example: 'fleet VanTrailer53, DayCabTractor',
    repeatable: true,
  }),
  plans: property('uses plan', reference('plan', 'plan'), {
    doc: term('doc.site--uses-plan'),
    example: 'uses plan TrailerOnCar',
    repeatable: true,
  }),
  responding: property('responding', list('caches', reference('cache', 'cache')), {
    doc: term('doc.site--responding'),
    example: 'responding Rescue12',
    repeatable: true,
  }),
};

export const site: BlockSchema = {
  keyword: 'site',
  within: ['file'],
  doc: term('doc.site'),
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
    doc: term('doc.dock--height'),
    example: 'height 48 in',
    required: true,
  }),
  doors: property('doors', text('doors', 'doors'), {
    doc: term('doc.dock--doors'),
    example: 'doors "1 to 12"',
  }),
  grade: property(
    'grade',
    sequence(
      quantity('grade', ['ratio', 'angle'], { percent: true }),
      optional(symbol(',')),
      optional(word('toward the dock')),
    ),
    {
      doc: term('doc.dock--grade'),
      example: 'grade 3 %',
    },
  ),
};

export const dock: BlockSchema = {
  keyword: 'dock',
  within: ['site'],
  doc: term('doc.dock'),
  example: 'dock East {\n  height 48 in\n  doors "1 to 12"\n}',
  head: { name: 'required', title: 'optional' },
  declares: 'dock',
  bodyOptional: false,
  properties: Object.values(dockProperties),
};

export const siteBlocks: readonly BlockSchema[] = [site, dock];
