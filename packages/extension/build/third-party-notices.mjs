import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import licenses from 'spdx-license-list/full.js';
import satisfies from 'spdx-satisfies';

/**
 * Licenses under which a package may go into a bundle, by SPDX identifier: each allows redistribution in a program
 * under the MIT License, if its notice goes with it. A package under any other license stops the packing.
 */
export const allowedLicenses = [
  '0BSD',
  'Apache-2.0',
  'BlueOak-1.0.0',
  'BSD-2-Clause',
  'BSD-3-Clause',
  'ISC',
  'MIT',
  'Zlib',
];

/** Files of a package that hold a license or a notice, at its top level. */
const noticeFile = /^(licen[cs]e|copying|copyright|copyrightnotice|notices?|thirdpartynotices?)([.-].*)?$/i;

/**
 * Licenses whose text names no holder: where a package leaves its copy out, the text of the SPDX list is the same one.
 * The text of all others holds a copyright line, and only the package itself can give that.
 */
const standardTexts = ['Apache-2.0'];
const standardText = (license) => licenses[license].licenseText;

/** Notices that a package keeps below its top level: it takes code from elsewhere under a second license. */
const furtherNotices = { pako: ['lib/zlib/README'] };

/**
 * The packages of the registry that are inside bundles, from esbuild's metafiles of them. What tree shaking took out
 * whole is not inside.
 *
 * @param {Readonly<Record<string, import('esbuild').Metafile>>} metafiles by name of the bundle
 * @returns {{ folder: string, bundles: string[] }[]} folders from the root, sorted, each with the bundles it is in
 */
export function bundledPackages(metafiles) {
  const bundlesOf = new Map();
  for (const [bundle, { outputs }] of Object.entries(metafiles)) {
    for (const { inputs } of Object.values(outputs)) {
      for (const [input, { bytesInOutput }] of Object.entries(inputs)) {
        const folder = /^(?:.*\/)?node_modules\/(?:@[^/]+\/)?[^/]+/.exec(input)?.[0];
        if (folder === undefined || bytesInOutput === 0) continue;
        bundlesOf.set(folder, (bundlesOf.get(folder) ?? new Set()).add(bundle));
      }
    }
  }
  return [...bundlesOf]
    .map(([folder, bundles]) => ({ folder, bundles: [...bundles].sort() }))
    .sort((a, b) => (a.folder < b.folder ? -1 : 1));
}

/**
 * What one package says of itself: name, version, license and the full text of its notices.
 *
 * @param {string} root the folder that `folder` is relative to
 * @param {string} folder
 * @throws where the license is missing or not allowed, or where its text is missing
 */
export function noticeOf(root, folder) {
  const path = join(root, folder);
  const { name, version, license } = JSON.parse(readFileSync(join(path, 'package.json'), 'utf8'));
  if (typeof name !== 'string' || typeof version !== 'string')
    throw new Error(`${folder}: package.json has no name or no version.`);
  if (typeof license !== 'string' || !isAllowed(license))
    throw new Error(
      `${name} ${version} has the license ${JSON.stringify(license ?? null)}. ` +
        `A bundle may hold packages under ${allowedLicenses.join(', ')}.`,
    );
  const further = furtherNotices[name] ?? [];
  const files = readdirSync(path).filter((file) => noticeFile.test(file));
  const texts = [...files.sort(), ...further]
    .map((file) => ({ file, text: plainText(readFileSync(join(path, file), 'utf8')) }))
    .filter(({ text }) => text !== '');
  if (texts.length === 0 && standardTexts.includes(license))
    texts.push({
      file: `LICENSE (text of ${license} from the SPDX license list)`,
      text: plainText(standardText(license)),
    });
  // A package under two licenses at once needs the text of both.
  const needed = license.split(/\bAND\b/).length;
  if (!texts.some(({ file }) => /^(licen[cs]e|copying)/i.test(file)) || texts.length < needed)
    throw new Error(`${name} ${version} (${license}): the full text of its license is missing in ${folder}.`);
  return { name, version, license, texts };
}

/** With line feeds alone, and without a byte order mark or empty lines at the ends. */
const plainText = (text) =>
  text
    .replace(/\r\n?/g, '\n')
    .replace(/^\uFEFF?\n*/, '')
    .trimEnd();

function isAllowed(license) {
  try {
    return satisfies(license, allowedLicenses);
  } catch {
    // Not an SPDX expression, such as "SEE LICENSE IN FILE".
    return false;
  }
}

/**
 * The page that goes into the package beside the bundles.
 *
 * @param {string} root
 * @param {Readonly<Record<string, import('esbuild').Metafile>>} metafiles
 */
export function thirdPartyNotices(root, metafiles) {
  const line = '='.repeat(80);
  const entries = bundledPackages(metafiles).map(({ folder, bundles }) => {
    const { name, version, license, texts } = noticeOf(root, folder);
    const head = `${name} ${version}\nLicense: ${license}\nIn: ${bundles.join(', ')}`;
    return [line, head, ...texts.map(({ file, text }) => `--- ${file}\n\n${text}`)].join('\n\n');
  });
  return `Third-party notices

Cribwright is under the MIT License, see LICENSE. Its programs contain the packages below, each under its own license.

${entries.join('\n\n')}
`;
}
