import type { JoinEnd, LaidJoin, Side } from '../laid-join.ts';

/** One end of a join, by name. */
export interface EndName {
  readonly join: string;
  readonly side: Side;
}

/** What tells an end from every other. */
export const endKey = ({ join, side }: EndName): string => `${side} ${join}`;

/** An end that lies in a box. */
export interface BoxEnd extends EndName {
  readonly laid: LaidJoin;
  readonly end: JoinEnd;
}

/** `X1:2` comes before `X1:10`. */
const natural = new Intl.Collator('en', { numeric: true });
const byLabel = (a: BoxEnd, b: BoxEnd): number =>
  natural.compare(a.end.label ?? a.end.on ?? '', b.end.label ?? b.end.on ?? '') ||
  natural.compare(a.join, b.join) ||
  natural.compare(a.side, b.side);

const lies = ({ label, on }: JoinEnd): boolean => label !== undefined || on !== undefined;

/** Where an end lies: in its own box; of a join that is made in a box, the ends of which nobody says where they lie. */
const boxOf = ({ box, from, to }: LaidJoin, end: JoinEnd): string | undefined =>
  end.box ?? ([from.box, to.box].includes(box) ? undefined : box);

/** The ends that lie in each box, in the order of their labels, as one meets them along a strip. */
export const endsOfBoxes = (joins: readonly LaidJoin[]): ReadonlyMap<string, readonly BoxEnd[]> => {
  const boxes = new Map<string, BoxEnd[]>();
  for (const laid of joins) {
    for (const end of [laid.from, laid.to]) {
      const box = lies(end) ? boxOf(laid, end) : undefined;
      if (box === undefined) continue;
      const one = { join: laid.tag, side: end.side, laid, end };
      const known = boxes.get(box);
      if (known === undefined) boxes.set(box, [one]);
      else known.push(one);
    }
  }
  return new Map([...boxes].map(([box, ends]) => [box, ends.toSorted(byLabel)]));
};
