import { type Book, type Patch, tryPatches } from '../../book/index.ts';
import { assessFloor } from '../../floor/assess-floor.ts';
import type { FloorAssessment, Verdict } from '../../floor/assessment.ts';
import { bookReader } from '../../floor/book-reader.ts';
import type { AnyFinding } from '../../floor/utilities/utility-finding.ts';
import type { SettingChange } from './compare-settings.ts';
import { settingPatches } from './setting-patches.ts';

/** A finding that is another with the settings of the second moment. */
export interface MovedFinding {
  readonly finding: string;
  readonly from?: { readonly verdict: Verdict; readonly margin?: number };
  readonly to?: { readonly verdict: Verdict; readonly margin?: number };
}

/** A margin that moves by less than this, as a share of what is asked, shows in none of the three digits that are printed. */
const still = 5e-4;

const findingsOf = (floor: FloorAssessment | undefined): ReadonlyMap<string, AnyFinding> =>
  new Map(
    floor === undefined
      ? []
      : [...floor.findings, ...floor.utilities.findings].map((one) => [one.id, one] as const),
  );

const marginMoved = (a: number | undefined, b: number | undefined): boolean =>
  a === undefined || b === undefined ? a !== b : Math.abs(a - b) > still * Math.max(1, Math.abs(a));

const said = ({ verdict, margin }: AnyFinding) => ({ verdict, ...(margin === undefined ? {} : { margin }) });

const turns = ({ from, to }: MovedFinding): boolean => from?.verdict !== to?.verdict;

/** The book as the settings of one side of some changes would have it on a floor. */
export const bookWithSettings = (
  book: Book,
  floor: string,
  changes: readonly SettingChange[],
  side: 'from' | 'to',
): Book => {
  let next = book;
  // one after the other: where the counts of a lane go depends on what is there
  for (const change of changes) {
    next = tryPatches(next, settingPatches(change.row, next, floor, change[side]) as Patch[]);
  }
  return next;
};

/**
 * Tells of any of some changed settings which findings of a floor they move while the others stay as they were.
 *
 * Method   the book with the values of the first moment and with those of the second, both assessed on the same floor
 * Symbols  changes  all that differ between the two moments
 * Returns  for some of the changes, findings whose verdict turns first, then those whose margin moves
 * Cost     an assessment of the floor with its utilities once, and one for each question; none where no change that is
 *          asked about has a place in the book
 */
export const findingMover = (
  book: Book,
  floor: string,
  changes: readonly SettingChange[],
  format?: string,
): ((some: readonly SettingChange[]) => readonly MovedFinding[]) => {
  const index = (book.floors ?? []).findIndex(({ tag }) => tag === floor);
  const base = bookWithSettings(book, floor, changes, 'from');
  const assessed = (one: Book) =>
    findingsOf(index < 0 ? undefined : assessFloor(bookReader(one), index, format));
  let known: ReadonlyMap<string, AnyFinding> | undefined;
  return (some) => {
    const next = bookWithSettings(base, floor, some, 'to');
    if (base === next) return [];
    known ??= assessed(base);
    const before = known;
    const after = assessed(next);
    return [...new Set([...before.keys(), ...after.keys()])]
      .flatMap((id): readonly MovedFinding[] => {
        const [was, is] = [before.get(id), after.get(id)];
        if (was?.verdict === is?.verdict && !marginMoved(was?.margin, is?.margin)) return [];
        return [
          {
            finding: id,
            ...(was === undefined ? {} : { from: said(was) }),
            ...(is === undefined ? {} : { to: said(is) }),
          },
        ];
      })
      .sort((a, b) => Number(turns(b)) - Number(turns(a)));
  };
};

/** The findings of a floor that all of some changed settings together move. */
export const movedFindings = (
  book: Book,
  floor: string,
  changes: readonly SettingChange[],
  format?: string,
): readonly MovedFinding[] => findingMover(book, floor, changes, format)(changes);
