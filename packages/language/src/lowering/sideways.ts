/** Driver side is negative. */
export const sideways = (side: string | undefined, offset: number): number =>
  side === 'driver side' ? -offset : offset;
