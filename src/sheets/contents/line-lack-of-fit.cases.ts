import type { SheetCase } from '../sheet-case.ts';
import { statisticsScript } from './fill-sources.ts';
import { laneFills } from './lane-fills.cases.ts';

/** Millilitres added at each preset: a hump that a straight line cannot follow. */
const hump = [0, 0, 2, 2, 4, 4, 4, 4, 2, 2, 0, 0];

export const lineLackOfFitCases: readonly SheetCase[] = [
  {
    name: 'twelve fills of a straight lane: F 0.055 of 4.534',
    source: statisticsScript,
    inputs: laneFills,
    outputs: {
      ratio: 0.05549768944,
      ratioNeeded: 4.53367695028,
      chance: 0.9927207782,
      repeatSpread: 1.08658102935e-6,
    },
    tolerance: { relative: 1e-9, reason: 'printed digits' },
  },
  {
    name: 'the same with a hump of 4 mL: F 7.26',
    source: statisticsScript,
    inputs: { ...laneFills, volumes: laneFills.volumes.map((v, i) => v + hump[i]! * 1e-6) },
    outputs: { ratio: 7.263340771342, chance: 0.017484531436695 },
    tolerance: { relative: 1e-9, reason: 'printed digits' },
    notes: ['FIT_CURVED'],
  },
];
