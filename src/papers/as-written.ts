import { decimalMark } from '../quantity/decimal-mark.ts';
import { handwritten } from '../quantity/index.ts';
import type { PaperWords } from './paper-words.ts';

/** Digits on both sides of one point: no version, no day, no address. */
const parted = /(?<![\d.])(\d+)\.(\d+)(?!\.?\d)/g;

/**
 * A quantity as it was typed, in the book or at the machine, with the mark and the words of the paper's language:
 * `1.5 mm2` as `1,5 mm²`, `5.5 to 10` as `5,5 bis 10`. What begins with no digit is a name and stays.
 */
export const asWritten = (text: string, { locale, say }: Pick<PaperWords, 'locale' | 'say'>): string => {
  const typed = handwritten(text);
  if (!/^[<>≤≥~±+\-−]?\s*\d/.test(typed)) return typed;
  const marked = typed.replace(parted, `$1${decimalMark(locale)}$2`);
  const [low, high, ...more] = marked.split(' to ');
  return low === undefined || high === undefined || more.length > 0
    ? marked
    : say('paper.range', { low, high });
};
