import type { BoundBlock, PropertySchema } from '@cribwright/language';
import { read } from '@cribwright/language/internal';

/** What the lines of a kind say, in a block. Lines that could not be read are left out: a problem tells of them. */
export const linesOf = <T>(block: BoundBlock, schema: PropertySchema<T>): readonly T[] =>
  block.properties.flatMap((line) =>
    line.schema === schema && line.match !== undefined ? [read(schema, line.match)] : [],
  );

export const lineOf = <T>(block: BoundBlock, schema: PropertySchema<T>): T | undefined =>
  linesOf(block, schema)[0];
