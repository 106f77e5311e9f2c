import type { SheetCase } from '../sheet-case.ts';
import { arithmetic, iapws95 } from './sources.ts';

export const washLoadCases: readonly SheetCase[] = [
  {
    name: '600 glass bottles an hour of 0.5 kg from 15 to 60 degC: 3.075 kW',
    source: arithmetic,
    inputs: { rate: 600 / 3600, material: 'glass', mass: 0.5, entry: 288.15, zone: 333.15 },
    outputs: { bottles: 3075, total: 3075 },
    tolerance: { relative: 3e-4, reason: 'four printed digits' },
    notes: ['WASH_NO_SURFACE', 'CAUTION_HOT_WATER'],
  },
  {
    name: '600 PET bottles an hour with 4 mL each, 60 L/h of make-up, 3.54 kW of surface, 0.3 kW of walls: 7.72 kW',
    source: iapws95,
    inputs: {
      rate: 600 / 3600,
      material: 'PET',
      mass: 0.08,
      entry: 293.15,
      zone: 333.15,
      carryOver: 4e-6,
      carryTemperature: 293.15,
      makeUp: 0.06 / 3600,
      makeUpTemperature: 288.15,
      surface: 3540,
      walls: 300,
    },
    outputs: { bottles: 640, carried: 111.294369, fresh: 3133.383356, total: 7724.677725 },
    tolerance: { relative: 2e-4, reason: 'IAPWS-95 against IF97' },
    notes: ['MATERIAL_FROM_MEMORY'],
  },
];
