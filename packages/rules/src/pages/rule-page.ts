import type { Locale } from '@cribwright/messages';
import { packedRulePages } from '../generated/packed-rule-pages.js';

/** The pages of every rule, by id and language. */
type RulePages = Readonly<Record<string, Readonly<Record<Locale, string>>>>;

let unpacked: Promise<RulePages> | undefined;

/**
 * The page of a rule in a reader's language, as Markdown. `undefined` where no rule has this id.
 * The pages ship compressed (zlib) and are decompressed once, when the first one is asked for.
 */
export async function rulePage(id: string, locale: Locale): Promise<string | undefined> {
  unpacked ??= unpack(packedRulePages);
  const pages = await unpacked;
  return Object.hasOwn(pages, id) ? pages[id]?.[locale] : undefined;
}

/** `DecompressionStream` is the one decompressor that Node and a browser worker both have. */
async function unpack(packed: string): Promise<RulePages> {
  const bytes = Uint8Array.from(atob(packed), (character) => character.charCodeAt(0));
  const text = new Blob([bytes]).stream().pipeThrough(new DecompressionStream('deflate'));
  return JSON.parse(await new Response(text).text());
}
