import type { Book } from '../book/index.ts';
import type { Figure } from '../floor/assessment.ts';
import { shown, shownInterval } from '../quantity/shown.ts';
import type { UnitWishes } from '../quantity/unit-choice.ts';
import { words } from './words.ts';
import type { World } from './world.ts';

/** What every part of an assessment's text needs. */
export interface Told {
  readonly book: Book;
  readonly wishes: UnitWishes;
  readonly world: World;
}

export const figureText = ({ value, low, high, kind }: Figure, { wishes, world }: Told): string => {
  if (value === undefined) return words.say('assess.unknown');
  return low === undefined || high === undefined || low === high
    ? shown(value, kind, wishes, world.locale)
    : shownInterval(value, [low, high], kind, wishes, world.locale);
};

/** Name of a figure or finding, as a mechanic says it. */
export const figureName = (id: string): string =>
  words.has(`figure.${id}`) ? words.say(`figure.${id}`) : id;
