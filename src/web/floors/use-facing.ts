import type { Book } from '../../book/index.ts';
import type { Assessment, FloorAssessment } from '../../floor/assessment.ts';
import { usePageState } from '../state/page-context.ts';

/** The two floors that face each other, and the book that they are of. */
export interface FacingFloors {
  readonly book: Book;
  readonly assessment: Assessment;
  readonly left: FloorAssessment | undefined;
  readonly right: FloorAssessment | undefined;
  /** Those of the two that there are. */
  readonly floors: readonly FloorAssessment[];
}

/** What the page shows of the floors; nothing until a book is assessed. */
export const useFacing = (): FacingFloors | undefined => {
  const { shown, assessment, facing } = usePageState();
  if (shown === undefined || assessment === undefined) return undefined;
  const [left, right] = facing.map((tag) => assessment.floors.find((floor) => floor.floor === tag));
  const floors = [left, right].filter((floor) => floor !== undefined);
  return { book: shown, assessment, left, right, floors };
};
