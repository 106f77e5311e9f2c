import type { Utility } from '../../floor/utilities/utility-finding.ts';
import { trades } from './trades.ts';

/** In which part of a floor the book keeps what a utility has. */
export const partOfTrade: Readonly<Record<Utility, string>> = {
  water: 'water',
  air: 'air',
  power: 'power',
  heat: 'heat',
  drains: 'drains',
  building: 'room',
};

/** The trade whose part of a floor a place stands in; none for what is not a floor's, or no utility's. */
export const tradeAt = (path: string | undefined): Utility | undefined => {
  const part = /^\/floors\/\d+\/([^/]+)/.exec(path ?? '')?.[1];
  return trades.find((utility) => partOfTrade[utility] === part);
};
