import demoText from '../../../book/demo/flagon-line.json?raw';
import { type Book, type Patch, patchBook, readBook } from '../../../book/index.ts';

const read = readBook(demoText);
if (!read.ok) throw new Error(JSON.stringify(read.problems));

/** The demo book; its floors are the builder's and the customer's. */
export const demoBook: Book = read.value;
export const [oxbow, larkmoor] = [0, 1] as const;

/** The place of a station in the demo book. */
export const stationPath = (tag: string): string =>
  `/line/stations/${demoBook.line!.stations!.findIndex((station) => station.tag === tag)}`;

export const patched = (...patches: readonly Patch[]): Book => {
  const result = patchBook(demoBook, patches);
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.value;
};

/** Takes away all that makes the demo line stand or lose a bottle, and whoever loads it: what is left is its cycle. */
export const withoutChance: readonly Patch[] = [
  ...demoBook.line!.stations!.map((_, i) => ({ path: `/line/stations/${i}/stops`, value: [] })),
  { path: `${stationPath('+CAP')}/chute/stops`, value: [] },
  { path: `${stationPath('+CAP')}/rejected`, value: '0 %' },
  { path: `${stationPath('+SETUP')}/fallen`, value: '0 %' },
  { path: `${stationPath('+LOAD')}/rate` },
  ...demoBook.line!.stopDevices!.flatMap((_, i) =>
    ['between', 'restart'].map((field) => ({ path: `/line/stopDevices/${i}/${field}` })),
  ),
];
