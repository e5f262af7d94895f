/** A number as the drawing writes it: three decimals at most, no trailing zeros, never `-0` or `NaN`. */
export function fixed(value: number): string {
  if (!Number.isFinite(value)) return '0';
  const text = value.toFixed(3).replace(/\.?0+$/, '');
  return text === '-0' ? '0' : text;
}
