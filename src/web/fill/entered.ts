import type { Entered, EnteredBottle, SlipGround } from '../../fill/slips.ts';
import { type BookQuantity, type Kind, parseQuantity, readEntry } from '../../quantity/index.ts';
import type { RecordedTrial } from '../../record/trials.ts';
import type { FillPlace } from './fill-place.tsx';

/** A typed quantity in SI with the digits that stand in it. */
const entered = (text: string | undefined, kind: Kind): Entered | undefined => {
  if (text === undefined) return undefined;
  const read = parseQuantity(text, kind, { path: '' });
  const typed = /[\d.]+/.exec(text)?.[0];
  return read.ok ? { value: read.value.value, ...(typed === undefined ? {} : { typed }) } : undefined;
};

/** A bottle as slips are looked for in it. */
export const enteredBottle = (trial: Omit<RecordedTrial, 'id'>): EnteredBottle => {
  const [gross, tare] = [entered(trial.gross, 'mass'), entered(trial.tare, 'mass')];
  const time = entered(trial.time, 'time');
  return {
    lane: trial.lane,
    preset: trial.preset,
    ...(gross === undefined ? {} : { gross }),
    ...(tare === undefined ? {} : { tare }),
    ...(time === undefined ? {} : { time }),
    ...(trial.overflow === undefined ? {} : { overflow: trial.overflow }),
    ...(trial.lanesOpen === undefined ? {} : { lanesOpen: trial.lanesOpen }),
    ...(trial.throttled === undefined ? {} : { throttled: trial.throttled }),
    ...(trial.afterStop === undefined ? {} : { afterStop: trial.afterStop }),
  };
};

const inBook = (value: unknown, kind: Kind): number | undefined => {
  if (value === undefined) return undefined;
  const read = readEntry(value as BookQuantity, kind, { path: '' });
  return read.ok ? read.value.value : undefined;
};

/** What the book says of lanes and bottle before any bottle is weighed. */
export const slipGround = (place: Pick<FillPlace, 'lanes' | 'format'>): SlipGround => {
  const emptyMass = inBook(place.format?.mass, 'mass');
  const level = inBook(place.format?.level, 'volume');
  return {
    lanes: place.lanes.map(({ tag, pulses: text }) => {
      const pulses = inBook(text, 'pulseDensity');
      return { tag, ...(pulses === undefined ? {} : { pulses }) };
    }),
    ...(emptyMass === undefined ? {} : { emptyMass }),
    ...(level === undefined ? {} : { level }),
  };
};

/** Whether trials of a place belong together: one floor and one format. */
export const ofPlace =
  (floor: string, format: string | undefined) =>
  (trial: Pick<RecordedTrial, 'floor' | 'format'>): boolean =>
    trial.floor === floor && (trial.format === undefined || trial.format === format);
