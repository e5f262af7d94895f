import {
  createLangiumParser,
  DefaultLexerErrorMessageProvider,
  DefaultTokenBuilder,
  DefaultValueConverter,
  type LangiumCoreServices,
  type LangiumParser,
  LangiumParserErrorMessageProvider,
  type ParseResult,
} from 'langium';
import { CribwrightAstReflection, type Document } from './generated/ast.js';
import { CribwrightGrammar } from './generated/grammar.js';
import { CribwrightLanguageMetaData } from './generated/module.js';
import type { LayoutIssue } from './layout.js';
import { LayoutLexer, type LayoutReport } from './layout-lexer.js';
import { type SyntaxStatement, syntaxOf } from './syntax.js';

export interface Parsed {
  readonly statements: readonly SyntaxStatement[];
  readonly issues: readonly LayoutIssue[];
}

/** Reads a text. Never fails: what cannot be read is a term of kind `other`, or a layout issue. */
export const parse = (text: string): Parsed => parsed(parser().parse<Document>(text));

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

let made: LangiumParser | undefined;

/** Langium's parser, made once, with what it needs and no more: all services of an editor are a tenth of the server. */
function parser(): LangiumParser {
  if (made) return made;
  const services = {
    Grammar: CribwrightGrammar(),
    LanguageMetaData: CribwrightLanguageMetaData,
    shared: { AstReflection: new CribwrightAstReflection(), profilers: {} },
    // No line of the grammar refers to another by name.
    references: { Linker: undefined },
    parser: {
      TokenBuilder: new DefaultTokenBuilder(),
      ValueConverter: new DefaultValueConverter(),
      LexerErrorMessageProvider: new DefaultLexerErrorMessageProvider(),
      ParserErrorMessageProvider: new LangiumParserErrorMessageProvider(),
      ParserConfig: {},
    },
  };
  const lexer = new LayoutLexer(services as unknown as LangiumCoreServices);
  const whole = { ...services, parser: { ...services.parser, Lexer: lexer } };
  made = createLangiumParser(whole as unknown as LangiumCoreServices);
  return made;
}
