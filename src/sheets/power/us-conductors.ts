import type { Source } from '../frame.ts';

export const ampacityTable: Source = {
  title: 'NEC table 310.16 (310.15(B)(16) from 2011 to 2017)',
  edition: '2008 and 2011',
  place: 'copper columns, public transcriptions',
  mark: 'read',
};
export const impedanceTable: Source = {
  title: 'NEC chapter 9, tables 8 and 9',
  edition: '2008',
  place: 'copper, public transcriptions',
  mark: 'read',
};
export const faultConstantTable: Source = {
  title: 'point-to-point method, table of C for copper, 600 V, three single conductors',
  place: 'public transcription',
  mark: 'read',
};

export interface UsConductor {
  readonly size: string;
  /** A in the 60, 75 and 90 degC columns, editions from 2011 on. */
  readonly ampacity: readonly [number, number, number];
  /** A, 2008 and older. */
  readonly olderAmpacity: readonly [number, number, number];
  /** Ohm/km at 75 degC, direct current, stranded and uncoated. */
  readonly direct: number;
  /** Ohm/km at 75 degC in PVC and in steel conduit. */
  readonly resistance: readonly [number, number];
  /** Ohm/km at 60 Hz in PVC and in steel conduit. */
  readonly reactance: readonly [number, number];
  /** A ft/V in steel and in other conduit: reciprocal of ohm/ft of a cold conductor. */
  readonly faultConstant: readonly [number, number];
  /** Gauge number, 0 and below for 1/0 and larger; none for sizes in kcmil. */
  readonly gauge?: number;
  readonly kcmil?: number;
}

type Three = readonly [number, number, number];
type Two = readonly [number, number];

const wire = (
  size: string,
  ampacity: Three,
  olderAmpacity: Three,
  direct: number,
  resistance: Two,
  reactance: Two,
  faultConstant: Two,
  drawn: { readonly gauge: number } | { readonly kcmil: number },
): UsConductor => ({ size, ampacity, olderAmpacity, direct, resistance, reactance, faultConstant, ...drawn });

const gauge = (
  n: number,
  size: string,
  ampacity: Three,
  older: Three,
  direct: number,
  r: Two,
  x: Two,
  c: Two,
): UsConductor => wire(`${size} AWG`, ampacity, older, direct, r, x, c, { gauge: n });
const large = (kcmil: number, ampacity: Three, direct: number, r: Two, x: Two, c: Two): UsConductor =>
  wire(`${kcmil} kcmil`, ampacity, ampacity, direct, r, x, c, { kcmil });

/** Rising sizes. */
export const usConductors: readonly UsConductor[] = [
  gauge(14, '14', [15, 20, 25], [20, 20, 25], 10.3, [10.2, 10.2], [0.19, 0.24], [389, 389]),
  gauge(12, '12', [20, 25, 30], [25, 25, 30], 6.5, [6.6, 6.6], [0.177, 0.223], [617, 617]),
  gauge(10, '10', [30, 35, 40], [30, 35, 40], 4.07, [3.9, 3.9], [0.164, 0.207], [981, 982]),
  gauge(8, '8', [40, 50, 55], [40, 50, 55], 2.55, [2.56, 2.56], [0.171, 0.213], [1557, 1559]),
  gauge(6, '6', [55, 65, 75], [55, 65, 75], 1.61, [1.61, 1.61], [0.167, 0.21], [2425, 2430]),
  gauge(4, '4', [70, 85, 95], [70, 85, 95], 1.01, [1.02, 1.02], [0.157, 0.197], [3806, 3826]),
  gauge(3, '3', [85, 100, 115], [85, 100, 110], 0.804, [0.82, 0.82], [0.154, 0.194], [4774, 4811]),
  gauge(2, '2', [95, 115, 130], [95, 115, 130], 0.636, [0.62, 0.66], [0.148, 0.187], [5907, 6044]),
  gauge(1, '1', [110, 130, 145], [110, 130, 150], 0.505, [0.49, 0.52], [0.151, 0.187], [7293, 7493]),
  gauge(0, '1/0', [125, 150, 170], [125, 150, 170], 0.4, [0.39, 0.39], [0.144, 0.18], [8925, 9317]),
  gauge(-1, '2/0', [145, 175, 195], [145, 175, 195], 0.317, [0.33, 0.33], [0.141, 0.177], [10755, 11424]),
  gauge(-2, '3/0', [165, 200, 225], [165, 200, 225], 0.251, [0.253, 0.259], [0.138, 0.171], [12844, 13923]),
  gauge(-3, '4/0', [195, 230, 260], [195, 230, 260], 0.199, [0.203, 0.207], [0.135, 0.167], [15082, 16673]),
  large(250, [215, 255, 290], 0.169, [0.171, 0.177], [0.135, 0.171], [16483, 18594]),
  large(300, [240, 285, 320], 0.141, [0.144, 0.148], [0.135, 0.167], [18177, 20868]),
  large(350, [260, 310, 350], 0.12, [0.125, 0.128], [0.131, 0.164], [19704, 22737]),
  large(400, [280, 335, 380], 0.105, [0.108, 0.115], [0.131, 0.161], [20566, 24297]),
  large(500, [320, 380, 430], 0.085, [0.089, 0.095], [0.128, 0.157], [22185, 26706]),
];

export const usSizes: readonly string[] = usConductors.map(({ size }) => size);

/** The conductor of a size that is one of `usSizes`. */
export const usConductor = (size: string): UsConductor => usConductors.find((each) => each.size === size)!;
