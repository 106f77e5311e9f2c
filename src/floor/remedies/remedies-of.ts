import type { Book } from '../../book/index.ts';
import type { Finding, FloorAssessment, Remedy } from '../assessment.ts';
import { remediesFor } from './remedies-for.ts';
import { searchGround } from './search-ground.ts';

/** What would carry each finding that is short, among those that are asked for: all of a floor where none are named. */
export const remediesOf = (
  book: Book,
  floors: readonly FloorAssessment[],
  format: string | undefined,
  findingsOf: (floor: FloorAssessment) => readonly Finding[] = ({ findings }) => findings,
): readonly Remedy[] => {
  const ground = searchGround(book, format);
  return floors.flatMap((floor) =>
    findingsOf(floor)
      .filter(({ verdict, levers }) => verdict === 'short' && levers.length > 0)
      .flatMap(({ id }) =>
        remediesFor(
          book,
          { floor: floor.floor, finding: id, ...(format === undefined ? {} : { format }) },
          ground,
        ),
      ),
  );
};
