import { describe, expect, it } from 'vitest';
import type { Assessment, FloorAssessment } from '../../floor/assessment.ts';
import { facingFloors } from './facing-floors.ts';

const floor = (tag: string, role: FloorAssessment['role']) =>
  ({ floor: tag, name: tag, role }) as FloorAssessment;
const book = (...floors: FloorAssessment[]): Assessment => ({ format: 'F', floors });
const nobody = [undefined, undefined] as const;

describe('the floors that face each other', () => {
  it('are the one it was built on and the one it is bound for, in whatever order the book has them', () => {
    expect(
      facingFloors(book(floor('B', 'bound for'), floor('X', 'other'), floor('A', 'built on')), nobody),
    ).toEqual(['A', 'B']);
  });
  it('stay those that were chosen as long as they are there', () => {
    const three = book(floor('A', 'built on'), floor('B', 'bound for'), floor('C', 'other'));
    expect(facingFloors(three, ['C', 'A'])).toEqual(['C', 'A']);
    expect(facingFloors(three, ['GONE', 'C'])).toEqual(['A', 'C']);
  });
  it('are one, or none, where the book has no more', () => {
    expect(facingFloors(book(floor('A', 'other')), nobody)).toEqual(['A', undefined]);
    expect(facingFloors(book(), nobody)).toEqual([undefined, undefined]);
  });
});
