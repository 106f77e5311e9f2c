import type { Source } from '../frame.ts';

export const fullLoadTables: Source = {
  title: 'NEC tables 430.248 and 430.250',
  edition: '2008',
  place: 'public transcription, three-phase rows compared in three copies',
  mark: 'read',
};

/** Column voltages with the system voltages that each covers, by the note under the tables. */
export const columns = [
  { voltage: 115, least: 110, most: 120 },
  { voltage: 200, least: 199.5, most: 200.5 },
  { voltage: 208, least: 207.5, most: 208.5 },
  { voltage: 230, least: 220, most: 240 },
  { voltage: 460, least: 440, most: 480 },
  { voltage: 575, least: 550, most: 600 },
] as const;

export interface FullLoadRow {
  readonly hp: number;
  /** A, by the columns above; undefined where the table has none. */
  readonly amperes: readonly (number | undefined)[];
}

const none = undefined;
const row = (hp: number, ...amperes: readonly (number | undefined)[]): FullLoadRow => ({ hp, amperes });

export const threePhaseRows: readonly FullLoadRow[] = [
  row(0.5, 4.4, 2.5, 2.4, 2.2, 1.1, 0.9),
  row(0.75, 6.4, 3.7, 3.5, 3.2, 1.6, 1.3),
  row(1, 8.4, 4.8, 4.6, 4.2, 2.1, 1.7),
  row(1.5, 12, 6.9, 6.6, 6, 3, 2.4),
  row(2, 13.6, 7.8, 7.5, 6.8, 3.4, 2.7),
  row(3, none, 11, 10.6, 9.6, 4.8, 3.9),
  row(5, none, 17.5, 16.7, 15.2, 7.6, 6.1),
  row(7.5, none, 25.3, 24.2, 22, 11, 9),
  row(10, none, 32.2, 30.8, 28, 14, 11),
  row(15, none, 48.3, 46.2, 42, 21, 17),
  row(20, none, 62.1, 59.4, 54, 27, 22),
  row(25, none, 78.2, 74.8, 68, 34, 27),
  row(30, none, 92, 88, 80, 40, 32),
  row(40, none, 120, 114, 104, 52, 41),
  row(50, none, 150, 143, 130, 65, 52),
  row(60, none, 177, 169, 154, 77, 62),
  row(75, none, 221, 211, 192, 96, 77),
  row(100, none, 285, 273, 248, 124, 99),
];

export const singlePhaseRows: readonly FullLoadRow[] = [
  row(0.5, 9.8, none, 5.4, 4.9),
  row(0.75, 13.8, none, 7.6, 6.9),
  row(1, 16, none, 8.8, 8),
  row(1.5, 20, none, 11, 10),
  row(2, 24, none, 13.2, 12),
  row(3, 34, none, 18.7, 17),
  row(5, 56, none, 30.8, 28),
];

/** Where other copies of the three-phase table print another figure. */
export const otherPrints: readonly {
  readonly hp: number;
  readonly voltage: number;
  readonly amperes: number;
}[] = [
  { hp: 1.5, voltage: 575, amperes: 2.1 },
  { hp: 1, voltage: 200, amperes: 4.9 },
  // charts with the small motors of editions before 1996
  { hp: 0.5, voltage: 230, amperes: 2 },
  { hp: 0.5, voltage: 460, amperes: 1 },
  { hp: 0.5, voltage: 575, amperes: 0.8 },
];
