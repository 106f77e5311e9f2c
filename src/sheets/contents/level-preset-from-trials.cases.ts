import type { SheetCase } from '../sheet-case.ts';
import { statisticsScript } from './fill-sources.ts';
import { laneFills } from './lane-fills.cases.ts';

const bottles = {
  ...laneFills,
  capacities: [503.1e-6, 501.8e-6, 504.2e-6, 502.6e-6, 503.9e-6, 502.2e-6, 503.5e-6, 502.9e-6],
} as const;

export const levelPresetFromTrialsCases: readonly SheetCase[] = [
  {
    name: 'twelve fills and eight bottles, next bottle: preset 1010',
    source: statisticsScript,
    inputs: { ...bottles, rule: 'predictive' },
    outputs: {
      preset: 1010,
      exactPreset: 1009.518314630822,
      volume: 506.952880952e-6,
      over: 3.927880952381e-6,
      spread: 1.270334235457e-6,
      dof: 16.73619969487,
      factor: 2.903888971773,
      chance: 0.9966442124441,
    },
    tolerance: { relative: 1e-9, reason: 'printed digits' },
  },
  {
    name: 'the same by a tolerance bound of 95 %: preset 1012',
    source: statisticsScript,
    inputs: { ...bottles, rule: 'tolerance' },
    outputs: {
      preset: 1012,
      exactPreset: 1011.3382505951715,
      volume: 507.946552381e-6,
      spread: 1.189071166119e-6,
      dof: 16.67533004994,
      factor: 3.862962551367,
    },
    tolerance: { relative: 1e-8, reason: 'printed digits; the noncentral t of the script is good to nine' },
  },
];
