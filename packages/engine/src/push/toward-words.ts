/** `toward the rear`, `toward the front and the driver side`. */
export function towardWords(angle: number): string {
  const x = Math.cos(angle);
  const y = Math.sin(angle);
  const along = x > 0 ? 'the rear' : 'the front';
  const across = y > 0 ? 'the passenger side' : 'the driver side';
  if (Math.abs(y) < 1e-9 || Math.abs(y) < 0.2 * Math.abs(x)) return `toward ${along}`;
  if (Math.abs(x) < 0.2 * Math.abs(y)) return `toward ${across}`;
  return `toward ${along} and ${across}`;
}
