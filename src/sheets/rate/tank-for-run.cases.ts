import type { SheetCase } from '../sheet-case.ts';

const usGallon = 0.003785411784;
const millionGallons = 1e6 * usGallon;

export const tankForRunCases: readonly SheetCase[] = [
  {
    name: '3.0 million gallons in 16 h from wells of 140,000 gal/h: 0.76 million gallons from storage',
    source: {
      title: 'worksheet of a municipal water department that balances wells and storage',
      place: 'example of 3.35 mgd on the maximum day; public transcription',
      mark: 'read',
    },
    inputs: {
      draw: (3 * millionGallons) / (16 * 3600),
      makeUp: (140_000 * usGallon) / 3600,
      duration: 16 * 3600,
    },
    outputs: { usable: 0.76 * millionGallons },
    tolerance: {
      relative: 1e-9,
      reason: '16 h of 140,000 gal/h are 2.24 million gallons: the example is exact',
    },
    notes: ['TANK_LEVEL_FALLS'],
  },
  {
    name: '967.4 bottles an hour of 2.09 L against a make-up of 1.2 m3/h: 8 h in steps of a second',
    source: {
      title: 'balance of masses, second by second',
      place: 'independent script',
      mark: 'computed',
    },
    inputs: { draw: (967.4 * 0.00209) / 3600, makeUp: 1.2 / 3600, duration: 8 * 3600 },
    outputs: { usable: 6.574928 },
    tolerance: { relative: 1e-9, reason: 'rounding of 28,800 sums' },
  },
  {
    name: 'a make-up of all that is drawn leaves nothing for the tank to carry',
    source: { title: 'balance of masses', place: 'worked apart from this program', mark: 'computed' },
    inputs: { draw: 0.001, makeUp: 0.0012, duration: 3600 },
    outputs: { usable: 0 },
    tolerance: { absolute: 1e-12, reason: 'nothing' },
    notes: ['TANK_CARRIED_BY_MAKE_UP'],
  },
];
