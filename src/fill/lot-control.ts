import type { Problem } from '../quantity/problem.ts';
import { capabilityLowerSheet } from '../sheets/contents/capability-lower.ts';
import { cusumChartSheet } from '../sheets/contents/cusum-chart.ts';
import { ewmaChartSheet } from '../sheets/contents/ewma-chart.ts';
import { individualsChartSheet } from '../sheets/contents/individuals-chart.ts';
import { laneDifferencesSheet } from '../sheets/contents/lane-differences.ts';
import { volumeSpreadSheet } from '../sheets/contents/volume-spread.ts';
import {
  makeWorksheet,
  outputOf,
  type Step,
  type StepInput,
  type StepOrigin,
  type Worksheet,
} from './worksheet.ts';

/** A filled bottle of a run, in the order in which it came. */
export interface RunBottle {
  /** m3, at the reference temperature. */
  readonly volume: number;
  readonly lane?: string;
}

export interface RunQuestions {
  /** m3, what the lanes were set for; the mean of the run itself where nothing is said. */
  readonly target?: number;
  /** m3, standard deviation of a lane as it was accepted; from neighbours in the run where nothing is said. */
  readonly spread?: number;
  /** m3, under which no bottle should be: label less deficiency, or the level. */
  readonly lowest?: number;
  /** Of the bounds; 0.95 where nothing is said. */
  readonly confidence?: number;
  /** Of the newest bottle in the moving average; 0.2 where nothing is said. */
  readonly weight?: number;
}

export type Drift = 'up' | 'down' | 'none' | 'unknown';

/** One lane of a run, or all bottles where no lanes are known; numbers are steps of the worksheet. */
export interface RunSeries {
  readonly lane?: string;
  readonly bottles: number;
  readonly chart?: number;
  readonly average?: number;
  readonly sums?: number;
  readonly capability?: number;
  readonly drift: Drift;
  /** The bottle of this series at which the drift was seen, from 1. */
  readonly seenAt?: number;
}

export interface RunControl {
  readonly series: readonly RunSeries[];
  /** Lanes in the order in which the sheet of lanes numbers them. */
  readonly lanes: readonly string[];
  /** Step of the comparison of the lanes. */
  readonly comparison?: number;
  readonly lanesDiffer?: boolean;
  readonly remarks: readonly Problem[];
  readonly problems: readonly Problem[];
  readonly steps: readonly Step[];
}

/** Half of a shift of one standard deviation, and five of them: by common practice a false alarm in some 470 bottles. */
const sums = { slack: 0.5, decision: 5 } as const;

const fewest = 3;

const seen = (
  sheet: Worksheet,
  target: number,
  average: number | undefined,
  cusum: number | undefined,
): Pick<RunSeries, 'drift' | 'seenAt'> => {
  if (average === undefined || cusum === undefined) return { drift: 'unknown' };
  const at = (step: number, output: string) => sheet.number(outputOf(step, output));
  const first = at(average, 'firstSignal');
  const averages = sheet.steps[average]!.outputs.averages as readonly number[];
  const signals = [
    { at: first, drift: (averages[first - 1] ?? target) > target ? 'up' : 'down' },
    { at: at(cusum, 'firstHigh'), drift: 'up' },
    { at: at(cusum, 'firstLow'), drift: 'down' },
  ] as const;
  const earliest = signals.filter(({ at: bottle }) => bottle > 0).sort((a, b) => a.at - b.at)[0];
  return earliest === undefined ? { drift: 'none' } : { drift: earliest.drift, seenAt: earliest.at };
};

const stepOf = (run: ReturnType<Worksheet['run']>): number | undefined => (run.ok ? run.value : undefined);

const followed = (
  sheet: Worksheet,
  lane: string | undefined,
  values: readonly number[],
  questions: RunQuestions,
): RunSeries => {
  const named = { ...(lane === undefined ? {} : { lane }), bottles: values.length };
  if (values.length < fewest || values.every((value) => value === values[0])) {
    return { ...named, drift: 'unknown' };
  }
  const chart = stepOf(sheet.run(individualsChartSheet, { values }));
  if (chart === undefined) return { ...named, drift: 'unknown' };
  const own = (output: string): StepOrigin => outputOf(chart, output);
  const target: StepInput = questions.target ?? own('mean');
  const spread: StepInput = questions.spread ?? own('spread');
  const sigma = questions.spread ?? sheet.number(own('spread'));
  const average = stepOf(sheet.run(ewmaChartSheet, { values, target, spread, weight: questions.weight }));
  const cusum = stepOf(
    sheet.run(cusumChartSheet, {
      values,
      target,
      slack: sums.slack * sigma,
      decision: sums.decision * sigma,
    }),
  );
  const { lowest, confidence } = questions;
  const found =
    lowest === undefined ? undefined : stepOf(sheet.run(volumeSpreadSheet, { values, confidence }));
  const capability =
    found === undefined
      ? undefined
      : stepOf(
          sheet.run(capabilityLowerSheet, {
            lowest,
            mean: outputOf(found, 'mean'),
            spread: outputOf(found, 'spread'),
            bottles: values.length,
            confidence,
          }),
        );
  return {
    ...named,
    chart,
    ...(average === undefined ? {} : { average }),
    ...(cusum === undefined ? {} : { sums: cusum }),
    ...(capability === undefined ? {} : { capability }),
    ...seen(sheet, questions.target ?? sheet.number(own('mean')), average, cusum),
  };
};

const wrongVolumes = (bottles: readonly RunBottle[]): readonly Problem[] =>
  bottles.flatMap(({ volume }, i) =>
    Number.isFinite(volume) && volume > 0
      ? []
      : [{ code: 'RUN_VOLUME', path: `${i}/volume`, given: volume, allowed: '> 0' }],
  );

/**
 * A run of bottles, for the check after hand-over: do the lanes differ, has a lane drifted, how many may be short.
 *
 * Method   lanes: analysis of variance;  each lane: chart of single bottles, moving average and sums against what it
 *          was set for, capability to the lower side with its bound
 * Symbols  bottles    [n]  in the order filled
 *          questions       target and spread as accepted, lowest contents
 * Returns  series by lane with their steps; `unknown` where a series says too little
 * Assumes  lanes are never mixed in a series; without lanes in the data all bottles are one
 * Cost     O(n)
 * Source   the sheets of the steps
 */
export const runControl = (bottles: readonly RunBottle[], questions: RunQuestions = {}): RunControl => {
  const sheet = makeWorksheet();
  const problems = wrongVolumes(bottles);
  if (problems.length > 0) return { series: [], lanes: [], remarks: [], problems, steps: [] };
  const known = bottles.length > 0 && bottles.every(({ lane }) => lane !== undefined);
  const lanes = known ? [...new Set(bottles.map(({ lane }) => lane!))] : [];
  const volumesOf = (lane: string): readonly number[] =>
    bottles.filter((bottle) => bottle.lane === lane).map(({ volume }) => volume);
  const comparison =
    lanes.length < 2 || bottles.length < fewest
      ? undefined
      : stepOf(
          sheet.run(laneDifferencesSheet, {
            lanes: bottles.map(({ lane }) => lanes.indexOf(lane!) + 1),
            values: bottles.map(({ volume }) => volume),
            confidence: questions.confidence,
          }),
        );
  const series = known
    ? lanes.map((lane) => followed(sheet, lane, volumesOf(lane), questions))
    : [
        followed(
          sheet,
          undefined,
          bottles.map(({ volume }) => volume),
          questions,
        ),
      ];
  return {
    series,
    lanes,
    ...(comparison === undefined
      ? {}
      : {
          comparison,
          lanesDiffer:
            sheet.number(outputOf(comparison, 'ratio')) > sheet.number(outputOf(comparison, 'ratioNeeded')),
        }),
    remarks: [
      ...(known || bottles.length === 0 ? [] : [{ code: 'RUN_NO_LANES', path: 'lane' }]),
      ...(questions.target === undefined ? [{ code: 'RUN_TARGET_OWN', path: 'target' }] : []),
      ...(questions.spread === undefined ? [{ code: 'RUN_SPREAD_OWN', path: 'spread' }] : []),
      ...series
        .filter(({ bottles: n }) => n < fewest)
        .map(({ lane = '', bottles: given }) => ({
          code: 'RUN_FEW',
          path: lane,
          given,
          allowed: `>= ${fewest}`,
        })),
    ],
    problems: sheet.problems,
    steps: sheet.steps,
  };
};
