import type { Book } from '../../book/index.ts';
import type { LineStop } from '../../line/shift/index.ts';
import type { BookReader } from '../book-reader.ts';
import { usualOwner } from './stops-here.ts';

/** Station of each thing that a stop device may act on. */
const stationsOfThings = (book: Book): ReadonlyMap<string, string> => {
  const { stations = [], drives = [], cylinders = [], devices = [] } = book.line ?? {};
  const found = new Map<string, string>();
  for (const each of [...drives, ...cylinders, ...devices]) {
    if (each.station !== undefined) found.set(each.tag, each.station);
  }
  for (const station of stations) {
    found.set(station.tag, station.tag);
    if (station.kind === 'fill') for (const lane of station.lanes ?? []) found.set(lane.tag, station.tag);
    if (station.kind === 'washer' || station.kind === 'conveyor') {
      if (station.drive !== undefined) found.set(station.drive, station.tag);
    }
  }
  return found;
};

/**
 * Emergency stops and guard openings of which the book says how often they come.
 *
 * Returns  one each; it strikes the stations of the things in its row of the cause-and-effect table, all where it has none
 */
export const lineStops = (reader: BookReader): readonly LineStop[] => {
  const { book } = reader;
  const stationOf = stationsOfThings(book);
  return (book.line?.stopDevices ?? []).flatMap((device, i): LineStop[] => {
    if (device.between === undefined && device.restart === undefined) return [];
    const path = `/line/stopDevices/${i}`;
    const between = reader.needed(`${path}/between`, 'time');
    const clear = reader.needed(`${path}/restart`, 'time');
    if (between === undefined || clear === undefined) return [];
    const struck = (device.effects ?? []).flatMap(({ on }) => stationOf.get(on) ?? []);
    const stations =
      struck.length > 0 ? [...new Set(struck)] : (book.line?.stations ?? []).map(({ tag }) => tag);
    return [{ cause: device.tag, stations, between, clear, owner: device.owner ?? usualOwner }];
  });
};
