import type { Source } from '../frame.ts';

export const typicalTable: Source = {
  title:
    'typical currents of four-pole cage motors at 400 V, two handbooks, and IEC 60947-4-1 annex G from memory',
  edition: 'IEC 60947',
  place: 'public transcriptions',
  mark: 'read',
};

export interface TypicalRow {
  readonly kilowatts: number;
  /** A, from copies that were read. */
  readonly read: readonly number[];
  /** A, from memory. */
  readonly memory: number;
}

const row = (kilowatts: number, memory: number, ...read: readonly number[]): TypicalRow => ({
  kilowatts,
  read,
  memory,
});

/** They differ by up to 12 %: typical only, the nameplate wins. */
export const typicalRows: readonly TypicalRow[] = [
  row(0.12, 0.44, 0.41),
  row(0.18, 0.6, 0.6),
  row(0.25, 0.85, 0.8),
  row(0.37, 1.1, 1.1, 0.98),
  row(0.55, 1.5, 1.5, 1.5),
  row(0.75, 1.9, 1.9, 1.9),
  row(1.1, 2.7, 2.6, 2.5),
  row(1.5, 3.6, 3.6, 3.4),
  row(2.2, 4.9, 5, 4.8),
  row(3, 6.5, 6.6, 6.3),
  row(4, 8.5, 8.5, 8.1),
  row(5.5, 11.5, 11.3, 11),
  row(7.5, 15.5, 15.2, 14.8),
  row(11, 22, 21.7, 21),
  row(15, 29, 29.3, 28.5),
  row(18.5, 35, 35),
  row(22, 41, 42),
  row(30, 55, 57),
  row(37, 66, 69),
  row(45, 80, 81),
  row(55, 97),
  row(75, 132),
];
