import { EmptyFileSystem, inject, type LangiumCoreServices } from 'langium';
import { createDefaultModule, createDefaultSharedModule, startLanguageServer } from 'langium/lsp';
import { createConnection, ProposedFeatures } from 'vscode-languageserver/node';
import {
  CribwrightGeneratedModule,
  CribwrightGeneratedSharedModule,
} from '../../packages/syntax/src/generated/module.js';
import { LayoutLexer } from '../../packages/syntax/src/layout-lexer.js';

// What Langium makes of the grammar alone: a server that reads the text and knows nothing of plans. The measure for
// how long an edit may take.
const connection = createConnection(ProposedFeatures.all);
const shared = inject(
  createDefaultSharedModule({ connection, ...EmptyFileSystem }),
  CribwrightGeneratedSharedModule,
);
const services = inject(createDefaultModule({ shared }), CribwrightGeneratedModule, {
  parser: { Lexer: (core: LangiumCoreServices) => new LayoutLexer(core) },
});
shared.ServiceRegistry.register(services);
startLanguageServer(shared);
