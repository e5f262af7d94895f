import type { Shape } from '../bound/shape.js';

/** Every word that the pattern itself may say: never a name or a unit where it stands in this line. */
export function literalWords(pattern: Shape): ReadonlySet<string> {
  const known = literals.get(pattern);
  if (known) return known;
  const found = new Set<string>();
  const walk = (p: Shape): void => {
    switch (p.kind) {
      case 'word':
      case 'choice':
        for (const text of p.words) for (const w of text.split(' ')) found.add(w);
        break;
      case 'sequence':
      case 'either':
      case 'any order':
        p.items.forEach(walk);
        break;
      case 'optional':
      case 'list':
      case 'group':
        walk(p.item);
        break;
      case 'quantity':
        if (p.rule.range) found.add('to');
        break;
      default:
    }
  };
  walk(pattern);
  literals.set(pattern, found);
  return found;
}

const literals = new WeakMap<Shape, ReadonlySet<string>>();
