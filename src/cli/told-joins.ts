import type { Book } from '../book/index.ts';
import {
  type BoxLacks,
  type BoxPicture,
  boxPictures,
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
  /** Photographs of each box that records speak of, with the ends that were placed on them. */
  readonly pictures: ReadonlyMap<string, readonly BoxPicture[]>;
  /** Records of joins that the book does not have. */
  readonly problems: readonly Problem[];
}

/** Of all photographs in the records those of boxes: one of a join or of a crate has no ends to be placed. */
const picturesOf = (book: Book, records: readonly Envelope[]): ToldJoins['pictures'] => {
  const boxes = new Set((book.line?.boxes ?? []).map(({ tag }) => tag));
  return new Map(
    [...boxPictures(records)].filter(
      ([box, own]) => boxes.has(box) || own.some(({ ends }) => ends.length > 0),
    ),
  );
};

export const toldJoins = (book: Book, records: readonly Envelope[]): ToldJoins => {
  const joins = laidJoins(book);
  const states = joinStates(records);
  const faults = faultsOfJoins(joins, book);
  const pictures = picturesOf(book, records);
  const known = new Set(joins.map(({ tag }) => tag));
  const recorded = [
    ...[...states.values()],
    ...[...pictures.values()].flatMap((own) => own.flatMap(({ ends }) => ends)),
  ];
  return {
    joins,
    states,
    faults,
    schedule: scheduleOf(joins, book),
    boxes: lacksOfBoxes(joins, states, faults),
    pictures,
    problems: recorded
      .filter(({ join }) => !known.has(join))
      .map(({ join, last }) => joinProblem('JOIN_UNKNOWN', `/${last[0]?.id ?? ''}`, { given: join })),
  };
};
