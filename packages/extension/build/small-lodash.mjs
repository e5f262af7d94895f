// What the parser's lookahead takes of lodash-es, for arrays alone: with its shorthands for objects, paths and
// properties lodash is 19 kB of the server.
const functions = {
  filter: '(list, keep) => list.filter((one) => keep(one))',
  flatMap: '(list, make) => list.flatMap((one) => make(one))',
  flatten: '(list) => list.flat()',
  forEach: '(list, run) => { for (const one of list ?? []) run(one); return list; }',
  isEmpty: '(list) => (list?.length ?? 0) === 0',
  map: '(list, make) => (list ?? []).map((one) => make(one))',
  min: '(list) => (list.length === 0 ? undefined : list.reduce((least, one) => (one < least ? one : least)))',
  reduce: '(list, join, start) => list.reduce(join, start)',
  uniqBy: '(list, keyOf) => list.filter((one, i) => list.findIndex((o) => keyOf(o) === keyOf(one)) === i)',
};

/** @type {import('esbuild').Plugin} */
export const smallLodash = {
  name: 'small-lodash',
  setup(build) {
    build.onLoad({ filter: /[\\/]lodash-es[\\/]\w+\.js$/ }, ({ path }) => {
      const name = /(\w+)\.js$/.exec(path)?.[1] ?? '';
      if (!Object.hasOwn(functions, name))
        throw new Error(`${path} is new among what is bundled: give ${name} for arrays here.`);
      return { contents: `export default ${functions[name]};` };
    });
  },
};
