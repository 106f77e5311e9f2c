import type { SheetCase } from '../sheet-case.ts';
import { arithmetic } from './sources.ts';

export const bottleHeatCases: readonly SheetCase[] = [
  {
    name: '600 glass bottles an hour of 0.5 kg from 15 to 60 degC: 3.075 kW',
    source: arithmetic,
    inputs: { material: 'glass', mass: 0.5, rate: 600 / 3600, from: 288.15, to: 333.15 },
    outputs: { heatFlow: 3075, perBottle: 18450 },
    tolerance: { relative: 3e-4, reason: 'four printed digits' },
  },
  {
    name: 'soda-lime window glass: 820 J/(kg K), 2500 kg/m3',
    source: { title: 'public data sheet of window glass', place: 'density and specific heat', mark: 'read' },
    inputs: { material: 'glass', mass: 0.5, rate: 1, from: 293.15, to: 294.15 },
    outputs: { specificHeat: 820, density: 2500 },
    tolerance: { relative: 0.021, reason: 'another page gives 2400: the middle is taken' },
  },
  {
    name: 'specific heat of PET is recalled, and said to be',
    source: { title: 'reference data of bottle materials', place: 'PET', mark: 'memory' },
    inputs: { material: 'PET', mass: 0.08, rate: 1, from: 293.15, to: 333.15 },
    outputs: { specificHeat: 1200, perBottle: 3840 },
    tolerance: { relative: 1e-9, reason: 'product of three figures' },
    notes: ['MATERIAL_FROM_MEMORY'],
  },
];
