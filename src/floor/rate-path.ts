import { type Book, valueAt } from '../book/index.ts';

/** Book place of the rate that was agreed for a format, there or not. */
export const ratePathOf = (book: Book, formatPath: string): string => {
  const tag = valueAt(book, `${formatPath}/tag`);
  const rates = book.agreement?.rates ?? [];
  const found = rates.findIndex((rate) => rate.format === undefined || rate.format === tag);
  // a rate that was agreed for another format is not this one's
  return `/agreement/rates/${found < 0 ? rates.length : found}/rate`;
};
