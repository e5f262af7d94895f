/** Type sizes and distances of a sheet, mm. */
export const type = {
  title: 5.2,
  subtitle: 3.4,
  label: 3.1,
  dimension: 2.9,
  small: 2.7,
} as const;

export const sheetWidth = 250;
export const margin = 9;
/** From one line of text to the next, in parts of its size. */
export const leading = 1.28;
