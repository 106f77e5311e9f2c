import type { SheetCase } from '../sheet-case.ts';
import { statisticsScript } from './fill-sources.ts';
import { laneFills } from './lane-fills.cases.ts';

export const presetOfLineCases: readonly SheetCase[] = [
  {
    name: 'preset for 500 mL of one fill: 996.006, u 1.845; limits where the band of the line ends',
    source: statisticsScript,
    inputs: { ...laneFills, target: 500e-6 },
    outputs: {
      preset: 996.006,
      uncertainty: 1.8453244267,
      slopeDoubt: 4.2212827524e-5,
      lowest: 991.9001071221,
      highest: 1000.1235680301,
    },
    tolerance: { relative: 1e-6, reason: 'seven printed digits' },
  },
  {
    name: 'the mean of four fills is placed more closely',
    source: statisticsScript,
    inputs: { ...laneFills, target: 500e-6, repeats: 4 },
    outputs: { uncertainty: 1.0831655641, lowest: 993.5983354885, highest: 998.4253396637 },
    tolerance: { relative: 1e-9, reason: 'eleven printed digits' },
  },
];
