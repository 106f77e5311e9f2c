import type { Book } from '../book/index.ts';
import type { Assessment, Remedy } from '../floor/assessment.ts';
import { remediesFor } from '../floor/index.ts';

/** What would carry each finding that is short, on every floor of an assessment. */
export const remediesOf = (
  book: Book,
  { floors }: Assessment,
  format: string | undefined,
): readonly Remedy[] =>
  floors.flatMap(({ floor, findings }) =>
    findings
      .filter(({ verdict }) => verdict === 'short')
      .flatMap(({ id }) =>
        remediesFor(book, { floor, finding: id, ...(format === undefined ? {} : { format }) }),
      ),
  );
