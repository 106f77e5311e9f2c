import type { BookReader } from '../../floor/book-reader.ts';
import type { FillFloor } from '../../floor/fill/fill-floor.ts';
import { trialsInSi } from '../../floor/fill/index.ts';
import type { RecordedTrial } from '../../record/trials.ts';

/** What a bottle says the moment that it is written down, before anything is fitted. */
export interface LastBottle {
  readonly lane: string;
  readonly preset: number;
  /** m3 */
  readonly volume: number;
  /** It ran over: it got at least as much. */
  readonly overflowed: boolean;
  /** Of the lane's bottles at this count that did not run over, this one among them. */
  readonly bottles: number;
  readonly mean?: number;
  /** The bottle less the mean of the others, m3; absent where it is alone. */
  readonly off?: number;
  /** What the bottles hold to their level, m3; absent where it is not known. */
  readonly level?: number;
}

/** The last bottle beside those of its lane and count; undefined where it was not weighed or can't be read. */
export const lastBottle = (
  reader: BookReader,
  floor: FillFloor,
  trials: readonly RecordedTrial[],
): LastBottle | undefined => {
  const last = trials.at(-1);
  if (last === undefined) return undefined;
  const isAlike = (one: RecordedTrial): boolean => one.lane === last.lane && one.preset === last.preset;
  // the others lend their empty bottles to those that were weighed without
  const borrows = trials.some((one) => isAlike(one) && one.gross !== undefined && one.tare === undefined);
  const alike = trials.filter((one) => isAlike(one) || (borrows && one.tare !== undefined));
  const { trials: read } = trialsInSi(reader, floor, alike);
  const own = read.find(({ trial }) => alike[trial] === last)?.fill;
  if (own?.volume === undefined) return undefined;
  const volumes = read.flatMap(({ fill: { lane, preset, volume, overflow, afterStop, throttled } }) =>
    lane === own.lane &&
    preset === own.preset &&
    overflow === 'none' &&
    afterStop !== true &&
    throttled === own.throttled &&
    volume !== undefined
      ? [volume]
      : [],
  );
  const sum = volumes.reduce((all, one) => all + one, 0);
  const overflowed = own.overflow !== 'none';
  const others = volumes.length - (overflowed || own.afterStop === true ? 0 : 1);
  const { level } = floor.inputs.model;
  return {
    lane: own.lane,
    preset: own.preset,
    volume: own.volume,
    overflowed,
    bottles: volumes.length,
    ...(volumes.length === 0 ? {} : { mean: sum / volumes.length }),
    ...(overflowed || others < 1
      ? {}
      : { off: own.volume - (others === volumes.length ? sum : sum - own.volume) / others }),
    ...(level === undefined ? {} : { level }),
  };
};
