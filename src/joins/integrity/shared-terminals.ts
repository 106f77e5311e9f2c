import type { Book } from '../../book/index.ts';
import { takesTerminal } from '../join-kinds.ts';
import type { LaidJoin } from '../laid-join.ts';
import { terminalKey, terminalOf } from '../terminal.ts';
import { endOf, type JoinFault } from './fault.ts';
import { groupBy } from './group-by.ts';
import { endsInOne } from './same-ends.ts';

/** How many wires a terminal is made for, as the book says of it or of its strip. */
const wiresOf = (book: Book) => {
  const said = new Map<string, number>();
  for (const { tag, terminals = [] } of book.line?.boxes ?? []) {
    for (const { name, wires } of terminals) if (wires !== undefined) said.set(`${tag} ${name}`, wires);
  }
  return (box: string | undefined, label: string): number | undefined => {
    const terminal = terminalOf(label);
    if (box === undefined || terminal === undefined) return undefined;
    const { strip } = terminal;
    return said.get(`${box} ${strip}:${terminal.terminal}`) ?? said.get(`${box} ${strip}`);
  };
};

/**
 * Terminals and ports in which more joins end than they are made for, or more than one where nobody says for how many.
 *
 * Assumes  one wire to a terminal where the book says no more: IEC 60204-1:2016 13.1.1, memory
 * Cost     O(joins)
 */
export const sharedTerminals = (joins: readonly LaidJoin[], book: Book): readonly JoinFault[] => {
  const allowedIn = wiresOf(book);
  const ends = joins
    .filter(({ kind }) => takesTerminal(kind))
    // a join that ends where it begins has a fault of its own and is one wire there
    .flatMap((join) => {
      const sides = endsInOne(join) ? (['from'] as const) : (['from', 'to'] as const);
      return sides.map((side) => ({ join, end: join[side] }));
    });
  return [...groupBy(ends, ({ end }) => terminalKey(end)).values()].flatMap((here) => {
    const [{ end }, last] = [here[0]!, here.at(-1)!];
    const allowed = allowedIn(end.box, end.label ?? '');
    if (here.length <= (allowed ?? 1)) return [];
    const parts = { terminal: end.label ?? '', given: here.length };
    return [
      {
        code: allowed === undefined ? 'JOIN_TERMINAL_SHARED' : 'JOIN_TERMINAL_FULL',
        path: last.join.path,
        ends: here.flatMap(({ join, end: { side } }) => [
          endOf(join, side),
          endOf(join, side === 'from' ? 'to' : 'from'),
        ]),
        parts: allowed === undefined ? parts : { ...parts, allowed },
      },
    ];
  });
};
