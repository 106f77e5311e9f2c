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

/** What holds water on a section that must be empty before it travels in frost, and that no join says to drain. */
export const notDrained = (joins: readonly LaidJoin[], book: Book): readonly JoinFault[] => {
  const frosty = new Set(
    (book.line?.sections ?? []).flatMap(({ tag, frost }) => (frost === true ? [tag] : [])),
  );
  if (frosty.size === 0) return [];
  const sections = sectionsOfThings(book);
  const emptied = new Set(
    joins.filter(({ kind }) => kind === 'drained' || kind === 'blown out').map(({ from }) => from.on),
  );
  return [...new Set(wetThings(book))].flatMap((thing): readonly JoinFault[] => {
    const section = sections.get(thing);
    if (section === undefined || !frosty.has(section) || emptied.has(thing)) return [];
    const index = (book.line?.sections ?? []).findIndex(({ tag }) => tag === section);
    return [
      { code: 'JOIN_NOT_DRAINED', path: `/line/sections/${index}`, ends: [], parts: { thing, section } },
    ];
  });
};
