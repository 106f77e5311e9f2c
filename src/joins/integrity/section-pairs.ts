import type { Book } from '../../book/index.ts';
import type { LaidJoin } from '../laid-join.ts';

/** The two sections between which a join runs, in order of the alphabet. */
export type Pair = readonly [string, string];

/** Which sections a join ties together; its split says so where its ends do not. */
export const pairsOf = (book: Book) => {
  const splits = new Map((book.line?.splits ?? []).map(({ tag, between }) => [tag, between]));
  return ({ from, to, split }: LaidJoin): Pair | undefined => {
    const [one, other] =
      from.section !== undefined && to.section !== undefined
        ? [from.section, to.section]
        : (splits.get(split ?? '') ?? []);
    if (one === undefined || other === undefined || one === other) return undefined;
    return one < other ? [one, other] : [other, one];
  };
};
