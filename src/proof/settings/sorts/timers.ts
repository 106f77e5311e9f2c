import type { Book } from '../../../book/index.ts';
import { placedSetting } from '../make-setting.ts';
import type { SettingRow } from '../setting-row.ts';

/** Times that are typed into the control: dwell, drip, the dump of a bath, delays of the interlocks. */
export const timerSettings = (book: Book): readonly SettingRow[] => [
  ...(book.line?.stations ?? []).flatMap((station, i): readonly SettingRow[] => {
    const path = `/line/stations/${i}`;
    const at = { on: station.tag, station: station.tag };
    if (station.kind === 'fill') return [placedSetting(book, 'drip', `${path}/drip`, at)];
    if (station.kind !== 'washer') return [];
    return [
      // a dwell that comes from the cam is changed with the drive
      ...(station.dwellBy === 'drive' ? [] : [placedSetting(book, 'dwell', `${path}/dwell`, at)]),
      ...(station.zones ?? []).flatMap(({ tag, dumpEvery }, z) =>
        dumpEvery === undefined
          ? []
          : [placedSetting(book, 'dump', `${path}/zones/${z}/dumpEvery`, { on: tag, station: station.tag })],
      ),
    ];
  }),
  ...(book.line?.interlocks ?? []).flatMap(({ tag, causes = [] }, i) =>
    causes.flatMap((cause, c) =>
      cause.for === undefined
        ? []
        : [
            placedSetting(book, 'delay', `/line/interlocks/${i}/causes/${c}/for`, {
              on: tag,
              id: `delay ${tag} ${cause.on}`,
            }),
          ],
    ),
  ),
];
