import type { Book } from '../../book/index.ts';
import { airDraws } from './air/air-draws.ts';
import { airNeeds } from './air/air-needs.ts';
import { buildingDraws } from './building/building-draws.ts';
import { buildingNeeds } from './building/building-needs.ts';
import { drainDraws } from './drains/drain-draws.ts';
import { drainNeeds } from './drains/drain-needs.ts';
import { heatDraws } from './heat/heat-draws.ts';
import { heatNeeds } from './heat/heat-needs.ts';
import type { Draw, Need } from './need.ts';
import { powerDraws } from './power/power-draws.ts';
import { powerNeeds } from './power/power-needs.ts';
import { waterDraws } from './water/water-draws.ts';
import { waterNeeds } from './water/water-needs.ts';

/** Every question that the line of a book puts to the utilities of one of its floors. */
export const needsOf = (book: Book, floor: number): readonly Need[] => [
  ...airNeeds(book),
  ...powerNeeds(book, floor),
  ...waterNeeds(book, floor),
  ...heatNeeds(book, floor),
  ...drainNeeds(book),
  ...buildingNeeds(book, floor),
];

/** Figures that nothing is held against. */
export const drawsOf = (book: Book): readonly Draw[] => [
  ...airDraws(book),
  ...powerDraws(book),
  ...waterDraws(book),
  ...heatDraws(book),
  ...drainDraws(book),
  ...buildingDraws(book),
];
