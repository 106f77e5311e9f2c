import type { Book } from '../../book/index.ts';
import type { LaidJoin } from '../laid-join.ts';
import { sectionsOfThings } from '../sections-of-things.ts';
import type { JoinFault } from './fault.ts';

/** Meters, valves and pumps: what holds water after the pipes have run empty. */
const wetThings = ({ line }: Book): readonly string[] =>
  (line?.stations ?? []).flatMap((station) =>
    station.kind === 'fill'
      ? (station.lanes ?? []).map(({ tag }) => tag)
      : station.kind === 'washer'
        ? (station.zones ?? []).flatMap(({ pump }) => (pump === undefined ? [] : [pump]))
        : [],
  );

/** Any of them leaves nothing that could freeze. */
const emptying: ReadonlySet<string | undefined> = new Set(['drained', 'blown out', 'dried']);

/**
 * What holds water on a section that travels in frost, and that no join says to drain, blow out or dry: where frost is
 * possible on the way each section travels in it, unless the book says of it that it does not.
 */
export const notDrained = (joins: readonly LaidJoin[], book: Book): readonly JoinFault[] => {
  const onWay = book.line?.transport?.frost === true;
  const frosty = new Set(
    (book.line?.sections ?? []).flatMap(({ tag, frost = onWay }) => (frost ? [tag] : [])),
  );
  if (frosty.size === 0) return [];
  const sections = sectionsOfThings(book);
  const emptied = new Set(joins.filter(({ kind }) => emptying.has(kind)).map(({ from }) => from.on));
  return [...new Set(wetThings(book))].flatMap((thing): readonly JoinFault[] => {
    const section = sections.get(thing);
    if (section === undefined || !frosty.has(section) || emptied.has(thing)) return [];
    const index = (book.line?.sections ?? []).findIndex(({ tag }) => tag === section);
    return [
      { code: 'JOIN_NOT_DRAINED', path: `/line/sections/${index}`, ends: [], parts: { thing, section } },
    ];
  });
};
