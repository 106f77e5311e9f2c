import type { Book } from '../book/index.ts';
import {
  type EnergisingLack,
  energisingLacks,
  faultsOfJoins,
  joinStates,
  lacksOfBoxes,
  laidJoins,
  scheduleOf,
} from '../joins/index.ts';
import type { Envelope } from '../record/envelope.ts';
import type { Lack } from './lack.ts';
import { isPassed, type ProvedCheck } from './proved-check.ts';

const done: ReadonlySet<string> = new Set(['made', 'tested']);

/** Lacks of joins that a check of the same floor answers too: nobody reads a bond twice for two lists. */
const answered = (checks: readonly ProvedCheck[]) => {
  const passed = new Set(checks.filter(isPassed).map(({ check }) => check.id));
  return (why: EnergisingLack, join: string): boolean =>
    (why === 'bond' && passed.has(`bond ${join}`)) || (why === 'insulation' && passed.has('insulation'));
};

/** Names a lack of one box, or of conductors of which nobody says in which box they end. */
const idOf = (box: string | undefined, why: EnergisingLack): string =>
  box === undefined ? why : `${box} ${why}`;

/** Box and reason of such a lack by its id; absent: it is one of what is done before the way. */
export const boxLackOf = (
  id: string,
): { readonly box?: string; readonly why: EnergisingLack } | undefined => {
  const why = energisingLacks.find((one) => id === one || id.endsWith(` ${one}`));
  if (why === undefined) return undefined;
  return id === why ? { why } : { box: id.slice(0, -why.length - 1), why };
};

/**
 * What of the joins keeps the line from being energised: one lack for each box and reason, so that what comes up in a box
 * after somebody signed is unnamed by that signature.
 *
 * Cost     O(joins + records); nothing where the book has no joins
 */
export const joinLacks = (
  book: Book,
  checks: readonly ProvedCheck[],
  records: readonly Envelope[],
): readonly Lack[] => {
  const joins = laidJoins(book);
  if (joins.length === 0) return [];
  const isAnswered = answered(checks);
  return lacksOfBoxes(joins, joinStates(records), faultsOfJoins(joins, book)).flatMap(({ box, lacks }) => {
    const open = lacks.filter(({ why, join }) => !isAnswered(why, join));
    return [...new Set(open.map(({ why }) => why))].map(
      (why): Lack => ({
        id: idOf(box, why),
        sort: 'join',
        holder: 'builder',
        joins: open.filter((one) => one.why === why).map(({ join }) => join),
      }),
    );
  });
};

/** What was to be drained, blown out or dried before the way and of which no record says so: one lack for each of these. */
export const travelLacks = (book: Book, records: readonly Envelope[]): readonly Lack[] => {
  const joins = laidJoins(book);
  const before = new Set(scheduleOf(joins, book).beforeShipping);
  const states = joinStates(records);
  const open = joins.filter(({ tag }) => {
    const state = states.get(tag);
    return before.has(tag) && (state === undefined || state.conflict || !done.has(state.state));
  });
  return [...new Set(open.map(({ kind }) => kind ?? ''))].map(
    (kind): Lack => ({
      id: `not ${kind}`,
      sort: 'join',
      holder: 'builder',
      joins: open.filter((one) => one.kind === kind).map(({ tag }) => tag),
    }),
  );
};
