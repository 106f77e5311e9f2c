import type { FloorChange } from '../../fill/allowances.ts';
import type { ColumnShare } from '../../fill/uncertain-floor.ts';
import { manifoldBalance } from '../../hydraulics/manifold-balance.ts';
import { runInertia } from '../../hydraulics/run-inertia.ts';
import { full, supplyPressure } from '../../hydraulics/supply.ts';
import type { FillSystem } from '../../hydraulics/system.ts';
import { standardGravity } from '../../sheets/standard-gravity.ts';
import { atmosphericPressure } from '../../sheets/water/atmospheric-pressure.ts';
import { closingFactor, straightClosing } from '../../sheets/water/closing-column.ts';
import { criticalTime } from '../../sheets/water/surge.ts';
import { waveSpeed } from '../../sheets/water/wave-speed.ts';
import type { BookReader } from '../book-reader.ts';
import type { FloorInputs } from '../read-floor.ts';

/** How the liquid in the run is counted while lanes close, and what the sheet of it wants. */
export interface RunColumn extends ColumnShare {
  readonly source: 'stiff run' | 'measured' | 'not counted';
  /** Time constant of the run, s. */
  readonly inertia: number;
  /** Part of the whole head that is left for the jets. */
  readonly jets: number;
  /** Shortest closing of a lane, s. */
  readonly closing: number;
  /** With all lanes open, m3/s. */
  readonly flow: number;
  /** What a stiff run would press through lanes that close together, beyond a straight closing, m3. */
  readonly volume: number;
}

/** Bulk modulus of water of 20 degC, Pa. */
const water = 2.179e9;
/** A run whose walls answer within this part of a stroke moves as one. */
const answered = 0.5;
/** Of a stiff run: the stroke that is not quite straight, a little air. Common practice. */
const stiffDeviation = 0.1;

/** Whether all of the run moves as one while a lane closes: by wall and elasticity of each of its pipes. */
const movesAsOne = (reader: BookReader, { supply }: FloorInputs, system: FillSystem): boolean => {
  const closing = Math.min(...system.lanes.map((lane) => lane.closing));
  /** Until the waves have run through all of it and back, s. */
  let there = 0;
  for (const [i, piece] of system.run.entries()) {
    if (piece.kind !== 'pipe') continue;
    const at = supply?.runPaths[i];
    const wall = reader.number(`${at}/wall`, 'length');
    const elasticity = reader.number(`${at}/elasticity`, 'elasticModulus');
    if (wall === undefined || elasticity === undefined) return false;
    const speed = waveSpeed(
      water,
      system.liquid.density,
      piece.bore,
      wall,
      elasticity,
      0,
      atmosphericPressure(0),
    );
    there += criticalTime(piece.length, speed);
  }
  return there > 0 && there <= answered * closing;
};

/**
 * How much of what a stiff run would do is counted on a floor.
 *
 * Method   as measured; else all of it where the waves run through the pipes and back in half of the shortest closing, by
 *          the walls that the book gives; else nothing, and it is said what is left out
 * Returns  undefined where there is no run of pipe
 * Source   the sheets `water/wave-speed`, `water/surge` and `water/closing-column`
 */
export const runColumn = (
  reader: BookReader,
  inputs: FloorInputs,
  system: FillSystem,
  measured?: NonNullable<FloorChange['measured']>['run-column'],
): RunColumn | undefined => {
  if (system.source.kind === 'reading' || !system.run.some(({ kind }) => kind === 'pipe')) {
    return undefined;
  }
  const { flow, pressure } = manifoldBalance(system);
  const { timeConstant, head } = runInertia(system, flow);
  if (!(timeConstant > 0)) return undefined;
  const whole = system.liquid.density * standardGravity * head;
  const lost = supplyPressure(system, 0, full) - pressure;
  const jets = 1 - lost / whole;
  const closing = Math.min(...system.lanes.map((lane) => lane.closing));
  const volume =
    closing > 0 ? flow * closing * (closingFactor(timeConstant, closing, jets) - straightClosing) : 0;
  const shown = { inertia: timeConstant, jets, closing, flow, volume };
  if (measured !== undefined) {
    return { ...shown, share: measured.shift, deviation: measured.deviation, source: 'measured' };
  }
  return movesAsOne(reader, inputs, system)
    ? { ...shown, share: 1, deviation: stiffDeviation, source: 'stiff run' }
    : { ...shown, share: 0, deviation: 0, source: 'not counted' };
};
