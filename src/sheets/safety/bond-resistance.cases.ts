import type { SheetCase } from '../sheet-case.ts';
import { byHand, referenceCases } from './sources.ts';

const nec = {
  title: 'NEC chapter 9, table 8',
  edition: '2008',
  place: 'solid uncoated copper at 75 degC, public transcription; areas from the definition of the gauge',
  mark: 'read',
} as const;
/** Gauge and ohm in 1000 ft, as printed. */
const solid = [
  [14, 3.07],
  [12, 1.93],
  [10, 1.21],
  [8, 0.764],
] as const;
/** m2: the diameter is 0.127 mm times 92 to the power of (36 - n)/39. */
const gaugeArea = (gauge: number): number => 0.25 * Math.PI * (0.127e-3 * 92 ** ((36 - gauge) / 39)) ** 2;

export const bondResistanceCases: readonly SheetCase[] = [
  {
    name: '10 m of 4 mm2 copper: 0.0431 ohm',
    source: referenceCases,
    inputs: { length: 10, area: 4e-6, contacts: 0, leads: 0, measured: 0.0431 },
    outputs: { conductor: 0.0431, expected: 0.0431, bond: 0.0431, share: 1 },
    tolerance: { relative: 1e-3, reason: 'three printed digits' },
    notes: ['CAUTION_GUARDING', 'BOND_TEST_CURRENT'],
  },
  ...solid.map(([gauge, ohm]) => ({
    name: `1000 ft of ${gauge} AWG solid at 75 degC: ${ohm} ohm`,
    source: nec,
    inputs: {
      length: 304.8,
      area: gaugeArea(gauge),
      temperature: 348.15,
      contacts: 0,
      leads: 0,
      measured: ohm,
    },
    outputs: { conductor: ohm },
    tolerance: { relative: 5e-3, reason: 'three printed digits, of areas in whole circular mils' },
  })),
  {
    name: 'contacts of 10 and leads of 40 milliohm beside 43.1; 0.2 ohm measured is over twice that',
    source: byHand,
    inputs: { length: 10, area: 4e-6, contacts: 0.01, leads: 0.04, measured: 0.2 },
    outputs: { expected: 0.0931, bond: 0.16, share: 0.2 / 0.0931 },
    tolerance: { relative: 1e-9, reason: 'exact figures' },
    notes: ['BOND_OVER_EXPECTED', 'BOND_OVER_US'],
  },
  {
    name: 'less than the conductor alone: another path beside it',
    source: byHand,
    inputs: { length: 10, area: 4e-6, contacts: 0.01, leads: 0.04, measured: 0.05 },
    outputs: { bond: 0.01 },
    tolerance: { relative: 1e-9, reason: 'exact figures' },
    notes: ['BOND_UNDER_CONDUCTOR'],
  },
];
