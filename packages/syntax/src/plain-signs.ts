/** The inch mark as the lexer sees it: a straight quote would start a text. */
export const inchMark = '\u2033';

/**
 * A number and a quote right after it, and full-width signs, but not inside words, texts and comments: these come
 * first, so that what they hold is passed over. Lines break as in the grammar.
 */
const marks =
  /\/\/[^\r\n\v\f\u0085\u2028\u2029]*|\/\*(?:[^*]|\*+[^*/])*(?:\*+\/|$)|[A-Za-z_\u00c0-\u024f][\w\u00c0-\u024f]*|(?:\d|[½¼¾⅓⅔⅛⅜⅝⅞])"|"[^"\r\n\v\f\u0085\u2028\u2029]*"?|[\uff01-\uff5e]/g;

const needed = /[\d½¼¾⅓⅔⅛⅜⅝⅞]"|[\uff01-\uff5e]/;

/**
 * The text as the lexer reads it, sign for sign as long: a quote right after a number is an inch mark, and full-width
 * signs are the plain ones. What stands in a text or a comment is left alone.
 */
export function plainSigns(text: string): string {
  if (!needed.test(text)) return text;
  return text.replace(marks, (m) => {
    if (m.length === 1 && m >= '\uff01' && m <= '\uff5e')
      return String.fromCharCode(m.charCodeAt(0) - 0xfee0);
    return m.length === 2 && m.endsWith('"') && m !== '""' ? `${m.charAt(0)}${inchMark}` : m;
  });
}
