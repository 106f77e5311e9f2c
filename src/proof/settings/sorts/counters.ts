import type { Book } from '../../../book/index.ts';
import { stationOf } from '../../../floor/station-of.ts';
import { makeSetting } from '../make-setting.ts';
import type { SettingRow } from '../setting-row.ts';

/** The counts of each lane for each format: what is typed into the counters. */
export const counterSettings = (book: Book): readonly SettingRow[] => {
  const fill = stationOf(book, 'fill');
  if (fill === undefined) return [];
  const { lanes = [], tag: station } = fill.station;
  return (book.line?.formats ?? []).flatMap(({ tag: format }) =>
    lanes
      .filter(({ out }) => out !== true)
      .flatMap((lane): readonly SettingRow[] => {
        const own = lane.presets?.find((one) => one.format === format);
        const common = { on: lane.tag, station, format, form: { is: 'count' } as const };
        const counted = (count: number | undefined) =>
          count === undefined ? {} : { designed: String(count) };
        const twoSpeeds = [own?.changeOver, lane.changeOver, lane.kvSlow].some((one) => one !== undefined);
        return [
          makeSetting('preset', { ...common, ...counted(own?.preset ?? lane.preset) }),
          ...(twoSpeeds
            ? [makeSetting('changeOver', { ...common, ...counted(own?.changeOver ?? lane.changeOver) })]
            : []),
        ];
      }),
  );
};
