import type { SheetCase } from '../sheet-case.ts';
import { guideLine, laneScript } from './fill-sources.ts';
import { laneFills } from './lane-fills.cases.ts';

/**
 * Its corrections with 1 degC written as 1 mL, its temperatures less 20 degC in thousandths, so that presets are
 * whole numbers; one degree is added to every correction, which moves the intercept alone.
 */
const thermometer = {
  counts: [1521, 2012, 2512, 3003, 3507, 3999, 4513, 5002, 5503, 6010, 6511],
  volumes: [0.829, 0.831, 0.834, 0.841, 0.836, 0.835, 0.844, 0.843, 0.841, 0.839, 0.84].map((y) => y * 1e-6),
  preset: 10_000,
} as const;

export const laneLineCases: readonly SheetCase[] = [
  {
    name: 'one lane, six presets, two fills each: 0.49684 mL a count and 5.15 mL after the count',
    source: laneScript,
    inputs: { ...laneFills, preset: 990 },
    outputs: {
      afterRun: 5.148809523809e-6,
      perCount: 0.4968357142857e-6,
      afterRunUncertainty: 1.25605e-6,
      perCountUncertainty: 0.00144875e-6,
      correlation: -0.980407,
      scatter: 0.8570907325e-6,
      dof: 10,
      volume: 497.01617e-6,
      meanBand: 0.71285e-6,
      singleBand: 2.03842e-6,
      afterRunRatio: 4.09922,
      ratioNeeded: 2.228138852,
    },
    tolerance: { relative: 1e-5, reason: 'six printed digits' },
    notes: ['LINE_AFTER_RUN_REAL'],
  },
  {
    name: 'GUM H.3, thermometer: a -0.1712, line at 30 degC -0.1494 with u 0.0041, 9 degrees of freedom',
    source: guideLine,
    inputs: thermometer,
    outputs: { afterRun: 0.8288e-6, dof: 9, volume: 0.8506e-6, meanUncertainty: 0.0041e-6 },
    tolerance: { absolute: 0.00005e-6, reason: 'half of the last printed digit' },
    notes: ['LINE_FEW_TRIALS', 'LINE_BEYOND_TRIALS'],
  },
  {
    name: 'GUM H.3, thermometer: b 0.00218, u(b) 0.00067, r -0.930',
    source: guideLine,
    inputs: thermometer,
    outputs: { perCount: 2.18e-12, perCountUncertainty: 0.67e-12, correlation: -0.93 },
    tolerance: { relative: 4e-3, reason: 'two and three printed digits' },
  },
  {
    name: 'GUM H.3, thermometer, with more digits',
    source: laneScript,
    inputs: thermometer,
    outputs: {
      perCount: 2.1826977e-12,
      afterRunUncertainty: 0.0028776e-6,
      perCountUncertainty: 0.66793877e-12,
      scatter: 0.00349756e-6,
    },
    tolerance: { relative: 2e-6, reason: 'six printed digits' },
  },
];
