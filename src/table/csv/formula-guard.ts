/**
 * A spreadsheet takes a cell of a text file for a formula when it begins with one of these, and would run it.
 * An apostrophe before it makes it text. Texts that begin with apostrophes and then such a sign get one more, so
 * that taking one away always gives the text back.
 */
const startsFormula = /^'*[=+\-@\t\r\n]/;
const guarded = /^'+[=+\-@\t\r\n]/;

export const withGuard = (text: string): string => (startsFormula.test(text) ? `'${text}` : text);

export const withoutGuard = (text: string): string => (guarded.test(text) ? text.slice(1) : text);
