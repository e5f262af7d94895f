import {
  DefaultAstNodeLocator,
  DefaultJsonSerializer,
  DefaultNameProvider,
  type Grammar,
  type LangiumCoreServices,
} from 'langium';

/** A grammar from what the parser generator wrote. Langium's own function makes all services of an editor for it. */
export function loadGrammarFromJson(json: string): Grammar {
  const services = {
    shared: { workspace: { LangiumDocuments: undefined } },
    workspace: { AstNodeLocator: new DefaultAstNodeLocator() },
    references: { NameProvider: new DefaultNameProvider() },
    documentation: { CommentProvider: undefined },
  };
  // These are all that reading asks for; other documents and comments are asked for by writing alone.
  return new DefaultJsonSerializer(services as unknown as LangiumCoreServices).deserialize<Grammar>(json);
}
