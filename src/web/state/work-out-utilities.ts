import type { FloorAssessment } from '../../floor/assessment.ts';
import type { Page } from './page.ts';

/**
 * Works the utilities of some floors out, floor by floor with a pause after each: a press or a key between two of them is
 * answered. Those that are known already cost nothing. Gives back how to give it up.
 */
export const workOutUtilities = (
  page: Pick<Page, 'later'>,
  floors: readonly FloorAssessment[],
  done: () => void = () => undefined,
): (() => void) => {
  let over = false;
  const goOn = (floor: number): void => {
    if (over) return;
    if (floor === floors.length) {
      done();
      return;
    }
    void floors[floor]?.utilities.findings;
    page.later(() => goOn(floor + 1), 0);
  };
  page.later(() => goOn(0), 0);
  return () => {
    over = true;
  };
};
