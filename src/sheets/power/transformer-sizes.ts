import type { Source } from '../frame.ts';

export const transformerSizeTable: Source = {
  title: 'selection tables of transformer makers, US and IEC rows',
  edition: 'current',
  place: 'public pages',
  mark: 'read',
};

/** VA, three-phase, rising. */
export const transformerSizes = {
  us: [3, 4.5, 6, 9, 15, 22.5, 30, 45, 75, 112.5, 150, 225, 300, 500, 750, 1000].map((kva) => kva * 1000),
  iec: [100, 160, 250, 315, 400, 500, 630, 800, 1000, 1250, 1600, 2000, 2500].map((kva) => kva * 1000),
} as const;

export type TransformerList = keyof typeof transformerSizes;
export const transformerLists = Object.keys(transformerSizes) as TransformerList[];
