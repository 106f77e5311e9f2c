import { choiceField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { always, caution } from './caution.ts';

/** Gauge numbers of the sizes in AWG, 0 and below for 1/0 to 4/0; larger sizes are named by their kcmil. */
const gauges = {
  '18 AWG': 18,
  '16 AWG': 16,
  '14 AWG': 14,
  '12 AWG': 12,
  '10 AWG': 10,
  '8 AWG': 8,
  '6 AWG': 6,
  '4 AWG': 4,
  '3 AWG': 3,
  '2 AWG': 2,
  '1 AWG': 1,
  '1/0 AWG': 0,
  '2/0 AWG': -1,
  '3/0 AWG': -2,
  '4/0 AWG': -3,
} as const;
const kcmils = {
  '250 kcmil': 250,
  '300 kcmil': 300,
  '350 kcmil': 350,
  '400 kcmil': 400,
  '500 kcmil': 500,
} as const;

export const gaugeSizes: readonly string[] = [...Object.keys(gauges), ...Object.keys(kcmils)];
/** Sections of IEC 60228, mm2. */
const metric = [0.5, 0.75, 1, 1.5, 2.5, 4, 6, 10, 16, 25, 35, 50, 70, 95, 120, 150, 185, 240, 300] as const;
export const metricSizes: readonly string[] = metric.map((square) => `${square} mm2`);

/** A mil is a thousandth of an inch; a circular mil is the circle of a mil across. */
const squareOfKcmil = 1000 * (Math.PI / 4) * (0.0254 / 1000) ** 2;

/**
 * Metal in the section of a gauge or kcmil size.
 *
 * Method   d = 0.127 mm 92^((36-n)/39), n = 0, -1, -2, -3 for 1/0 to 4/0; A = pi d^2/4; 1 kcmil = 0.506707 mm2
 * Symbols  size  one of `gaugeSizes`
 * Returns  area, m2
 * Assumes  a stranded conductor has the area of the solid one, nominally
 * Cost     O(1)
 * Source   ASTM B258, definition of the American wire gauge
 */
export const gaugeArea = (size: string): number => {
  const kcmil = (kcmils as Readonly<Record<string, number>>)[size];
  if (kcmil !== undefined) return kcmil * squareOfKcmil;
  const n = (gauges as Readonly<Record<string, number>>)[size]!;
  const diameter = 0.127e-3 * 92 ** ((36 - n) / 39);
  return (Math.PI / 4) * diameter * diameter;
};

export const wireGaugeSheet = defineSheet({
  id: 'power/wire-gauge',
  version: 1,
  inputs: { size: choiceField('n', gaugeSizes) },
  outputs: {
    diameter: numberField('length', 'd'),
    area: numberField('conductorArea', 'A'),
    metric: choiceField('S', metricSizes),
  },
  formula: [
    'd = 0.127\\,\\mathrm{mm} \\cdot 92^{(36 - n)/39}, \\quad A = \\frac{\\pi d^2}{4}',
    'S = \\min \\{ s \\ge A \\}',
  ],
  limits: [caution, always('METRIC_NOT_EQUIVALENT')],
  sources: [{ title: 'ASTM B258', place: 'definition of the American wire gauge', mark: 'memory' }],
  compute: ({ size }: { readonly size: string }) => {
    const area = gaugeArea(size);
    return {
      diameter: Math.sqrt((4 * area) / Math.PI),
      area,
      metric: metricSizes[metric.findIndex((square) => square * 1e-6 >= area)]!,
    };
  },
});
