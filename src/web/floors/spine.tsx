import type { ReactElement } from 'react';
import type { Book } from '../../book/index.ts';
import type { Assessment, FloorAssessment } from '../../floor/assessment.ts';
import { useWords } from '../state/page-context.ts';
import { FloorHeads } from './floor-heads.tsx';
import { SpineKey } from './spine-key.tsx';
import { SpineRow } from './spine-row.tsx';

/** Ids of the findings of both floors, in the order of the first that has them. */
export const findingIds = (floors: readonly (FloorAssessment | undefined)[]): readonly string[] => [
  ...new Set(floors.flatMap((floor) => floor?.findings.map((finding) => finding.id) ?? [])),
];

export interface SpineProps {
  readonly book: Book;
  readonly assessment: Assessment;
  readonly left: FloorAssessment | undefined;
  readonly right: FloorAssessment | undefined;
}

/** Two floors facing each other across the names that they share. */
export const Spine = ({ book, assessment, left, right }: SpineProps): ReactElement => {
  const { say } = useWords();
  return (
    <section className="spine" aria-label={say('spine.title')}>
      <FloorHeads book={book} assessment={assessment} left={left} right={right} />
      <ol className="rows">
        {findingIds([left, right]).map((id) => (
          <SpineRow key={id} book={book} id={id} left={left} right={right} />
        ))}
      </ol>
      <SpineKey />
    </section>
  );
};
