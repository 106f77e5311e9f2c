import type { SheetCase } from '../sheet-case.ts';
import { arithmetic } from './sources.ts';

export const lossPerKelvinCases: readonly SheetCase[] = [
  {
    name: '2.4 kW at 60 degC in a room of 20 degC: 60 W/K',
    source: arithmetic,
    inputs: { loss: 2400, bath: 333.15, room: 293.15 },
    outputs: { heatTransfer: 60 },
    tolerance: { relative: 1e-9, reason: 'a difference of two temperatures' },
    notes: ['LOSS_WHILE_WARMING'],
  },
  {
    name: '10 000 Btu/h at 150 degF in a room of 70 degF: 125 Btu/h for each degF, 65.94 W/K',
    source: arithmetic,
    inputs: { loss: 10_000 * 0.29307107, bath: (150 + 459.67) / 1.8, room: (70 + 459.67) / 1.8 },
    outputs: { heatTransfer: 125 * 0.29307107 * 1.8 },
    tolerance: { relative: 1e-9, reason: 'a difference of two temperatures' },
  },
];
