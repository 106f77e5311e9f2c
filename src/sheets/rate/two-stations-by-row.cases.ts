import type { SheetCase } from '../sheet-case.ts';
import { chainScript } from './trial-sources.ts';

const byRow = (
  readyFirst: number,
  readySecond: number,
  room: number,
  efficiency: number,
  starved: number,
  blocked: number,
): SheetCase => ({
  name: `ready in ${readyFirst} and ${readySecond} of the rows, room for ${room}: ${efficiency.toFixed(8)} a row`,
  source: chainScript,
  inputs: { readyFirst, readySecond, room },
  outputs: { efficiency, starved, blocked },
  tolerance: { absolute: 1e-11, reason: 'digits that the equations of the script keep' },
  notes: ['ROOM_NO_MEMORY'],
});

export const twoStationsByRowCases: readonly SheetCase[] = [
  byRow(0.9, 0.9, 1, 0.818181818182, 0.0818181818182, 0.0818181818182),
  byRow(0.9, 0.9, 2, 0.857142857143, 0.0428571428571, 0.0428571428571),
  byRow(0.9, 0.9, 5, 0.882352941176, 0.0176470588235, 0.0176470588235),
  byRow(0.9, 0.8, 3, 0.79153579104, 0.00846420896016, 0.10846420896),
  byRow(0.8, 0.9, 3, 0.79153579104, 0.10846420896, 0.00846420896016),
  byRow(0.7, 0.95, 12, 0.699999999998, 0.250000000002, 2.16767447006e-12),
];
