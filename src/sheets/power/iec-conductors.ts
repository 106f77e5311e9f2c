import type { Source } from '../frame.ts';

export const iecAmpacityTable: Source = {
  title: 'IEC 60364-5-52 and BS 7671 table 4D1A, copper PVC 70 degC, three loaded conductors',
  edition: 'IEC 2009, BS 7671:2008',
  place: 'public transcriptions; multicore method C from 50 mm2 from memory',
  mark: 'read',
};
export const iecResistanceTable: Source = {
  title: 'IEC 60228, greatest resistance at 20 degC, plain copper',
  edition: '2004',
  place: 'classes 1 and 2, class 5; public transcription, two copies',
  mark: 'read',
};

/** How a cable is laid. */
export const iecMethods = ['b1-single-core', 'b2-multicore', 'c-multicore', 'c-single-core'] as const;
export type IecMethod = (typeof iecMethods)[number];

export interface IecConductor {
  readonly size: string;
  readonly area: number;
  /** A by method, in the order of `iecMethods`; none above 95 mm2. */
  readonly ampacity?: readonly [number, number, number, number];
  /** Methods whose figure in this row is from memory. */
  readonly fromMemory: readonly IecMethod[];
  /** Ohm/km at 20 degC, class 1 and 2 (solid, stranded) and class 5 (flexible). */
  readonly resistance: readonly [number, number];
}

const cable = (
  square: number,
  resistance: readonly [number, number],
  ampacity?: readonly [number, number, number, number],
): IecConductor => ({
  size: `${square} mm2`,
  area: square * 1e-6,
  ...(ampacity === undefined ? {} : { ampacity }),
  fromMemory: square >= 50 ? ['c-multicore'] : [],
  resistance,
});

/** Rising sizes. */
export const iecConductors: readonly IecConductor[] = [
  cable(1.5, [12.1, 13.3], [15.5, 15, 17.5, 18]),
  cable(2.5, [7.41, 7.98], [21, 20, 24, 25]),
  cable(4, [4.61, 4.95], [28, 27, 32, 33]),
  cable(6, [3.08, 3.3], [36, 34, 41, 43]),
  cable(10, [1.83, 1.91], [50, 46, 57, 59]),
  cable(16, [1.15, 1.21], [68, 62, 76, 79]),
  cable(25, [0.727, 0.78], [89, 80, 96, 104]),
  cable(35, [0.524, 0.554], [110, 99, 119, 129]),
  cable(50, [0.387, 0.386], [134, 118, 144, 167]),
  cable(70, [0.268, 0.272], [171, 149, 184, 214]),
  cable(95, [0.193, 0.206], [207, 179, 223, 261]),
  cable(120, [0.153, 0.161]),
];

export const iecSizes: readonly string[] = iecConductors.map(({ size }) => size);
/** Sizes that have an ampacity in the table. */
export const iecRatedSizes: readonly string[] = iecConductors
  .filter(({ ampacity }) => ampacity !== undefined)
  .map(({ size }) => size);

export const iecConductor = (size: string): IecConductor => iecConductors.find((each) => each.size === size)!;
