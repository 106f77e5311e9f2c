import type { Book } from '../../book/index.ts';
import { airDraws } from './air/air-draws.ts';
import { airNeeds } from './air/air-needs.ts';
import type { Draw, Need } from './need.ts';
import { powerDraws } from './power/power-draws.ts';
import { powerNeeds } from './power/power-needs.ts';

/** Every question that the line of a book puts to the utilities of one of its floors. */
export const needsOf = (book: Book, floor: number): readonly Need[] => [
  ...airNeeds(book),
  ...powerNeeds(book, floor),
];

/** Figures that nothing is held against. */
export const drawsOf = (book: Book): readonly Draw[] => [...airDraws(book), ...powerDraws(book)];
