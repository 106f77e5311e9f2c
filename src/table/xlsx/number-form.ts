/** What the number of a cell means by the way in which it is shown. */
export type NumberForm = 'plain' | 'percent' | 'day' | 'duration';

/** Numbers of forms that every spreadsheet knows: ECMA-376 part 1, 18.8.30, memory. */
const builtIn = (id: number): NumberForm =>
  id === 9 || id === 10
    ? 'percent'
    : id === 46
      ? 'duration'
      : (id >= 14 && id <= 22) || (id >= 27 && id <= 36) || (id >= 45 && id <= 47) || (id >= 50 && id <= 58)
        ? 'day'
        : 'plain';

/** Without what is printed as it stands: quoted text, escaped letters, widths, fillers, colours and conditions. */
const bare = (code: string): string =>
  (code.split(';')[0] ?? '').replace(/"[^"]*"|\\.|_.|\*./g, '').replace(/\[(?!(?:h+|m+|s+)\])[^\]]*\]/gi, '');

/** The meaning of a form by its number, or by its code where the workbook has its own. */
export const numberForm = (id: number, code: string | undefined): NumberForm => {
  if (code === undefined) return builtIn(id);
  const letters = bare(code);
  if (/\[(?:h+|m+|s+)\]/i.test(letters)) return 'duration';
  if (/[ymdhs]/i.test(letters.replace(/general/gi, ''))) return 'day';
  return letters.includes('%') ? 'percent' : 'plain';
};
