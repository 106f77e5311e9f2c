/** Which of a lane's values an allowance moves. */
export type Moved = 'pulse' | 'afterRun' | 'kv';

/** Something that two floors change of a lane and that the trials on one of them can't tell. */
export interface Allowance {
  readonly code: 'meter-flow' | 'meter-viscosity' | 'valve-air' | 'kv-product';
  readonly moves: Moved;
  /** By how much the value is expected to move, as a share. */
  readonly shift: number;
  /** Standard deviation of that share. */
  readonly deviation: number;
  /** All lanes move alike, or each for itself. */
  readonly common: boolean;
  readonly source: 'common practice' | 'meter class' | 'measured';
}

/** What is known of the change from one floor to the other. */
export interface FloorChange {
  /** Largest error of the meter over its range, as a share, off its plate; 0.5 % where nobody looked. */
  readonly meterClass?: number;
  /** Flow of a lane there over that at the trials. */
  readonly flowRatio: number;
  /** Kinematic viscosity there over that at the trials; 1 for the same liquid. */
  readonly viscosityRatio: number;
  /** Pressure of the valves' air there over that at the trials, both absolute; 1 where they are alike. */
  readonly airRatio: number;
  /** The same values by measurement, as shares with their standard deviations; they take the place of a line. */
  readonly measured?: Partial<
    Record<Allowance['code'], { readonly shift: number; readonly deviation: number }>
  >;
}

const usualClass = 0.005;
const rootThree = Math.sqrt(3);
/** A tenfold change of flow or viscosity takes a meter through all of its class. */
const decade = 10;
/** A valve's time goes with the inverse of its air pressure over the spring, give or take half of that. */
const airPower = 1;
const airDoubt = 0.5;
/** A thin syrup takes a few per cent of a valve's Kv for a tenfold viscosity; nobody's figure is better than half of it. */
const kvPerDecade = 0.05;

const decades = (ratio: number): number =>
  Math.min(1, Math.abs(Math.log(Math.max(ratio, Number.MIN_VALUE))) / Math.log(decade));

/**
 * The lines that stand between the lanes here and the same lanes there.
 *
 * Method   meter factor: rectangular within its class, in the part that the change of flow or of viscosity goes through;
 *          after-run: with the inverse of the valves' air pressure; Kv: down with the viscosity. A line that a
 *          measurement has replaced is what was measured
 * Returns  one line each, those without effect left out
 * Source   common practice; JCGM 100:2008, 4.3.7 for the rectangular width (memory)
 */
export const allowancesFor = (change: FloorChange): readonly Allowance[] => {
  const share = (change.meterClass ?? usualClass) / rootThree;
  const thicker = Math.log(change.viscosityRatio) / Math.log(decade);
  const slower = change.airRatio ** -airPower - 1;
  const source = change.meterClass === undefined ? 'common practice' : 'meter class';
  const lines: readonly Allowance[] = [
    {
      code: 'meter-flow',
      moves: 'pulse',
      shift: 0,
      deviation: share * decades(change.flowRatio),
      common: false,
      source,
    },
    {
      code: 'meter-viscosity',
      moves: 'pulse',
      shift: 0,
      deviation: share * decades(change.viscosityRatio),
      common: true,
      source,
    },
    {
      code: 'valve-air',
      moves: 'afterRun',
      shift: slower,
      deviation: airDoubt * Math.abs(slower),
      common: true,
      source: 'common practice',
    },
    {
      code: 'kv-product',
      moves: 'kv',
      shift: -kvPerDecade * Math.max(0, thicker),
      deviation: 0.5 * kvPerDecade * Math.abs(thicker),
      common: true,
      source: 'common practice',
    },
  ];
  return lines
    .map((line): Allowance => {
      const known = change.measured?.[line.code];
      return known === undefined ? line : { ...line, ...known, source: 'measured' };
    })
    .filter(({ shift, deviation }) => shift !== 0 || deviation > 0);
};
