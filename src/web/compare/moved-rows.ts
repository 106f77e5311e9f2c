import type { Finding, FloorAssessment, Verdict } from '../../floor/assessment.ts';
import type { FigureMove, FloorMoves } from '../../floor/index.ts';

/** One row of a comparison: a figure on both sides, and the finding that rests on it where there is one. */
export interface MovedRow {
  readonly id: string;
  /** Absent where only what is asked moved. */
  readonly move?: FigureMove;
  readonly left?: Finding;
  readonly right?: Finding;
  /** The verdict is another. */
  readonly verdict?: { readonly from?: Verdict; readonly to?: Verdict };
}

/**
 * The rows of a comparison in the order of the spine: findings whose figure, demand or verdict moved, then the
 * figures that no finding rests on.
 *
 * Symbols  left, right  the floor before and after
 * Cost     O(findings times figures)
 */
export const movedRows = (
  moves: FloorMoves,
  left: FloorAssessment,
  right: FloorAssessment,
): readonly MovedRow[] => {
  const ofId = (floor: FloorAssessment, id: string) => floor.findings.find((finding) => finding.id === id);
  const ids = [...new Set([...left.findings, ...right.findings].map(({ id }) => id))];
  const figure = (id: string | undefined) => moves.figures.find((move) => move.id === id);
  const findings = ids.flatMap((id): readonly MovedRow[] => {
    const before = ofId(left, id);
    const after = ofId(right, id);
    const move = figure((after ?? before)?.have.id);
    const asked = figure((after ?? before)?.demand.id);
    const verdict = moves.findings.find((each) => each.id === id);
    if (move === undefined && asked === undefined && verdict === undefined) return [];
    return [
      {
        id,
        ...(move === undefined ? {} : { move }),
        ...(before === undefined ? {} : { left: before }),
        ...(after === undefined ? {} : { right: after }),
        ...(verdict === undefined ? {} : { verdict }),
      },
    ];
  });
  const shown = new Set(findings.map(({ move }) => move?.id));
  const others = moves.figures.filter(({ id }) => !shown.has(id)).map((move) => ({ id: move.id, move }));
  return [...findings, ...others];
};
