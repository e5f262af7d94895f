import { existsSync, readdirSync } from 'node:fs';
import { join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** Packages with a public entry. */
export const packages: readonly string[] = readdirSync(join(root, 'packages')).filter((name) =>
  existsSync(entryOf(name)),
);

function entryOf(name: string): string {
  return join(root, 'packages', name, 'src/index.ts');
}

const options: ts.CompilerOptions = {
  target: ts.ScriptTarget.ES2023,
  module: ts.ModuleKind.NodeNext,
  moduleResolution: ts.ModuleResolutionKind.NodeNext,
  customConditions: ['source'],
  jsx: ts.JsxEmit.ReactJSX,
  jsxImportSource: 'preact',
  strict: true,
  exactOptionalPropertyTypes: true,
  noEmit: true,
  skipLibCheck: true,
  types: [],
};

/** What the public entries of packages lack, one line for each: `engine: Build states no unit of timbers (…)`. */
export function lacking(names: readonly string[]): readonly string[] {
  const program = ts.createProgram(names.map(entryOf), options);
  return names.flatMap((name) => lackingIn(program, entryOf(name)).map((fault) => `${name}: ${fault}`));
}

/** The same of a module that is only a text. */
export function lackingInText(text: string): readonly string[] {
  const path = join(root, 'packages/text.ts');
  const host = ts.createCompilerHost(options);
  const { readFile, fileExists } = host;
  host.readFile = (file) => (file === path ? text : readFile(file));
  host.fileExists = (file) => file === path || fileExists(file);
  return lackingIn(ts.createProgram([path], options, host), path);
}

function lackingIn(program: ts.Program, path: string): readonly string[] {
  const checker = program.getTypeChecker();
  const file = program.getSourceFile(path);
  const module = file && checker.getSymbolAtLocation(file);
  if (module === undefined) throw new Error(`${path} exports nothing`);
  const api = new Api(checker);
  return checker
    .getExportsOfModule(module)
    .flatMap((exported) => api.faults(exported).map((fault) => `${exported.name} ${fault}`));
}

/** A unit of a number, or words that say that it has none. */
const unit =
  /(?<![\w/])(?:m|mm|lb|ft|m²|m³|m⁴|N|N·m|N\/m|kN|Pa|kg|kg\/m³|rad|s|ms|pt|ISO|SI|px|em|bytes?)(?![\w/])|\bmeters?\b|\bunits?\b|\bnewtons?\b|\bpascals?\b|\bradians?\b|\bmillimeters?\b|\bpoints\b|\bseconds\b|\bcounts?\b|\bcounted\b|\bnumber of\b|\bhow many\b|\bshare\b|\bratio\b|\bpercent\b|\boffset\b|\bfrom (?:0|1)\b|\brise over run\b/i;

/** Who says what it throws. */
const throwing = /\bthrows?\b/i;

class Api {
  constructor(private readonly checker: ts.TypeChecker) {}

  faults(exported: ts.Symbol): readonly string[] {
    const symbol = exported.flags & ts.SymbolFlags.Alias ? this.checker.getAliasedSymbol(exported) : exported;
    const declaration = symbol.declarations?.[0];
    if (declaration !== undefined && ts.isSourceFile(declaration))
      return this.faultsOfModule(exported, symbol);
    if (declaration === undefined || !declaration.getSourceFile().fileName.startsWith(join(root, 'packages')))
      return [];
    const at = `(${this.placeOf(declaration)})`;
    const doc = this.docOf(symbol);
    if (doc === '') return [`has no docstring ${at}`];
    const callable = callableOf(declaration);
    if (callable === undefined) {
      const named = ts.isVariableDeclaration(declaration) ? [] : this.fieldsWithoutUnit(declaration);
      const alone = ts.isVariableDeclaration(declaration) && this.isNumber(declaration) ? ['its value'] : [];
      return unit.test(doc) ? [] : [...named, ...alone].map((field) => `states no unit of ${field} ${at}`);
    }
    const numbers = [
      ...callable.parameters.filter((p) => this.isNumber(p)).map((p) => p.name.getText()),
      ...(this.returnsNumber(callable) ? ['its result'] : []),
    ];
    return [
      ...(numbers.length > 0 && !unit.test(doc) ? [`states no unit of ${numbers.join(', ')} ${at}`] : []),
      ...(throws(callable) && !throwing.test(doc) ? [`does not state what it throws ${at}`] : []),
    ];
  }

  /** `export * as statics`: the line needs a docstring, and so does all that it gives. */
  private faultsOfModule(exported: ts.Symbol, module: ts.Symbol): readonly string[] {
    const line = exported.declarations?.[0]?.parent;
    const said = line !== undefined && ts.getJSDocCommentsAndTags(line).length > 0;
    return [
      ...(said ? [] : ['has no docstring']),
      ...this.checker
        .getExportsOfModule(module)
        .flatMap((inner) => this.faults(inner).map((fault) => `${inner.name} ${fault}`)),
    ];
  }

  private placeOf(node: ts.Node): string {
    const file = node.getSourceFile();
    const { line } = file.getLineAndCharacterOfPosition(node.getStart());
    return `${relative(root, file.fileName).replaceAll('\\', '/')}:${line + 1}`;
  }

  /** All that is said of a symbol, with its parameters and its tags. */
  private docOf(symbol: ts.Symbol): string {
    const tags = symbol.getJsDocTags(this.checker);
    return [
      ts.displayPartsToString(symbol.getDocumentationComment(this.checker)),
      ...tags.map((tag) => `@${tag.name} ${ts.displayPartsToString(tag.text)}`),
    ]
      .join('\n')
      .trim();
  }

  /** Fields with a number in them, of which neither the field nor anything around it names a unit. */
  private fieldsWithoutUnit(declaration: ts.Node): readonly string[] {
    const found: string[] = [];
    const visit = (node: ts.Node, covered: boolean): void => {
      if (!ts.isPropertySignature(node)) {
        ts.forEachChild(node, (child) => visit(child, covered));
        return;
      }
      const symbol = this.checker.getSymbolAtLocation(node.name);
      const own = covered || (symbol !== undefined && unit.test(this.docOf(symbol)));
      if (!own && node.type !== undefined && holdsNumber(node.type)) found.push(node.name.getText());
      if (node.type !== undefined) visit(node.type, own);
    };
    ts.forEachChild(declaration, (child) => visit(child, false));
    return found;
  }

  private isNumber(node: ts.Node): boolean {
    return (this.checker.getTypeAtLocation(node).flags & ts.TypeFlags.NumberLike) !== 0;
  }

  private returnsNumber(callable: ts.SignatureDeclaration): boolean {
    const signature = this.checker.getSignatureFromDeclaration(callable);
    const type = signature && this.checker.getReturnTypeOfSignature(signature);
    if (type === undefined) return false;
    return (type.isUnion() ? type.types : [type]).some((t) => (t.flags & ts.TypeFlags.NumberLike) !== 0);
  }
}

/** `number`, `number | undefined`, `readonly number[]`: a number that is said right here. */
function holdsNumber(type: ts.TypeNode): boolean {
  if (type.kind === ts.SyntaxKind.NumberKeyword) return true;
  if (ts.isUnionTypeNode(type)) return type.types.some(holdsNumber);
  if (ts.isArrayTypeNode(type)) return holdsNumber(type.elementType);
  if (ts.isTypeOperatorNode(type)) return holdsNumber(type.type);
  if (ts.isTupleTypeNode(type))
    return type.elements.some((e) => holdsNumber(ts.isNamedTupleMember(e) ? e.type : e));
  return ts.isTypeReferenceNode(type) && type.typeName.getText() === 'Interval';
}

function callableOf(declaration: ts.Declaration): ts.SignatureDeclaration | undefined {
  if (ts.isFunctionDeclaration(declaration)) return declaration;
  if (!ts.isVariableDeclaration(declaration) || declaration.initializer === undefined) return undefined;
  const made = declaration.initializer;
  return ts.isArrowFunction(made) || ts.isFunctionExpression(made) ? made : undefined;
}

/** Whether a function throws in its own body. */
function throws(callable: ts.Node): boolean {
  let found = false;
  const visit = (node: ts.Node): void => {
    if (ts.isThrowStatement(node)) found = true;
    if (!found) ts.forEachChild(node, visit);
  };
  ts.forEachChild(callable, visit);
  return found;
}
