import type { Range } from './values/values.js';

/** A formula as a tree. Groups keep the parentheses that its author wrote. Numbers are in SI, or have no unit. */
export type Expression =
  | { readonly kind: 'number'; readonly value: number }
  | { readonly kind: 'input'; readonly name: string }
  | { readonly kind: 'negative'; readonly of: Expression }
  | { readonly kind: 'group'; readonly of: Expression }
  | { readonly kind: 'square'; readonly of: Expression }
  | {
      readonly kind: 'binary';
      readonly sign: '+' | '−' | '×' | '÷';
      readonly left: Expression;
      readonly right: Expression;
    }
  | { readonly kind: 'call'; readonly name: FormulaFunction; readonly of: readonly Expression[] }
  /** `of (= same)`: the same written out beside it; it counts once. */
  | { readonly kind: 'written out'; readonly of: Expression; readonly same: Expression }
  /** `value, where name = of`. */
  | {
      readonly kind: 'where';
      readonly value: Expression;
      readonly name: string;
      readonly of: Expression;
    };

/** `floorTo(a, b)`: a rounded down to a multiple of b. */
export type FormulaFunction = keyof typeof functions;

const functions = {
  sqrt: (x: number) => Math.sqrt(x),
  sin: (x: number) => Math.sin(x),
  cos: (x: number) => Math.cos(x),
  tan: (x: number) => Math.tan(x),
  arctan: (x: number) => Math.atan(x),
  min: (...x: readonly number[]) => Math.min(...x),
  max: (...x: readonly number[]) => Math.max(...x),
  floorTo: (x: number, step = 1) => Math.floor(x / step + 1e-9) * step,
} as const;

const parsed = new Map<string, Expression>();

/**
 * Reads a formula: `{ratio} × {width}`, `sqrt({run}² + {rise}²)`, `min({flat}, {species})`,
 * `r + {x} where r = 2 × {y}`. Inputs stand in braces; signs are + − × ÷ ² ( ). Each text is read once.
 *
 * @throws where the text is no formula: that is a fault of the program, not of a plan.
 */
export function parseFormula(text: string): Expression {
  const before = parsed.get(text);
  if (before !== undefined) return before;
  const expression = new Reader(text).whole();
  parsed.set(text, expression);
  return expression;
}

class Reader {
  readonly #tokens: readonly string[];
  #at = 0;

  constructor(readonly text: string) {
    this.#tokens = text.match(/\{\w+\}|\d+(?:\.\d+)?|[A-Za-z]+|[^\s\w{}]/g) ?? [];
  }

  whole(): Expression {
    let value = this.#sum();
    while (this.#take('where')) {
      const name = this.#next();
      this.#expect('=');
      value = { kind: 'where', value, name, of: this.#sum() };
    }
    if (this.#at < this.#tokens.length) throw this.#fault();
    return value;
  }

  #sum(): Expression {
    let left: Expression = this.#take('−') ? { kind: 'negative', of: this.#product() } : this.#product();
    for (;;) {
      const sign = this.#take('+') ? '+' : this.#take('−') ? '−' : undefined;
      if (sign === undefined) return left;
      left = { kind: 'binary', sign, left, right: this.#product() };
    }
  }

  #product(): Expression {
    let left = this.#power();
    for (;;) {
      const sign = this.#take('×') ? '×' : this.#take('÷') ? '÷' : undefined;
      if (sign === undefined) return left;
      left = { kind: 'binary', sign, left, right: this.#power() };
    }
  }

  #power(): Expression {
    const of = this.#atom();
    if (this.#tokens[this.#at] === '(' && this.#tokens[this.#at + 1] === '=') {
      this.#at += 2;
      const same = this.#sum();
      this.#expect(')');
      return { kind: 'written out', of, same };
    }
    return this.#take('²') ? { kind: 'square', of } : of;
  }

  #atom(): Expression {
    if (this.#take('(')) {
      const of = this.#sum();
      this.#expect(')');
      return { kind: 'group', of };
    }
    const token = this.#next();
    if (token.startsWith('{')) return { kind: 'input', name: token.slice(1, -1) };
    if (/^\d/.test(token)) return { kind: 'number', value: Number(token) };
    if (isFunction(token)) {
      this.#expect('(');
      const of = [this.#sum()];
      while (this.#take(',')) of.push(this.#sum());
      this.#expect(')');
      return { kind: 'call', name: token, of };
    }
    if (/^[a-z]$/i.test(token)) return { kind: 'input', name: token };
    throw this.#fault();
  }

  #next(): string {
    const token = this.#tokens[this.#at];
    if (token === undefined) throw this.#fault();
    this.#at++;
    return token;
  }

  #take(token: string): boolean {
    if (this.#tokens[this.#at] !== token) return false;
    this.#at++;
    return true;
  }

  #expect(token: string): void {
    if (!this.#take(token)) throw this.#fault();
  }

  #fault = () => new Error(`"${this.text}" is not a formula, at token ${this.#at + 1}`);
}

const isFunction = (name: string): name is FormulaFunction => Object.hasOwn(functions, name);

/** The names of a formula's inputs, each once. A name that `where` explains is not one. */
export function inputsOf(e: Expression): readonly string[] {
  switch (e.kind) {
    case 'number':
      return [];
    case 'input':
      return [e.name];
    case 'negative':
    case 'group':
    case 'square':
      return inputsOf(e.of);
    case 'binary':
      return unique([...inputsOf(e.left), ...inputsOf(e.right)]);
    case 'call':
      return unique(e.of.flatMap(inputsOf));
    case 'written out':
      return unique([...inputsOf(e.of), ...inputsOf(e.same)]);
    case 'where':
      return unique([...inputsOf(e.value).filter((n) => n !== e.name), ...inputsOf(e.of)]);
  }
}

const unique = (names: readonly string[]) => [...new Set(names)];

/**
 * The value of a formula over exact inputs in SI.
 *
 * @returns NaN where an input is missing.
 */
export function evaluateFormula(e: Expression, over: ReadonlyMap<string, number>): number {
  const value = (of: Expression) => evaluateFormula(of, over);
  switch (e.kind) {
    case 'number':
      return e.value;
    case 'input':
      return over.get(e.name) ?? Number.NaN;
    case 'negative':
      return -value(e.of);
    case 'group':
    case 'written out':
      return value(e.of);
    case 'square':
      return value(e.of) ** 2;
    case 'binary': {
      const [a, b] = [value(e.left), value(e.right)];
      return e.sign === '+' ? a + b : e.sign === '−' ? a - b : e.sign === '×' ? a * b : a / b;
    }
    case 'call':
      return (functions[e.name] as (...x: readonly number[]) => number)(...e.of.map(value));
    case 'where':
      return evaluateFormula(e.value, new Map([...over, [e.name, value(e.of)]]));
  }
}

/**
 * The least and greatest value of a formula over every combination of its inputs' ends. A formula that is monotonic
 * in each input lies between them. At most 2^12 combinations are tried; further inputs stay at their middle.
 */
export function evaluateOverRanges(e: Expression, over: ReadonlyMap<string, Range>): Range {
  const wide = inputsOf(e)
    .filter((n) => (over.get(n)?.low ?? 0) !== (over.get(n)?.high ?? 0))
    .slice(0, 12);
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (let corner = 0; corner < 2 ** wide.length; corner++) {
    const at = new Map([...over].map(([n, r]) => [n, (r.low + r.high) / 2]));
    wide.forEach((n, i) => {
      const range = over.get(n);
      if (range !== undefined) at.set(n, (corner >> i) % 2 === 1 ? range.high : range.low);
    });
    const value = evaluateFormula(e, at);
    low = Math.min(low, value);
    high = Math.max(high, value);
  }
  return { low, high };
}
