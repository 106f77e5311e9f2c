import type { SheetCase } from '../sheet-case.ts';
import { arithmetic } from './sources.ts';

export const roomHeatCases: readonly SheetCase[] = [
  {
    name: '6 kW of motors at 80 %, 2 kW of bath, 1.2 kW of pipes: 8 kW; 0.829 m3/s at 8 K',
    source: arithmetic,
    inputs: { motorInput: 6000, runningShare: 0.8, bath: 2000, pipes: 1200, rise: 8 },
    outputs: { heat: 8000, airFlow: 0.8287 },
    tolerance: { relative: 5e-3, reason: 'worked with air of 1.2 kg/m3' },
    notes: ['ROOM_HEAT_MOTORS'],
  },
  {
    name: '1.08 Btu/h to cfm and degF: 10 000 Btu/h at 20 degF are 463 cfm',
    source: {
      title: 'US ventilation trade, sensible heat factor 1.08',
      place: '0.075 lb/ft3',
      mark: 'memory',
    },
    inputs: { motorInput: 0, bath: 2930.7107, rise: 20 / 1.8 },
    outputs: { airFlow: 463 * 4.719474e-4 },
    tolerance: { relative: 1e-2, reason: 'the factor has three digits' },
  },
];
