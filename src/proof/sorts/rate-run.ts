import type { Working } from '../../floor/assessment.ts';
import { stationOf } from '../../floor/station-of.ts';
import { runSheet } from '../../sheets/frame.ts';
import { agreedPeriodSheet } from '../../sheets/rate/agreed-period.ts';
import type { Check } from '../check.ts';
import type { ConditionId } from '../condition.ts';
import { drivenConditions } from '../driven-conditions.ts';
import { pacePlaces } from '../figure-places.ts';
import type { Limit } from '../limit.ts';
import { makeCheck } from '../make-check.ts';
import { placeFigure } from '../place-figure.ts';
import type { ProofContext } from '../proof-context.ts';
import { warmZones } from './washing.ts';

/** Indexes in a row under the watch, so that the holds among them are seen; common practice. */
const indexes = 30;

/** Everything that the rate of the site rests on. */
const runConditions = (c: ProofContext): readonly ConditionId[] => [
  'manifoldPressure',
  'supplySteady',
  'product',
  'lineAtIndex',
  ...drivenConditions(c),
  ...warmZones(c),
  'bottles',
  'caps',
];

/** Longest mean time of a row that still gives the agreed rate. */
const rowTime = (c: ProofContext): { readonly limit: Limit; readonly places: readonly string[] } => {
  const fill = stationOf(c.book, 'fill');
  const path = fill === undefined ? '/line/stations' : `${fill.path}/lanes`;
  const bottles = fill?.station.lanes?.filter(({ out }) => out !== true).length;
  const rate = placeFigure(c.book, c.ratePath, 'rate');
  const run =
    bottles === undefined || rate.value === undefined
      ? undefined
      : runSheet(agreedPeriodSheet, { rate: rate.value, bottles });
  const missing = [...rate.missing, ...(bottles === undefined ? [path] : [])];
  const common = { id: 'cycleTime', kind: 'time', assumed: [] } as const;
  if (run === undefined || !run.ok || bottles === undefined || rate.value === undefined) {
    return { limit: { sense: 'most', figure: { ...common, missing } }, places: [c.ratePath] };
  }
  const { outputs, notes } = run.value;
  const working: Working = {
    sheet: agreedPeriodSheet.id,
    version: agreedPeriodSheet.version,
    inputs: { rate: rate.value, bottles },
    outputs: { ...outputs },
    notes,
    from: { rate: { path: c.ratePath }, bottles: { path } },
  };
  return {
    limit: {
      sense: 'most',
      figure: { ...common, value: outputs.period, missing: [] },
      working,
      fields: agreedPeriodSheet.inputs,
    },
    places: [c.ratePath, path],
  };
};

/** The agreed rate by the watch, over the agreed run, and the share of it in which the line ran. */
export const rateRunChecks = (c: ProofContext): readonly Check[] => {
  if (c.format === undefined) return [];
  const { tag } = c.format;
  const agreed = c.ratePath.replace(/\/rate$/, '');
  const rate = placeFigure(c.book, c.ratePath, 'rate');
  const efficiency = placeFigure(c.book, `${agreed}/efficiency`, 'ratio');
  const length = placeFigure(c.book, '/agreement/acceptanceRun', 'time');
  const period = rowTime(c);
  const noise = placeFigure(c.book, '/agreement/noiseLevel', 'soundLevel');
  const foreseen = (id: string) => {
    const finding = c.finding(id);
    return finding === undefined ? {} : { foreseen: finding.verdict };
  };
  const conditions = runConditions(c);
  const common = { point: 'witness', conditions } as const;
  const pace = pacePlaces(c.hereIndex, c.book);
  const run = ['/agreement/acceptanceRun', '/agreement/allowedStops', c.ratePath, ...pace];
  const duration = length.value === undefined ? {} : { duration: length.value };
  return [
    makeCheck('cycleTime', [tag], 'run', {
      ...common,
      ...foreseen('runningRate'),
      instrument: 'stopwatch',
      readings: indexes,
      judged: 'mean',
      limits: [period.limit],
      missing: period.limit.figure.missing,
      places: [...period.places, ...pace],
    }),
    makeCheck('rate', [tag], 'run', {
      ...common,
      ...duration,
      ...foreseen('hourRate'),
      limits: [{ sense: 'least', figure: rate }],
      missing: [...rate.missing, ...length.missing],
      places: run,
      after: [`cycleTime ${tag}`],
    }),
    ...(efficiency.value === undefined
      ? []
      : [
          makeCheck('efficiency', [tag], 'run', {
            ...common,
            limits: [{ sense: 'least', figure: efficiency }],
            missing: length.missing,
            places: [...run, `${agreed}/efficiency`],
            // told from the same run
            after: [`rate ${tag}`],
          }),
        ]),
    makeCheck('noise', [], 'run', {
      point: 'witness',
      instrument: 'soundLevelMeter',
      limits: [{ sense: 'most', figure: noise }],
      places: ['/agreement/noise', '/agreement/noiseLevel'],
      missing: noise.missing,
      parts: { limit: c.book.agreement?.noise ?? '' },
      conditions: ['lineAtIndex', 'bottles'],
    }),
  ];
};
