import { isCode, plainCode, printedCode } from './join-code.ts';

/** What became of a code that somebody typed. */
export type Found =
  | { readonly is: 'found'; readonly join: string; readonly code: string }
  /** Several labels bear it: it settles nothing. `nearest` are the joins that have it. */
  | { readonly is: 'shared'; readonly code: string; readonly nearest: readonly Near[] }
  /** The check character does not fit: something was mistyped or misread. */
  | { readonly is: 'mistyped'; readonly nearest: readonly Near[] }
  /** It fits, but no join of this book has it. */
  | { readonly is: 'unknown'; readonly nearest: readonly Near[] };

export interface Near {
  readonly join: string;
  readonly code: string;
}

interface Coded {
  readonly tag: string;
  readonly code: string;
}

const mostNear = 3;
const farthest = 2;

/** Changes of one character, characters left out or put in, and swaps of neighbours, up to two of them. */
const distance = (a: string, b: string): number => {
  let beforeLast: readonly number[] = [];
  let last: readonly number[] = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i += 1) {
    const row = [i];
    for (let j = 1; j <= b.length; j += 1) {
      const change = a[i - 1] === b[j - 1] ? 0 : 1;
      let least = Math.min(last[j]! + 1, row[j - 1]! + 1, last[j - 1]! + change);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        least = Math.min(least, beforeLast[j - 2]! + 1);
      row.push(least);
    }
    beforeLast = last;
    last = row;
  }
  return last[b.length]!;
};

/**
 * The join of a code that was typed by hand or scanned, or that it is mistyped, with what it may have been.
 *
 * Method   a code that one join has is found, one that several have is told; else the codes within two slips are
 *          offered, the nearest first, and never taken by themselves
 * Symbols  typed  as it came: small letters, gaps and a hyphen are no slips
 * Cost     O(joins) for one that is not found
 */
export const findCode = (typed: string, joins: readonly Coded[]): Found => {
  const code = plainCode(typed);
  const [join, ...others] = joins.filter((one) => one.code === code);
  if (join !== undefined) {
    const printed = printedCode(join.code);
    if (others.length === 0) return { is: 'found', join: join.tag, code: printed };
    const nearest = [join, ...others].map(({ tag }) => ({ join: tag, code: printed }));
    return { is: 'shared', code: printed, nearest };
  }
  const nearest =
    code.length > 12
      ? []
      : joins
          .map((one, order) => ({ one, order, away: distance(code, one.code) }))
          .filter(({ away }) => away <= farthest)
          .sort((a, b) => a.away - b.away || a.order - b.order)
          .slice(0, mostNear)
          .map(({ one }) => ({ join: one.tag, code: printedCode(one.code) }));
  return { is: isCode(code) ? 'unknown' : 'mistyped', nearest };
};
