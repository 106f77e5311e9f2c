import type { Book, Check as BookCheck } from '../book/index.ts';
import type { Check } from './check.ts';
import { makeCheck } from './make-check.ts';
import { placeFigure } from './place-figure.ts';

/** What the book says of a check, over what it would be without. */
const changed = (check: Check, own: BookCheck, path: string, book: Book): Check => {
  const duration = placeFigure(book, `${path}/duration`, 'time').value;
  const { name, on, point, instrument, readings, limit, conditions, after, note } = own;
  return {
    ...check,
    places: [...check.places, path],
    ...(name === undefined ? {} : { name }),
    ...(on === undefined ? {} : { on }),
    ...(point === undefined ? {} : { point }),
    ...(instrument === undefined ? {} : { ownInstrument: instrument }),
    ...(readings === undefined ? {} : { readings }),
    ...(limit === undefined ? {} : { ownLimit: limit }),
    ...(conditions === undefined ? {} : { ownConditions: conditions }),
    ...(after === undefined ? {} : { after: [...check.after, ...after] }),
    ...(note === undefined ? {} : { note }),
    ...(duration === undefined ? {} : { duration }),
  };
};

/**
 * The checks of a floor with those of the book: one whose tag is the id of a check that is made changes it, any other is
 * added before the hand-over. One that is done on other floors alone is left out.
 */
export const withBookChecks = (made: readonly Check[], book: Book, floor: string): readonly Check[] => {
  const checks = [...made];
  for (const [i, own] of (book.line?.checks ?? []).entries()) {
    const path = `/line/checks/${i}`;
    const at = checks.findIndex(({ id }) => id === own.tag);
    if (own.floors !== undefined && !own.floors.includes(floor)) {
      if (at >= 0) checks.splice(at, 1);
      continue;
    }
    const check = checks[at] ?? makeCheck('own', own.on ?? [], 'run', { id: own.tag });
    checks.splice(at < 0 ? checks.length : at, 1, changed(check, own, path, book));
  }
  return checks;
};
