import type { SheetCase } from '../sheet-case.ts';
import { iapws95Rows } from './iapws95-table.ts';
import { iapws95, iapwsLiquid, perry } from './sources.ts';

export const waterDensityCases: readonly SheetCase[] = [
  {
    name: 'IAPWS SR6-08 table of check values, 298.15 K',
    source: { ...iapwsLiquid, place: 'table 8, public transcription' },
    inputs: { temperature: 298.15 },
    outputs: { density: 997.047013 },
    tolerance: { relative: 1e-6, reason: 'printed digits' },
  },
  {
    name: "Perry's handbook, saturated liquid at 300 K: 55.315 mol/L",
    source: perry,
    inputs: { temperature: 300 },
    outputs: { density: 996.51 },
    tolerance: { relative: 1e-4, reason: 'printed digits; saturation against 0.1 MPa is 5e-5' },
  },
  {
    name: "Perry's handbook, saturated liquid at 340 K",
    source: perry,
    inputs: { temperature: 340 },
    outputs: { density: 979.51 },
    tolerance: { relative: 1e-4, reason: 'printed digits; saturation against 0.1 MPa is 5e-5' },
  },
  ...iapws95Rows.map(([celsius, density]) => ({
    name: `IAPWS-95 at ${celsius} degC`,
    source: iapws95,
    inputs: { temperature: celsius + 273.15 },
    outputs: { density },
    tolerance: { relative: 2e-6, reason: 'printed digits; 101.325 kPa against 0.1 MPa is 6e-7' },
  })),
];
