import { type Book, valueAt } from '../book/index.ts';
import { rulesNamed } from '../floor/utilities/power/rule-set.ts';
import { bondLimitSheet } from '../sheets/safety/bond-limit.ts';
import type { Limit } from './limit.ts';
import { placeFigure } from './place-figure.ts';
import { sheetLimit } from './sheet-limit.ts';

const bondRules = { us: 'nfpa-79', iec: 'iec-60204-1' } as const;

/** Place of the electrical rule set that holds on a floor. */
export const rulePlace = (book: Book, floor: number): string =>
  book.floors?.[floor]?.power?.ruleSet === undefined
    ? '/agreement/electrical/ruleSet'
    : `/floors/${floor}/power/ruleSet`;

/** The most that a bond may have by its copper and the rule set; unknown where the book does not say one of them. */
export const bondLimitOf = (book: Book, floor: number, path: string): Limit => {
  const place = rulePlace(book, floor);
  const named = valueAt(book, place);
  const rules = typeof named === 'string' ? rulesNamed(named) : undefined;
  const length = placeFigure(book, `${path}/length`, 'length');
  const area = placeFigure(book, `${path}/size`, 'conductorArea');
  const common = { sense: 'most', id: 'bond', kind: 'resistance' } as const;
  if (rules === undefined) {
    const missing = [place, ...length.missing, ...area.missing];
    return { sense: 'most', figure: { id: 'bond', kind: 'resistance', assumed: [], missing } };
  }
  return sheetLimit(
    bondLimitSheet,
    { rule: { word: bondRules[rules], path: place }, length, area },
    'most',
    common,
  );
};
