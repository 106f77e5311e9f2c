import type { Entered, EnteredBottle } from '../../fill/slips.ts';
import { type Kind, parseQuantity } from '../../quantity/index.ts';
import type { RecordedTrial } from '../../record/trials.ts';

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

/** Whether trials of a place belong together: one floor and one format. */
export const ofPlace =
  (floor: string, format: string | undefined) =>
  (trial: Pick<RecordedTrial, 'floor' | 'format'>): boolean =>
    trial.floor === floor && (trial.format === undefined || trial.format === format);
