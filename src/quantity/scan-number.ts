import { decimalMark } from './decimal-mark.ts';

export interface ScannedNumber {
  readonly value: number;
  /** Significant digits typed; a fraction is exact. */
  readonly digits: number;
  /** Index behind the last character of the number. */
  readonly end: number;
}

/** Why no number was read: nothing there, or one that two readers would read differently. */
export type NumberFault = 'unreadable' | { readonly ambiguous: readonly string[] };

const exactDigits = 15;

const vulgar: Readonly<Record<string, number>> = {
  '½': 1 / 2,
  '⅓': 1 / 3,
  '⅔': 2 / 3,
  '¼': 1 / 4,
  '¾': 3 / 4,
  '⅛': 1 / 8,
  '⅜': 3 / 8,
  '⅝': 5 / 8,
  '⅞': 7 / 8,
};
const raised = '⁰¹²³⁴⁵⁶⁷⁸⁹';
const spaces = ' \u00a0\u2007\u2009\u200a\u202f';
const apostrophes = "'’";
const minuses = '-\u2212\u2013';
const slashes = '/\u2044\u2215';

const isDigit = (char: string | undefined): boolean => char !== undefined && char >= '0' && char <= '9';
const isIn = (set: string, char: string | undefined): boolean => char !== undefined && set.includes(char);

const digitsFrom = (text: string, at: number): number => {
  let end = at;
  while (isDigit(text[end])) end += 1;
  return end;
};

const skipSpaces = (text: string, at: number): number => {
  let end = at;
  while (isIn(spaces, text[end])) end += 1;
  return end;
};

/** Whether a number begins here: a digit, a sign or a decimal mark before one, a vulgar fraction. */
export const startsNumber = (text: string, at: number): boolean => {
  let i = at;
  if (isIn(minuses, text[i]) || text[i] === '+') i = skipSpaces(text, i + 1);
  const char = text[i];
  if (isDigit(char) || (char !== undefined && char in vulgar)) return true;
  return (char === '.' || char === ',') && isDigit(text[i + 1]);
};

/** `3/4`, `½`: value and end, where the text goes on so. Denominators of three digits reach every ruler. */
const fractionAt = (text: string, at: number): { value: number; end: number } | undefined => {
  const sign = vulgar[text[at] ?? ''];
  if (sign !== undefined) return { value: sign, end: at + 1 };
  const slash = digitsFrom(text, at);
  if (slash === at || slash - at > 3 || !isIn(slashes, text[slash])) return undefined;
  const end = digitsFrom(text, slash + 1);
  const below = Number(text.slice(slash + 1, end));
  if (end === slash + 1 || end - slash > 4 || below === 0) return undefined;
  // 1/2.5 or 1/050 is something else
  if (isIn('.,', text[end]) && isDigit(text[end + 1])) return undefined;
  return { value: Number(text.slice(at, slash)) / below, end };
};

/** `e-3`, `×10⁻³`, `x10^-3`: power and end. */
const powerAt = (text: string, at: number): { power: string; end: number } | undefined => {
  if (text[at] === 'e' || text[at] === 'E') {
    const signed = isIn(minuses, text[at + 1]) || text[at + 1] === '+' ? at + 2 : at + 1;
    const end = digitsFrom(text, signed);
    if (end === signed) return undefined;
    return { power: `${isIn(minuses, text[at + 1]) ? '-' : ''}${text.slice(signed, end)}`, end };
  }
  const times = skipSpaces(text, at);
  if (!isIn('×x·*', text[times])) return undefined;
  let i = skipSpaces(text, times + 1);
  if (text[i] !== '1' || text[i + 1] !== '0') return undefined;
  i += 2;
  let power = '';
  if (text[i] === '^') {
    i += 1;
    if (isIn(minuses, text[i])) power = '-';
    if (power !== '') i += 1;
    const end = digitsFrom(text, i);
    return end === i ? undefined : { power: power + text.slice(i, end), end };
  }
  if (text[i] === '⁻') {
    power = '-';
    i += 1;
  }
  const from = i;
  while (isIn(raised, text[i])) {
    power += raised.indexOf(text[i] as string);
    i += 1;
  }
  return i === from ? undefined : { power, end: i };
};

interface Cut {
  /** Runs of digits, at least one. */
  readonly runs: readonly string[];
  /** The marks between them; a space or an apostrophe is written as a space. */
  readonly marks: readonly string[];
  readonly end: number;
}

/** Digits with what stands between them. A space or apostrophe counts only before a group of exactly three. */
const cutDigits = (text: string, at: number): Cut => {
  const runs: string[] = [];
  const marks: string[] = [];
  let i = at;
  if (isIn('.,', text[i])) {
    runs.push('');
    marks.push(text[i] as string);
    i += 1;
  }
  for (;;) {
    const end = digitsFrom(text, i);
    runs.push(text.slice(i, end));
    i = end;
    const char = text[i];
    if ((char === '.' || char === ',') && isDigit(text[i + 1])) {
      marks.push(char);
      i += 1;
      continue;
    }
    const last = runs[runs.length - 1] as string;
    const group = digitsFrom(text, i + 1) - i - 1;
    const decimal = marks.some((mark) => mark !== ' ');
    if ((isIn(spaces, char) || isIn(apostrophes, char)) && group === 3 && !decimal) {
      const whole = runs.length === 1 ? last.length <= 3 : last.length === 3;
      // `1 125/128 in` goes on with a fraction, not with a thousand; the slash of `1 050/h` belongs to the unit
      if (whole && !(isIn(slashes, text[i + 4]) && isDigit(text[i + 5]))) {
        marks.push(' ');
        i += 1;
        continue;
      }
    }
    return { runs, marks, end: i };
  }
};

interface Decimal {
  readonly whole: string;
  readonly fraction: string;
}

const grouped = (runs: readonly string[]): boolean =>
  runs.length === 1 ||
  ((runs[0] as string).length <= 3 &&
    (runs[0] as string).length > 0 &&
    runs.slice(1).every((run) => run.length === 3));

/** Which marks are decimal and which part thousands. */
const settle = (cut: Cut, locale: string | undefined): Decimal | NumberFault => {
  const marks = cut.marks.filter((mark) => mark !== ' ');
  if (marks.length === 0) return { whole: cut.runs.join(''), fraction: '' };
  const last = marks[marks.length - 1] as string;
  const fraction = cut.runs[cut.runs.length - 1] as string;
  const before = cut.runs.slice(0, -1);
  const split: Decimal = { whole: before.join(''), fraction };
  const thousands: Decimal = { whole: cut.runs.join(''), fraction: '' };
  if (cut.marks.length !== marks.length) {
    // spaces part the thousands, so the one other mark is decimal
    return marks.length === 1 && cut.marks[cut.marks.length - 1] !== ' ' ? split : 'unreadable';
  }
  if (marks.length > 1) {
    const others = marks.slice(0, -1);
    if (others.every((mark) => mark === last)) return grouped(cut.runs) ? thousands : 'unreadable';
    return others.every((mark) => mark !== last) && grouped(before) ? split : 'unreadable';
  }
  const couldGroup = fraction.length === 3 && grouped(cut.runs) && !/^0/.test(before[0] as string);
  if (!couldGroup) return split;
  const decimal = locale === undefined ? undefined : decimalMark(locale);
  const both = { ambiguous: [thousands.whole, `${split.whole}${decimal ?? '.'}${fraction}`] };
  if (last === ',') return decimal === undefined ? both : decimal === ',' ? split : thousands;
  // a point is decimal in a book; where the reader's own mark is the comma, `1.050` could be either
  return decimal === ',' ? both : split;
};

const significant = (decimal: Decimal): number => {
  const all = (decimal.whole + decimal.fraction).replace(/^0+/, '');
  return Math.max(all.length, 1);
};

/**
 * Reads the number that begins at an index: sign, thousands, decimal point or comma, exponent, or a whole
 * number with a fraction (`1 1/2`, `1-1/2`, `1½`).
 *
 * Method   one pass over the characters. One comma that exactly three digits follow is read only when the
 *          locale says which it is; a comma followed by any other count of digits is decimal.
 * Returns  value, significant digits typed, end; or why not
 * Cost     O(length)
 */
export const scanNumber = (text: string, at: number, locale?: string): ScannedNumber | NumberFault => {
  let i = at;
  let sign = 1;
  if (isIn(minuses, text[i]) || text[i] === '+') {
    sign = text[i] === '+' ? 1 : -1;
    i = skipSpaces(text, i + 1);
  }
  const alone = fractionAt(text, i);
  if (alone !== undefined) return { value: sign * alone.value, digits: exactDigits, end: alone.end };
  if (!startsNumber(text, i)) return 'unreadable';
  const cut = cutDigits(text, i);
  const decimal = settle(cut, locale);
  if (typeof decimal === 'string' || 'ambiguous' in decimal) return decimal;
  if (cut.marks.length === 0) {
    const joint = isIn('-', text[cut.end]) ? cut.end + 1 : skipSpaces(text, cut.end);
    const fraction = fractionAt(text, joint);
    if (fraction !== undefined) {
      const value = sign * (Number(decimal.whole) + fraction.value);
      return { value, digits: exactDigits, end: fraction.end };
    }
  }
  const power = powerAt(text, cut.end);
  const value = sign * Number(`${decimal.whole || '0'}.${decimal.fraction || '0'}e${power?.power ?? '0'}`);
  return { value, digits: significant(decimal), end: power?.end ?? cut.end };
};
