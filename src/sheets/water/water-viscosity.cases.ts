import type { SheetCase } from '../sheet-case.ts';
import { iapws95Rows } from './iapws95-table.ts';
import { iapws95, iapwsLiquid, perry } from './sources.ts';

export const waterViscosityCases: readonly SheetCase[] = [
  {
    name: 'IAPWS SR6-08 table of check values, 298.15 K',
    source: { ...iapwsLiquid, place: 'table 8, public transcription' },
    inputs: { temperature: 298.15 },
    outputs: { viscosity: 889.996774e-6 },
    tolerance: { relative: 1e-6, reason: 'printed digits' },
  },
  {
    name: "Perry's handbook, saturated liquid at 300 K",
    source: perry,
    inputs: { temperature: 300 },
    outputs: { viscosity: 853.84e-6 },
    tolerance: { relative: 1e-3, reason: 'another equation behind the table' },
  },
  {
    name: "Perry's handbook, saturated liquid at 340 K",
    source: perry,
    inputs: { temperature: 340 },
    outputs: { viscosity: 421.97e-6 },
    tolerance: { relative: 1e-3, reason: 'another equation behind the table' },
  },
  ...iapws95Rows.map(([celsius, , viscosity, kinematicViscosity]) => ({
    name: `IAPWS 2008 viscosity at ${celsius} degC`,
    source: iapws95,
    inputs: { temperature: celsius + 273.15 },
    outputs: { viscosity, kinematicViscosity },
    tolerance: {
      relative: 2e-4,
      reason: 'four printed digits; the short equation is within 3e-5 of the full one',
    },
  })),
];
