import type { BookReader } from '../../floor/book-reader.ts';
import type { FillFloor } from '../../floor/fill/fill-floor.ts';
import { type TrialInSi, trialsInSi } from '../../floor/fill/index.ts';
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

type Fill = TrialInSi['fill'];

/** What trials came to that need no other to be read, by id; nothing where one can't be read. */
export type ReadAlone = Map<string, Fill | undefined>;

/**
 * The last bottle beside those of its lane and count; undefined where it was not weighed or can't be read.
 *
 * Symbols  alone  what was read before with this reader and floor: of a thousand bottles one is read
 */
export const lastBottle = (
  reader: BookReader,
  floor: FillFloor,
  trials: readonly RecordedTrial[],
  alone: ReadAlone = new Map(),
): LastBottle | undefined => {
  const last = trials.at(-1);
  if (last === undefined) return undefined;
  const isAlike = (one: RecordedTrial): boolean => one.lane === last.lane && one.preset === last.preset;
  // the others lend their empty bottles to those that were weighed without
  const borrows = trials.some((one) => isAlike(one) && one.gross !== undefined && one.tare === undefined);
  const alike = trials.filter((one) => isAlike(one) || (borrows && one.tare !== undefined));
  const known: ReadAlone = borrows ? new Map() : alone;
  const fresh = alike.filter(({ id }) => !known.has(id));
  for (const { id } of fresh) known.set(id, undefined);
  for (const { trial, fill } of trialsInSi(reader, floor, fresh).trials) known.set(fresh[trial]!.id, fill);
  const own = known.get(last.id);
  if (own?.volume === undefined) return undefined;
  const read = alike.flatMap(({ id }) => known.get(id) ?? []);
  const volumes = read.flatMap(({ lane, preset, volume, overflow, afterStop, throttled }) =>
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
