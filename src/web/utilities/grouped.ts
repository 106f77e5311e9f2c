import type { FloorAssessment } from '../../floor/assessment.ts';
import type { Utility, UtilityFigure, UtilityFinding } from '../../floor/utilities/utility-finding.ts';
import { drawnId } from '../working/opened-figure.ts';

/** One row of the page: the same question on both floors. */
export interface Facing<T> {
  readonly id: string;
  readonly left?: T;
  readonly right?: T;
}

export interface TieInGroup {
  /** Tag of the tie-in point; absent where none is named. */
  readonly tieIn?: string;
  readonly rows: readonly Facing<UtilityFinding>[];
}

/** Answers of two floors side by side, in the order of the first floor that has them. */
const facing = <T>(left: readonly T[], right: readonly T[], idOf: (one: T) => string): readonly Facing<T>[] =>
  [...new Set([...left, ...right].map(idOf))].map((id) => {
    const [here, there] = [left, right].map((side) => side.find((one) => idOf(one) === id));
    return {
      id,
      ...(here === undefined ? {} : { left: here }),
      ...(there === undefined ? {} : { right: there }),
    };
  });

type Floor = FloorAssessment | undefined;

/** The questions of one utility by the tie-in point at which the site has to bring it. */
export const tieInGroups = (utility: Utility, left: Floor, right: Floor): readonly TieInGroup[] => {
  const rows = facing(
    left?.utilities.of(utility).findings ?? [],
    right?.utilities.of(utility).findings ?? [],
    ({ id }) => id,
  );
  const groups = new Map<string, Facing<UtilityFinding>[]>();
  for (const row of rows) {
    const tieIn = (row.left ?? row.right)?.tieIn ?? '';
    groups.set(tieIn, [...(groups.get(tieIn) ?? []), row]);
  }
  return [...groups].map(([tieIn, own]) => ({ ...(tieIn === '' ? {} : { tieIn }), rows: own }));
};

/** The figures of one utility on both floors. */
export const facingFigures = (
  utility: Utility,
  left: Floor,
  right: Floor,
): readonly Facing<UtilityFigure>[] =>
  facing(left?.utilities.of(utility).figures ?? [], right?.utilities.of(utility).figures ?? [], drawnId);

export type Counts = Readonly<Record<'short' | 'unknown' | 'carries', number>>;

/** How many questions of a floor carry, are short or not known; of one utility, or of all. */
export const countsOf = (floor: Floor, utility?: Utility): Counts => {
  const counts = { short: 0, unknown: 0, carries: 0 };
  const answers = utility === undefined ? floor?.utilities : floor?.utilities.of(utility);
  for (const { verdict } of answers?.findings ?? []) counts[verdict] += 1;
  return counts;
};
