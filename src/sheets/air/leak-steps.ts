import { listField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { listLengths } from '../list-lengths.ts';
import { gaugePressures, roomTemperatures, vessels } from './bounds.ts';
import { normalPressure, normalTemperature } from './dry-air.ts';

/** A straight line y = slope x + intercept. */
export interface Line {
  readonly slope: number;
  readonly intercept: number;
}

/**
 * Straight line of least squares through points.
 *
 * Method   slope = sum (x - mx)(y - my)/sum (x - mx)^2;  intercept = my - slope mx
 * Symbols  x, y  [n]  at least two different x
 * Returns  slope and intercept
 * Cost     O(n)
 * Source   Gauss
 */
export const leastSquaresLine = (x: readonly number[], y: readonly number[]): Line => {
  const mean = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0) / values.length;
  const [mx, my] = [mean(x), mean(y)];
  let top = 0;
  let bottom = 0;
  x.forEach((value, i) => {
    top += (value - mx) * (y[i]! - my);
    bottom += (value - mx) * (value - mx);
  });
  const slope = top / bottom;
  return { slope, intercept: my - slope * mx };
};

/** Mean pressure, fall and span of every step between readings, in the order of time. */
const stepsInOrder = (times: readonly number[], pressures: readonly number[]) => {
  const order = times.map((_, i) => i).sort((a, b) => times[a]! - times[b]!);
  const t = order.map((i) => times[i]!);
  const p = order.map((i) => pressures[i]!);
  return {
    means: p.slice(1).map((value, i) => 0.5 * (value + p[i]!)),
    falls: p.slice(1).map((value, i) => p[i]! - value),
    spans: t.slice(1).map((value, i) => value - t[i]!),
  };
};

interface LeakStepsInputs {
  readonly volume: number;
  readonly times: readonly number[];
  readonly pressures: readonly number[];
  readonly temperature: number;
  readonly workingPressure: number;
}

export const leakStepsSheet = defineSheet({
  id: 'air/leak-steps',
  version: 1,
  inputs: {
    volume: numberField('volume', 'V', vessels),
    times: listField('time', 't_i', { least: 0, most: 1e8, fewest: 3 }),
    pressures: listField('gaugePressure', 'p_i', { ...gaugePressures, fewest: 3 }),
    temperature: numberField('temperature', 'T', roomTemperatures),
    workingPressure: numberField('gaugePressure', 'p', gaugePressures),
  },
  outputs: {
    losses: listField('normalAirFlow', 'q_i'),
    slope: numberField('sonicConductance', 'm'),
    intercept: numberField('normalAirFlow', 'b'),
    leak: numberField('normalAirFlow', 'q'),
  },
  formula: [
    'q_i = \\frac{V (p_i - p_{i+1})}{p_n (t_{i+1} - t_i)} \\frac{T_n}{T} \\quad \\text{at} \\quad \\frac{p_i + p_{i+1}}{2}',
    '\\min_{m, b} \\sum_i \\left( m \\frac{p_i + p_{i+1}}{2} + b - q_i \\right)^2, \\quad q = m p + b',
  ],
  limits: [
    {
      code: 'LEAK_STEPS_EXTRAPOLATED',
      broken: ({ pressures, workingPressure }) =>
        workingPressure > Math.max(...pressures) || workingPressure < Math.min(...pressures),
    },
    { code: 'LEAK_STEPS_RISE', broken: (_, { losses }) => losses.some((loss) => loss <= 0) },
    { code: 'LEAK_STEPS_STEEP', broken: (_, { intercept }) => intercept < 0 },
    { code: 'AIR_REFERENCE', broken: () => true },
    { code: 'CAUTION_COMPRESSED_AIR', broken: () => true },
  ],
  sources: [
    {
      title: 'US Navy MO-209, Maintenance of steam, hot water and compressed air distribution systems',
      place: 'tables 5-3 and 5-4, public transcription',
      mark: 'read',
    },
  ],
  check: ({ times, pressures }) => {
    const problems = listLengths({ times, pressures });
    if (problems.length > 0) return problems;
    if (new Set(times).size < times.length) {
      return [{ code: 'LEAK_STEPS_TIMES', path: 'times', allowed: 'every time once' }];
    }
    const { means } = stepsInOrder(times, pressures);
    const flat = Math.max(...means) - Math.min(...means) <= 1e-9 * Math.max(...means.map(Math.abs));
    return flat ? [{ code: 'LEAK_STEPS_FLAT', path: 'pressures', allowed: 'pressures that fall' }] : [];
  },
  compute: ({ volume, times, pressures, temperature, workingPressure }: LeakStepsInputs) => {
    const { means, falls, spans } = stepsInOrder(times, pressures);
    const losses = falls.map(
      (fall, i) => ((volume * fall) / (normalPressure * spans[i]!)) * (normalTemperature / temperature),
    );
    const { slope, intercept } = leastSquaresLine(means, losses);
    return { losses, slope, intercept, leak: slope * workingPressure + intercept };
  },
});
