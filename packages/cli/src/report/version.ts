/** The tool's version, as its package says it. A test keeps the two the same. */
export const version = '0.1.0';
