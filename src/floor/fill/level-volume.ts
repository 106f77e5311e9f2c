import { volumeAtLevelSheet } from '../../sheets/contents/volume-at-level.ts';
import { runSheet } from '../../sheets/frame.ts';
import type { BookReader } from '../book-reader.ts';
import type { FloorInputs } from '../read-floor.ts';
import type { TypedNumber } from './typed-number.ts';

/** A ruler at the glass, with the eye at the height of the liquid, half width in m. */
const byRuler = 1e-3;
const millimetre = 1e-3;

/** What a bottle holds by the height of its liquid; undefined without a profile that reaches so high. */
export const levelVolume = (
  reader: BookReader,
  { format, formatPath }: Pick<FloorInputs, 'format' | 'formatPath'>,
  level: TypedNumber,
): { readonly volume: number; readonly deviation: number } | undefined => {
  const points = (format?.profile ?? []).flatMap((_, i) => {
    const height = reader.number(`${formatPath}/profile/${i}/height`, 'length');
    const volume = reader.number(`${formatPath}/profile/${i}/volume`, 'volume');
    return height === undefined || volume === undefined ? [] : [{ height, volume }];
  });
  const found = runSheet(volumeAtLevelSheet, {
    heights: points.map(({ height }) => height),
    volumes: points.map(({ volume }) => volume),
    level: level.value,
  });
  if (!found.ok) return undefined;
  const { volume, millimetre: perMillimetre } = found.value.outputs;
  const read = level.deviation ?? byRuler / Math.sqrt(3);
  return { volume, deviation: (perMillimetre / millimetre) * read };
};
