import type { SheetCase } from '../sheet-case.ts';
import { openTankTable } from './sources.ts';

const squareFoot = 0.09290304;
const btuPerHour = 0.29307107;

export const openTankLossCases: readonly SheetCase[] = [
  {
    name: '150 degF, 10 ft2 of surface, 50 ft2 of bare wall: 19 400 Btu/h, 5.686 kW',
    source: { ...openTankTable, place: 'worked example' },
    inputs: { bath: 338.7056, surface: 10 * squareFoot, walls: 50 * squareFoot },
    outputs: {
      evaporation: 8600 * btuPerHour,
      radiation: 1800 * btuPerHour,
      wallLoss: 9000 * btuPerHour,
      total: 19400 * btuPerHour,
    },
    tolerance: { relative: 1e-4, reason: 'rounded factor of units' },
    notes: ['OPEN_TANK_ROUGH'],
  },
  {
    name: '180 degF, 50 mm of insulation: 79 W/m2 of wall, 6309 W/m2 of surface',
    source: { ...openTankTable, place: 'row 180 degF, in SI' },
    inputs: { bath: 355.3722, surface: 1, walls: 1, insulation: '50 mm' },
    outputs: { wallLoss: 79, total: 6388 },
    tolerance: { relative: 3e-3, reason: 'two printed digits' },
  },
  {
    name: '1.74 kBtu/h from a square foot at 180 degF carry 0.794 kg/h, latent heat by another formulation',
    source: {
      title: 'IAPWS-95, latent heat 2302.4 kJ/kg at 82.22 degC',
      place: 'independent program',
      mark: 'computed',
    },
    inputs: { bath: 355.3722, surface: squareFoot, walls: 0 },
    outputs: { evaporated: (1740 * btuPerHour) / 2302.4e3 },
    tolerance: { relative: 5e-4, reason: 'five digits of the latent heat' },
  },
];
