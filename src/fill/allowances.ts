import { kvAllowance } from '../sheets/contents/kv-allowance.ts';
import { meterAllowance } from '../sheets/contents/meter-allowance.ts';
import { valveAirAllowance } from '../sheets/contents/valve-air-allowance.ts';

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

/** What a measurement can say between two floors: a line, or how much of a stiff run's column there is on both. */
export type MeasurableCode = Allowance['code'] | 'run-column';

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
  readonly measured?: Partial<Record<MeasurableCode, { readonly shift: number; readonly deviation: number }>>;
}

/** Of a meter that nobody looked at. */
export const usualMeterClass = 0.005;

/**
 * The lines that stand between the lanes here and the same lanes there.
 *
 * Method   the sheets of meter, valve air and Kv; a line that a measurement has replaced is what was measured
 * Returns  one line each, those without effect left out
 * Source   those of the sheets
 */
export const allowancesFor = (change: FloorChange): readonly Allowance[] => {
  const { meterClass = usualMeterClass, flowRatio, viscosityRatio, airRatio } = change;
  const source = change.meterClass === undefined ? 'common practice' : 'meter class';
  const lines: readonly Allowance[] = [
    {
      code: 'meter-flow',
      moves: 'pulse',
      shift: 0,
      ...meterAllowance({ meterClass, ratio: flowRatio }),
      common: false,
      source,
    },
    {
      code: 'meter-viscosity',
      moves: 'pulse',
      shift: 0,
      ...meterAllowance({ meterClass, ratio: viscosityRatio }),
      common: true,
      source,
    },
    {
      code: 'valve-air',
      moves: 'afterRun',
      ...valveAirAllowance({ airRatio }),
      common: true,
      source: 'common practice',
    },
    {
      code: 'kv-product',
      moves: 'kv',
      ...kvAllowance({ viscosityRatio }),
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
