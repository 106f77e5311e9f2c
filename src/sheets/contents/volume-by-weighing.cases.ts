import type { SheetCase } from '../sheet-case.ts';
import { weighingScript } from './weighing-sources.ts';

/** degC, kg/m3 of water, mL for each gram that the balance shows in air of 1.2 kg/m3. */
const rows = [
  [5, 999.9668, 1.00108],
  [10, 999.7027, 1.00135],
  [15, 999.1026, 1.00195],
  [20, 998.2067, 1.00285],
  [25, 997.047, 1.00402],
  [30, 995.6488, 1.00543],
  [40, 992.2152, 1.00891],
] as const;

export const volumeByWeighingCases: readonly SheetCase[] = [
  ...rows.map(([celsius, density, millilitres]) => ({
    name: `water at ${celsius} degC: ${millilitres} mL for each gram shown`,
    source: weighingScript,
    inputs: { mass: 1, density },
    outputs: { volume: millilitres * 1e-3 },
    tolerance: { absolute: 5.1e-9, reason: 'printed to five decimals' },
  })),
  {
    name: 'ISO 8655-6 prints 1.0029 mL/g at 20 degC and 101.3 kPa',
    source: { title: 'ISO 8655-6', place: 'table of Z, not read', mark: 'memory' },
    inputs: { mass: 1, density: 998.2067 },
    outputs: { volume: 1.0029e-3 },
    tolerance: { absolute: 5e-8, reason: 'printed to four decimals; 1.00285 stands on the half' },
  },
  {
    name: '498.732 g of water at 22 degC: 500.372 mL',
    source: weighingScript,
    inputs: { mass: 0.498732, density: 997.773 },
    outputs: { volume: 500.372e-6, trueMass: 0.499258 },
    tolerance: { relative: 2e-6, reason: 'printed digits' },
  },
  {
    name: 'water weighed with its true density as if in a vacuum comes out 0.1053 % short',
    source: weighingScript,
    inputs: { mass: 1, density: 998.2067 },
    outputs: { buoyancy: 0.001053 },
    tolerance: { absolute: 1e-6, reason: 'printed digits' },
  },
];
