import { allowedIn, type BlockSchema, type PropertySchema, schema } from '@cribwright/language';
import { findUnit } from '@cribwright/units';

/** A line of the schema, written where it belongs. */
export interface Place {
  /** `crib.overhang` */
  readonly name: string;
  /** What stands around the line: the blocks that it is in, with `@` for the line. */
  readonly around: string;
  /** The line as the schema shows it. */
  readonly line: string;
}

/** Every line that may be said right in a plan, or at the top of a file, and in every block that may stand there. */
export function placesIn(home: 'file' | 'plan'): readonly Place[] {
  const right = home === 'file' ? 'file' : schema.find((b) => b.keyword === 'plan');
  const alone = right === undefined ? [] : linesIn(right);
  const inBlocks = schema.flatMap((block) => {
    const chain = chainTo(block, home);
    if (chain === undefined) return [];
    return linesIn(block).map((property) => ({
      name: `${[...chain, block].map((b) => b.keyword).join(' / ')}: ${property.key}`,
      around: [...chain].reverse().reduce((inner, outer) => within(outer, inner), bodyWith(block, property)),
      line: property.example,
    }));
  });
  return [...alone.map((p) => ({ name: `${home}: ${p.key}`, around: '@', line: p.example })), ...inBlocks];
}

const linesIn = (block: BlockSchema | 'file'): readonly PropertySchema[] => {
  const { properties, numbered } = allowedIn(block);
  return [...properties.values(), ...(numbered === undefined ? [] : [numbered])];
};

/** The blocks from the home down to a block; `undefined` where it cannot stand there without a plan in between. */
function chainTo(block: BlockSchema, home: 'file' | 'plan'): readonly BlockSchema[] | undefined {
  if (block.keyword === 'plan') return undefined;
  const paths: { readonly at: BlockSchema; readonly chain: readonly BlockSchema[] }[] = [
    { at: block, chain: [] },
  ];
  const seen = new Set<string>();
  for (const { at, chain } of paths) {
    if (at.within.includes(home)) return chain;
    for (const outer of schema) {
      if (outer.keyword === 'plan' || seen.has(outer.keyword) || !at.within.includes(outer.keyword)) continue;
      seen.add(outer.keyword);
      paths.push({ at: outer, chain: [outer, ...chain] });
    }
  }
  return undefined;
}

/** A block as the schema shows it, with `@` in place of the property, or after its own lines. */
function bodyWith(block: BlockSchema, property: PropertySchema): string {
  const lines = linesOf(block);
  const at = lines.findIndex((l) => l.startsWith(`${property.key} `) || l === property.key);
  const body = at < 0 ? [...lines, '@'] : lines.map((l, i) => (i === at ? '@' : l));
  return `${headOf(block)} {\n${body.join('\n')}\n}`;
}

const within = (outer: BlockSchema, inner: string): string =>
  `${headOf(outer)} {\n${[...linesOf(outer), inner].join('\n')}\n}`;

const headOf = ({ example }: BlockSchema): string => (example.split('{')[0] ?? '').trim();

/** The lines of a block's example that stand right in it, blocks inside left out. */
function linesOf({ example }: BlockSchema): readonly string[] {
  const open = example.indexOf('{');
  if (open < 0) return [];
  const lines: string[] = [];
  let depth = 0;
  for (const line of example.slice(open + 1, example.lastIndexOf('}')).split('\n')) {
    if (depth === 0 && line.trim() !== '' && !line.includes('{')) lines.push(line.trim());
    depth += line.split('{').length - line.split('}').length;
  }
  return lines;
}

/** The slips of one line: its key misspelled, each number and each unit malformed, signs that mean nothing. */
export function slipsOf(line: string): readonly string[] {
  // What stands in quotes may be anything.
  const plain = line.replace(/"[^"]*"/g, (quoted) => '_'.repeat(quoted.length));
  const numbers = [...plain.matchAll(/(?<![\w.-])\d[\d,]*(?:\.\d+)?(?![\w-])/g)];
  const units = [...plain.matchAll(/(?<=\d )[a-z]+\d?\b/g)].filter(([unit]) => findUnit(unit) !== undefined);
  return [
    line.replace(/^[a-z]+/i, (key) => `${key}zq`),
    ...numbers.map((m) => splice(line, m.index, m[0].length, `${m[0].replace(/,$/, '')},0000`)),
    ...units.map((m) => splice(line, m.index, m[0].length, `${m[0]}zq`)),
    `${line} = =`,
  ].filter((slip) => slip !== line);
}

const splice = (text: string, at: number, length: number, by: string): string =>
  text.slice(0, at) + by + text.slice(at + length);
