import type { Book, Check as BookCheck } from '../book/index.ts';
import type { Check } from './check.ts';
import { makeCheck } from './make-check.ts';
import { placeFigure } from './place-figure.ts';

/** What the book says of a check, over what it would be without. */
const changed = (check: Check, own: BookCheck, path: string, book: Book): Check => {
  const duration = placeFigure(book, `${path}/duration`, 'time').value;
  const { name, on, stage, point, instrument, readings, limit, conditions, after, note } = own;
  return {
    ...check,
    places: [...check.places, path],
    ...(name === undefined ? {} : { name }),
    ...(on === undefined ? {} : { on }),
    ...(stage === undefined ? {} : { stage }),
    ...(point === undefined ? {} : { point }),
    ...(instrument === undefined ? {} : { ownInstrument: instrument }),
    ...(readings === undefined ? {} : { readings }),
    ...(limit === undefined ? {} : { ownLimit: limit }),
    ...(conditions === undefined ? {} : { ownConditions: [...check.ownConditions, ...conditions] }),
    ...(after === undefined ? {} : { after: [...check.after, ...after] }),
    ...(note === undefined ? {} : { note }),
    ...(duration === undefined ? {} : { duration }),
  };
};

/** What one of a whole sort is changed by: neither its things nor its name, which are each one's own. */
const ofSort = ({ name: _name, on: _on, ...rest }: BookCheck): BookCheck => rest;

/**
 * The checks of a floor with those of the book: one that names a sort changes all of it, one whose tag is the id of a check
 * that is made changes that one, any other is added, before the hand-over unless it names its stage. One that is done on
 * other floors alone is left out.
 */
export const withBookChecks = (made: readonly Check[], book: Book, floor: string): readonly Check[] => {
  let checks = [...made];
  for (const [i, own] of (book.line?.checks ?? []).entries()) {
    const path = `/line/checks/${i}`;
    const here = own.floors === undefined || own.floors.includes(floor);
    const meant = (check: Check): boolean =>
      own.sort === undefined ? check.id === own.tag : check.sort === own.sort;
    if (!here) checks = checks.filter((check) => !meant(check));
    else if (own.sort !== undefined) {
      checks = checks.map((check) => (meant(check) ? changed(check, ofSort(own), path, book) : check));
    } else if (checks.some(meant)) {
      checks = checks.map((check) => (meant(check) ? changed(check, own, path, book) : check));
    } else {
      checks.push(changed(makeCheck('own', own.on ?? [], 'run', { id: own.tag }), own, path, book));
    }
  }
  return checks;
};
