import type { SheetCase } from '../sheet-case.ts';
import { iapws95 } from './sources.ts';

export const heatingWaterNeedCases: readonly SheetCase[] = [
  {
    name: '14 kW from 80 to 65 degC: 0.229 L/s',
    source: iapws95,
    inputs: { heat: 14_000, supply: 353.15, back: 338.15 },
    outputs: { massFlow: 0.22266034, flow: 0.000229123837 },
    tolerance: { relative: 6e-4, reason: 'IAPWS-95 against IF97' },
    notes: ['CAUTION_HOT_WATER'],
  },
  {
    name: '500 Btu/h are a gallon a minute cooled by 1 degF: 100 000 Btu/h at 20 degF are 10 gpm',
    source: {
      title: 'US heating trade, 500 Btu/h to gpm and degF',
      place: '8.33 lb/gal, 60 min',
      mark: 'memory',
    },
    inputs: { heat: 29307.107, supply: 333.15, back: 333.15 - 20 / 1.8 },
    outputs: { flow: 10 * 6.30902e-5 },
    tolerance: { relative: 0.02, reason: 'the trade takes the density of cold water' },
  },
];
