import { type Book, type Patch, tryPatches } from '../../book/index.ts';
import type { FloorAssessment, Verdict } from '../../floor/assessment.ts';
import { assessBook } from '../../floor/index.ts';
import type { AnyFinding } from '../../floor/utilities/utility-finding.ts';
import type { SettingChange } from './compare-settings.ts';
import { settingPatches } from './setting-patches.ts';

/** A finding that is another with the settings of the second moment. */
export interface MovedFinding {
  readonly finding: string;
  readonly from?: { readonly verdict: Verdict; readonly margin?: number };
  readonly to?: { readonly verdict: Verdict; readonly margin?: number };
}

/** A margin that moves by less than this, as a share of what is asked, has not moved: the balance is solved to less. */
const still = 1e-6;

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
 * The findings of a floor that some changed settings move.
 *
 * Method   the book with the values of the first moment and with those of the second, both assessed on the same floor
 * Symbols  changes  those that are looked at together; `others` keep the values of the first moment on both sides
 * Returns  findings whose verdict turns first, then those whose margin moves
 * Assumes  what is typed in SI-equal units moves nothing
 * Cost     two assessments with their utilities; none where no change has a place in the book
 */
export const movedFindings = (
  book: Book,
  floor: string,
  changes: readonly SettingChange[],
  { format, others = [] }: { readonly format?: string; readonly others?: readonly SettingChange[] } = {},
): readonly MovedFinding[] => {
  const base = bookWithSettings(book, floor, [...others, ...changes], 'from');
  const next = bookWithSettings(base, floor, changes, 'to');
  if (base === next) return [];
  const options = format === undefined ? {} : { format };
  const assessed = (one: Book) =>
    findingsOf(assessBook(one, options).floors.find((each) => each.floor === floor));
  const [before, after] = [assessed(base), assessed(next)];
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
