import type { Book } from '../book/index.ts';
import {
  type BoxLacks,
  faultsOfJoins,
  type JoinFault,
  type JoinState,
  joinProblem,
  joinStates,
  type LaidJoin,
  lacksOfBoxes,
  laidJoins,
  type Schedule,
  scheduleOf,
} from '../joins/index.ts';
import type { Problem } from '../quantity/problem.ts';
import type { Envelope } from '../record/envelope.ts';

/** Everything that is told of the joins of a book. */
export interface ToldJoins {
  readonly joins: readonly LaidJoin[];
  readonly states: ReadonlyMap<string, JoinState>;
  readonly faults: readonly JoinFault[];
  readonly schedule: Schedule;
  readonly boxes: readonly BoxLacks[];
  /** Records of joins that the book does not have. */
  readonly problems: readonly Problem[];
}

export const toldJoins = (book: Book, records: readonly Envelope[]): ToldJoins => {
  const joins = laidJoins(book);
  const states = joinStates(records);
  const faults = faultsOfJoins(joins, book);
  const known = new Set(joins.map(({ tag }) => tag));
  return {
    joins,
    states,
    faults,
    schedule: scheduleOf(joins, book),
    boxes: lacksOfBoxes(joins, states, faults),
    problems: [...states.values()]
      .filter(({ join }) => !known.has(join))
      .map(({ join, last }) => joinProblem('JOIN_UNKNOWN', `/${last[0]?.id ?? ''}`, { given: join })),
  };
};
