import type { Book, Station } from '../../book/index.ts';
import type { StopCause } from '../../line/shift/index.ts';
import type { BookReader } from '../book-reader.ts';

type Cause = NonNullable<Station['stops']>[number];

/** What makes a station stand, as far as the book says it. */
export interface StopsHere {
  readonly stops: readonly StopCause[];
  /** Whether something was said at all: an empty list says that nothing makes it stand. */
  readonly declared: boolean;
}

/** Who answers for a stop where the book leaves it open. */
export const usualOwner = 'machine';

const causeOf = (reader: BookReader, cause: Cause, path: string): StopCause | undefined => {
  const between = reader.needed(`${path}/between`, 'time');
  const clear = reader.needed(`${path}/clear`, 'time');
  if (between === undefined || clear === undefined) return undefined;
  if (cause.owner === undefined) reader.assume(`${path}/owner`);
  return {
    cause: cause.tag,
    between,
    clear,
    owner: cause.owner ?? usualOwner,
    ...(cause.counts === undefined ? {} : { counts: cause.counts }),
    ...(cause.pattern === 'regular' ? { pattern: { kind: 'constant' } } : {}),
  };
};

const causesOf = (
  reader: BookReader,
  causes: readonly Cause[] | undefined,
  path: string,
): readonly StopCause[] => (causes ?? []).flatMap((cause, i) => causeOf(reader, cause, `${path}/${i}`) ?? []);

/** Where the stops of a station stand: those of the floor go before those of the line. */
const placeOf = (book: Book, floor: number, station: number) => {
  const { tag, stops } = book.line!.stations![station]!;
  const here = (book.floors?.[floor]?.stops ?? []).findIndex((each) => each.station === tag);
  return here >= 0
    ? { path: `/floors/${floor}/stops/${here}/stops`, causes: book.floors![floor]!.stops![here]!.stops }
    : { path: `/line/stations/${station}/stops`, causes: stops };
};

/** Stops of a station on a floor; their absence is noted as what makes the bottles of a shift unknown. */
export const stopsHere = (reader: BookReader, floor: number, station: number): StopsHere => {
  const { path, causes } = placeOf(reader.book, floor, station);
  if (causes === undefined) reader.miss(path);
  return { stops: causesOf(reader, causes, path), declared: causes !== undefined };
};

/** Stops of the cap sorter; one of which nothing is said has none but those of its station. */
export const sorterStops = (reader: BookReader, station: number): readonly StopCause[] => {
  const closing = reader.book.line!.stations![station]!;
  const causes = closing.kind === 'closing' ? closing.chute?.stops : undefined;
  return causesOf(reader, causes, `/line/stations/${station}/chute/stops`);
};
