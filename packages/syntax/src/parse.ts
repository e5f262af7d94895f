import {
  createDefaultCoreModule,
  createDefaultSharedCoreModule,
  EmptyFileSystem,
  inject,
  type LangiumCoreServices,
  type ParseResult,
} from 'langium';
import type { Document } from './generated/ast.js';
import { CribwrightGeneratedModule, CribwrightGeneratedSharedModule } from './generated/module.js';
import type { LayoutIssue } from './layout.js';
import { LayoutLexer, type LayoutReport } from './layout-lexer.js';
import { type SyntaxStatement, syntaxOf } from './syntax.js';

/** What this language adds to any set of Langium services, a server's or a bare one's. */
export const cribwrightModule = {
  parser: { Lexer: (services: LangiumCoreServices) => new LayoutLexer(services) },
};

export interface Parsed {
  readonly statements: readonly SyntaxStatement[];
  readonly issues: readonly LayoutIssue[];
}

/** Reads a text. Never fails: what cannot be read is a term of kind `other`, or a layout issue. */
export const parse = (text: string): Parsed => parsed(services().parser.LangiumParser.parse<Document>(text));

export function parsed({ value, lexerReport }: ParseResult<Document>): Parsed {
  const report = isLayoutReport(lexerReport) ? lexerReport : undefined;
  return counted({ statements: syntaxOf(value), issues: report?.issues ?? [] }, report?.tokens);
}

/** Beside the parse, because it says nothing of the text. */
const tokens = new WeakMap<Parsed, number>();

/** Of how many tokens a parse was made, at most: more than `longest` must be told. */
export const tokensAtMost = (of: Parsed): number => tokens.get(of) ?? Number.POSITIVE_INFINITY;

/** The parse itself, once it is known how many tokens it was made of at most. */
export function counted(of: Parsed, most: number | undefined): Parsed {
  if (most !== undefined) tokens.set(of, most);
  return of;
}

const isLayoutReport = (report: unknown): report is LayoutReport =>
  typeof report === 'object' && report !== null && 'issues' in report;

let bare: LangiumCoreServices | undefined;

/** Parser services without an editor, made once. */
const services = (): LangiumCoreServices => {
  if (bare) return bare;
  const shared = inject(createDefaultSharedCoreModule(EmptyFileSystem), CribwrightGeneratedSharedModule);
  bare = inject(createDefaultCoreModule({ shared }), CribwrightGeneratedModule, cribwrightModule);
  shared.ServiceRegistry.register(bare);
  return bare;
};
