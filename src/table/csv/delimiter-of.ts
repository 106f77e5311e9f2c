import { cutCsv } from './cut-csv.ts';
import type { Delimiter } from './write-csv.ts';

/** In the order in which one is believed where all else is equal: a comma may part decimals, a tab hardly anything. */
const candidates: readonly Delimiter[] = ['\t', ';', ','];

const firstLook = 40;

interface Look {
  readonly delimiter: Delimiter;
  /** Records that have the width that most have. */
  readonly agreeing: number;
  readonly width: number;
}

const lookAt = (text: string, delimiter: Delimiter): Look => {
  const byWidth = new Map<number, number>();
  for (const record of cutCsv(text, delimiter, firstLook).records) {
    if (record.length > 1) byWidth.set(record.length, (byWidth.get(record.length) ?? 0) + 1);
  }
  const [width = 1, agreeing = 0] = [...byWidth].sort((a, b) => b[1] - a[1] || b[0] - a[0])[0] ?? [];
  return { delimiter, agreeing, width };
};

/**
 * What parts the cells of a text: that by which most of the first records are of one width, and the wider where two
 * do. Commas that part decimals in a text parted by semicolons stand in some records only.
 */
export const delimiterOf = (text: string): Delimiter => {
  const looks = candidates.map((delimiter) => lookAt(text, delimiter));
  const [best] = looks.sort((a, b) => b.agreeing - a.agreeing || b.width - a.width);
  return best === undefined || best.agreeing === 0 ? ',' : best.delimiter;
};
