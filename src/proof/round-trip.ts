import { type Book, stepsOf, tagsOf, valueAt } from '../book/index.ts';
import type { ProvedCheck } from './proved-check.ts';

/** Checks that are done at one place of the line. */
export interface StopOfTrip {
  /** Tag of the station, else of the section; absent: the line as a whole. */
  readonly at?: string;
  readonly checks: readonly ProvedCheck[];
}

const textAt = (book: Book, path: string): string | undefined => {
  const value = valueAt(book, path);
  return typeof value === 'string' ? value : undefined;
};

/** Places of a line as one walks along it: each section, then the stations that it holds, then those of no section. */
const walk = ({ line }: Book): readonly string[] => {
  const stations = (line?.stations ?? []).map(({ tag }) => tag);
  const held = (line?.sections ?? []).flatMap(({ tag, holds = [] }) => [
    tag,
    ...stations.filter((station) => holds.includes(station)),
  ]);
  return [...new Set([...held, ...stations])];
};

/**
 * The checks of a protocol place by place, so that nobody walks back and forth.
 *
 * Method   a check is done where the first of its things sits that says where: a station, a part of one, a section, or a
 *          thing that names its station or section
 * Symbols  checks  in the order of the protocol, which each place keeps
 * Returns  the line as a whole first, then along the line; places without a check are left out
 * Cost     O(size of the book + checks)
 */
export const roundTrip = (book: Book, checks: readonly ProvedCheck[]): readonly StopOfTrip[] => {
  const paths = new Map(tagsOf(book).map(({ tag, path }) => [tag, path]));
  const order = walk(book);
  const placeOf = (tag: string): string | undefined => {
    const path = paths.get(tag);
    if (path === undefined) return undefined;
    if (order.includes(tag)) return tag;
    const [line, things, number] = stepsOf(path);
    const own = textAt(book, `${path}/station`) ?? textAt(book, `${path}/section`);
    return things === 'stations' ? textAt(book, `/${line}/${things}/${number}/tag`) : own;
  };
  const trip = new Map<string | undefined, ProvedCheck[]>([
    [undefined, []],
    ...order.map((at): [string, ProvedCheck[]] => [at, []]),
  ]);
  for (const one of checks) {
    const at = one.check.on.map(placeOf).find((place) => place !== undefined);
    (trip.get(at) ?? trip.get(undefined))?.push(one);
  }
  return [...trip]
    .filter(([, stop]) => stop.length > 0)
    .map(([at, stop]) => ({ ...(at === undefined ? {} : { at }), checks: stop }));
};
