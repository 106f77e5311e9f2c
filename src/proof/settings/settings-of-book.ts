import type { Book } from '../../book/index.ts';
import { makeSetting } from './make-setting.ts';
import type { SettingRow } from './setting-row.ts';
import { bathSettings } from './sorts/baths.ts';
import { counterSettings } from './sorts/counters.ts';
import { driveSettings } from './sorts/drives.ts';
import { ownSettings } from './sorts/own.ts';
import { positionSettings } from './sorts/positions.ts';
import { pressureSettings } from './sorts/pressures.ts';
import { timerSettings } from './sorts/timers.ts';

const changeParts = (book: Book): readonly SettingRow[] =>
  (book.line?.formats ?? []).flatMap(({ tag: format, changeParts: parts = [] }) =>
    parts.map(({ tag, name, station }) =>
      makeSetting('changePart', {
        id: `changePart ${tag}`,
        on: tag,
        format,
        ...(name === undefined ? {} : { name }),
        ...(station === undefined ? {} : { station }),
      }),
    ),
  );

const program: readonly SettingRow[] = [
  makeSetting('program', {}),
  makeSetting('backup', { form: { is: 'digest' } }),
];

/** Tags of the stations in the order of the book; what stands at none comes behind them. */
const orderOf = (book: Book): ((row: SettingRow) => number) => {
  const stations = (book.line?.stations ?? []).map(({ tag }) => tag);
  return ({ station }) => {
    const place = station === undefined ? -1 : stations.indexOf(station);
    return place < 0 ? stations.length : place;
  };
};

/**
 * Everything of a line that can be turned, typed or moved, station by station.
 *
 * Returns  rows with ids that stay the same whatever else the book gains
 * Assumes  the book has been read
 * Cost     O(size of the book), once more for each setting that the book adds
 */
export const settingsOfBook = (book: Book): readonly SettingRow[] => {
  const order = orderOf(book);
  return [
    ...counterSettings(book),
    ...timerSettings(book),
    ...bathSettings(book),
    ...driveSettings(book),
    ...pressureSettings(book),
    ...positionSettings(book),
    ...changeParts(book),
    ...ownSettings(book),
    ...program,
  ].sort((a, b) => order(a) - order(b));
};
