import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

/** The packages that other projects may install, each after those it stands on. */
export const libraries = [
  'units',
  'messages',
  'model',
  'engine',
  'rules',
  'syntax',
  'language',
  'workspace',
  'drawing',
] as const;

/** The worked example of a package: the program in its README, and what the README says that it prints. */
export interface Example {
  readonly name: string;
  readonly program: string;
  readonly prints: string;
}

const fences = /```ts\n(?<program>[\s\S]*?)```\n\nIt prints:\n\n```text\n(?<prints>[\s\S]*?)```/;

const readmeOf = (name: string): string =>
  fileURLToPath(new URL(`../../packages/${name}/README.md`, import.meta.url));

/** Reads the example out of a package's README. Throws where there is none. */
export function exampleOf(name: string): Example {
  const { program, prints } = fences.exec(readFileSync(readmeOf(name), 'utf8'))?.groups ?? {};
  if (program === undefined || prints === undefined)
    throw new Error(`packages/${name}/README.md has no program with what it prints`);
  return { name, program, prints };
}

/** Puts into the README what its example printed. */
export function acceptPrinted({ name, program }: Example, printed: string): void {
  const path = readmeOf(name);
  const example = `\`\`\`ts\n${program}\`\`\`\n\nIt prints:\n\n\`\`\`text\n${printed}\`\`\``;
  writeFileSync(
    path,
    readFileSync(path, 'utf8').replace(fences, () => example),
  );
}
