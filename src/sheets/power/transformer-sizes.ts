import type { Source } from '../frame.ts';

export const transformerSizeTable: Source = {
  title: 'selection tables of transformer makers, US and IEC rows',
  edition: 'current',
  place: 'public pages',
  mark: 'read',
};

/** Preferred numbers R10 of ISO 3, which IEC 60076-1 prefers for ratings, kVA; from memory. */
const smallPreferred = [1, 1.25, 1.6, 2, 2.5, 3.15, 4, 5, 6.3, 8, 10, 12.5, 16, 20, 25, 31.5, 40, 50, 63, 80];
/** Where the IEC rows of the makers' tables begin, VA. */
export const iecTablesBegin = 100e3;

/** VA, three-phase, rising. */
export const transformerSizes = {
  us: [3, 4.5, 6, 9, 15, 22.5, 30, 45, 75, 112.5, 150, 225, 300, 500, 750, 1000].map((kva) => kva * 1000),
  iec: [...smallPreferred, 100, 160, 250, 315, 400, 500, 630, 800, 1000, 1250, 1600, 2000, 2500].map(
    (kva) => kva * 1000,
  ),
} as const;

export type TransformerList = keyof typeof transformerSizes;
export const transformerLists = Object.keys(transformerSizes) as TransformerList[];
