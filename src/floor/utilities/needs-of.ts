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
import type { Utility } from './utility-finding.ts';
import { waterDraws } from './water/water-draws.ts';
import { waterNeeds } from './water/water-needs.ts';

/** What one trade is asked: its questions, and the figures that nothing is held against. */
interface Asked {
  readonly needs: (book: Book, floor: number) => readonly Need[];
  readonly draws: (book: Book) => readonly Draw[];
}

/** Questions by trade, in the order in which a floor answers them. */
export const askedOf: Readonly<Record<Utility, Asked>> = {
  air: { needs: airNeeds, draws: airDraws },
  power: { needs: powerNeeds, draws: powerDraws },
  water: { needs: waterNeeds, draws: waterDraws },
  heat: { needs: heatNeeds, draws: heatDraws },
  drains: { needs: drainNeeds, draws: drainDraws },
  building: { needs: buildingNeeds, draws: buildingDraws },
};

export const trades = Object.keys(askedOf) as readonly Utility[];

/** Every question that the line of a book puts to the utilities of one of its floors. */
export const needsOf = (book: Book, floor: number): readonly Need[] =>
  trades.flatMap((trade) => askedOf[trade].needs(book, floor));

/** Figures that nothing is held against. */
export const drawsOf = (book: Book): readonly Draw[] => trades.flatMap((trade) => askedOf[trade].draws(book));
