import { fromSi, si } from '../../quantity/index.ts';
import { usePagePart } from '../state/page-context.ts';

/** Units of the size of a bottle: what overflows is no litre, and a neck no metre. */
export interface BottleUnits {
  readonly volume: 'mL' | 'US fl oz';
  readonly mass: 'g' | 'oz';
  readonly length: 'mm' | 'in';
  /** A temperature as one writes it. */
  readonly temperature: 'degC' | 'degF';
  /** A volume as a number in that unit, for an axis. */
  readonly volumeIn: (volume: number) => number;
}

const metric: BottleUnits = {
  volume: 'mL',
  mass: 'g',
  length: 'mm',
  temperature: 'degC',
  volumeIn: (volume) => fromSi(si('volume', volume), 'volume', 'mL'),
};

const us: BottleUnits = {
  volume: 'US fl oz',
  mass: 'oz',
  length: 'in',
  temperature: 'degF',
  volumeIn: (volume) => fromSi(si('volume', volume), 'volume', 'US fl oz'),
};

/** The small units of the person: those that were chosen, else those of the book. */
export const useBottleUnits = (): BottleUnits =>
  usePagePart(({ units, book }) =>
    units === 'us' || (units === 'book' && book?.about?.system === 'us') ? us : metric,
  );
