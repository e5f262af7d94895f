import type { Dock, Site } from '@cribwright/model';
import type { BoundBlock } from '../bound/bound-file.js';
import { dockProperties, siteProperties } from '../schema/site.js';
import { outermost as at0 } from './expansion.js';
import type { Lowering } from './lowering.js';

/**
 * The site that a plan is written for: the block that it stands in, else a site of its file that names it.
 *
 * @param blocks the blocks at the top of the plan's file
 */
export function siteOf(w: Lowering, plan: BoundBlock, blocks: readonly BoundBlock[]): Site | undefined {
  const sites = blocks.filter((b) => b.schema.keyword === 'site');
  const block =
    plan.parent?.schema.keyword === 'site' ? plan.parent : sites.find((s) => namedPlans(w, s).includes(plan));
  if (block === undefined) return undefined;
  const p = siteProperties;
  const id = `site/${block.name ?? ''}`;
  w.placeBlock(id, block);
  const address = w.propertyOf(block, p.address)?.values.address.text;
  const own = block.blocks.filter((b) => b.schema.keyword === 'plan');
  return {
    name: block.title ?? block.name ?? '',
    ...(address === undefined ? {} : { address }),
    contacts: w.propertiesOf(block, p.contact).map(({ values }) => values.contact.text),
    access: w.propertiesOf(block, p.access).map(({ values }) => values.access.text),
    hazards: w.propertiesOf(block, p.hazard).map(({ values }) => values.hazard.text),
    surfaces: w.propertiesOf(block, p.surface).map(({ values }) => ({
      name: values.surface.text,
      ...(values.where === undefined ? {} : { where: values.where.text }),
    })),
    fleet: w
      .propertiesOf(block, p.fleet)
      .flatMap(({ values }) => values.types.map((t) => titleOf(w, t.type))),
    responding: w
      .propertiesOf(block, p.responding)
      .flatMap(({ values }) => values.caches.map((c) => titleOf(w, c.cache))),
    otherPlans: [...own, ...namedPlans(w, block)]
      .filter((b) => b !== plan)
      .map((b) => b.title ?? b.name ?? ''),
    docks: block.blocks.filter((b) => b.schema.keyword === 'dock').map((b) => dockOf(w, id, b)),
    ref: { element: id },
  };
}

type NameUsed = NonNullable<Parameters<Lowering['resolve']>[0]>;

const titleOf = (w: Lowering, used: NameUsed): string => {
  const block = w.resolve(used, at0)?.target.block;
  return block?.title ?? used.text;
};

const namedPlans = (w: Lowering, site: BoundBlock): readonly BoundBlock[] =>
  w
    .propertiesOf(site, siteProperties.plans)
    .flatMap(({ values }) => w.resolve(values.plan, at0)?.target.block ?? []);

function dockOf(w: Lowering, site: string, block: BoundBlock): Dock {
  const p = dockProperties;
  const id = `${site}/dock ${block.name ?? ''}`;
  w.placeBlock(id, block);
  const doors = w.propertyOf(block, p.doors)?.values.doors.text;
  const grade = w.slope(w.propertyOf(block, p.grade)?.values.grade, at0, block.uri);
  return {
    name: block.title ?? block.name ?? '',
    height: w.number(w.propertyOf(block, p.height)?.values.height, at0, block.uri, 'length'),
    ...(doors === undefined ? {} : { doors }),
    ...(grade === undefined ? {} : { grade }),
    ref: { element: id },
  };
}
