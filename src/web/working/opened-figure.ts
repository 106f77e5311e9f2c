import type { Figure, FloorAssessment, Working } from '../../floor/assessment.ts';
import type { AnyFinding, UtilityFigure } from '../../floor/utilities/utility-finding.ts';
import type { Opened } from '../state/page-state.ts';

/** What the panel has before it: the floor, and as far as there is one the finding, the figure, the working. */
export interface OpenedFigure {
  readonly floor: FloorAssessment;
  readonly id?: string;
  readonly finding?: AnyFinding;
  readonly figure?: Figure;
  /** A figure of a utility, with what must be known with it. */
  readonly drawn?: UtilityFigure;
  readonly working?: Working;
}

/** The name under which a figure of a utility is opened: with the thing that it is about. */
export const drawnId = ({ id, of }: Pick<UtilityFigure, 'id' | 'of'>): string =>
  of === undefined ? id : `${id} ${of}`;

/** A finding by its id; for one of the line's own no utility is worked out. */
const findingOf = ({ findings, figures, utilities }: FloorAssessment, id: string): AnyFinding | undefined =>
  findings.find((one) => one.id === id) ??
  (figures[id] === undefined ? utilities.findings.find((one) => one.id === id) : undefined);

/** Looks up what is opened in the assessment of this moment; it may have gone since. */
export const openedFigure = (
  floors: readonly FloorAssessment[],
  opened: Opened | undefined,
): OpenedFigure | undefined => {
  const floor = floors.find((one) => one.floor === opened?.floor);
  if (opened === undefined || floor === undefined) return undefined;
  const { id } = opened;
  const finding = id === undefined ? undefined : findingOf(floor, id);
  const own = finding?.have ?? (id === undefined ? undefined : floor.figures[id]);
  const drawn =
    own !== undefined || id === undefined
      ? undefined
      : floor.utilities.figures.find((one) => drawnId(one) === id);
  const figure = own ?? drawn?.figure;
  // where what is there is written and not worked out, what is asked may be
  const index =
    opened.working ?? figure?.working ?? (drawn === undefined ? finding?.demand.working : undefined);
  const working = index === undefined ? undefined : floor.workingAt(index);
  return {
    floor,
    ...(id === undefined ? {} : { id }),
    ...(finding === undefined ? {} : { finding }),
    ...(figure === undefined ? {} : { figure }),
    ...(drawn === undefined ? {} : { drawn }),
    ...(working === undefined ? {} : { working }),
  };
};
