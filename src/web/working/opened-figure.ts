import type { Figure, Finding, FloorAssessment, Working } from '../../floor/assessment.ts';
import type { Opened } from '../state/page-state.ts';

/** What the panel has before it: the floor, and as far as there is one the finding, the figure, the working. */
export interface OpenedFigure {
  readonly floor: FloorAssessment;
  readonly id?: string;
  readonly finding?: Finding;
  readonly figure?: Figure;
  readonly working?: Working;
}

/** Looks up what is opened in the assessment of this moment; it may have gone since. */
export const openedFigure = (
  floors: readonly FloorAssessment[],
  opened: Opened | undefined,
): OpenedFigure | undefined => {
  const floor = floors.find((one) => one.floor === opened?.floor);
  if (opened === undefined || floor === undefined) return undefined;
  const { id } = opened;
  const finding = id === undefined ? undefined : floor.findings.find((one) => one.id === id);
  const figure = finding?.have ?? (id === undefined ? undefined : floor.figures[id]);
  const index = opened.working ?? figure?.working;
  const working = index === undefined ? undefined : floor.workings[index];
  return {
    floor,
    ...(id === undefined ? {} : { id }),
    ...(finding === undefined ? {} : { finding }),
    ...(figure === undefined ? {} : { figure }),
    ...(working === undefined ? {} : { working }),
  };
};
