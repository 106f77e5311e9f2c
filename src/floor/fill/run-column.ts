import { type PipeMaterial, pipeMaterials, valueAt } from '../../book/index.ts';
import type { FloorChange } from '../../fill/allowances.ts';
import { openRun, stiffRun } from '../../fill/column-shares.ts';
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
import { isUnsaid } from './unsaid-pipes.ts';

/** How the liquid in the run is counted while lanes close, and what the sheet of it wants. */
export interface RunColumn extends ColumnShare {
  readonly source: 'stiff run' | 'soft run' | 'not said' | 'measured';
  /** Places of pipes of which neither material nor wall and elasticity are said. */
  readonly unsaid: readonly string[];
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

interface Walls {
  /** Until the waves have run through all pipes of which something is said, and back, s. */
  readonly there: number;
  /** Places of pipes of which nothing is said. */
  readonly unsaid: readonly string[];
}

/** How quickly the walls of the run answer: by wall and elasticity of each pipe, else by what it is made of. */
const wallsOf = (reader: BookReader, { supply }: FloorInputs, system: FillSystem): Walls => {
  let there = 0;
  const unsaid: string[] = [];
  for (const [i, piece] of system.run.entries()) {
    if (piece.kind !== 'pipe') continue;
    const at = supply?.runPaths[i] ?? '';
    const wall = reader.number(`${at}/wall`, 'length');
    const elasticity = reader.number(`${at}/elasticity`, 'elasticModulus');
    const said = valueAt(reader.book, `${at}/material`);
    const material = pipeMaterials[said as PipeMaterial] as (typeof pipeMaterials)[PipeMaterial] | undefined;
    if (isUnsaid({ material, wall, elasticity })) {
      unsaid.push(at);
      continue;
    }
    const speed = waveSpeed(
      water,
      system.liquid.density,
      piece.bore,
      wall ?? piece.bore / material!.boreOverWall,
      elasticity ?? material!.elasticity,
      0,
      atmosphericPressure(0),
    );
    there += criticalTime(piece.length, speed);
  }
  return { there, unsaid };
};

/**
 * How much of what a stiff run would do is counted on a floor.
 *
 * Method   as measured; else all of it where the waves run through the pipes and back in half of the shortest closing, by
 *          wall and elasticity or by what each pipe is made of; else between nothing and all of it, since behind a hose it
 *          may be either, and nobody knows what a run is of which nothing is said
 * Returns  undefined where there is no run of pipe
 * Source   the sheets `water/wave-speed`, `water/surge` and `water/closing-column`; shares by `column-shares.ts`
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
  const { there, unsaid } = wallsOf(reader, inputs, system);
  const shown = { inertia: timeConstant, jets, closing, flow, volume, unsaid };
  if (measured !== undefined) {
    return { ...shown, share: measured.shift, deviation: measured.deviation, source: 'measured' };
  }
  if (there > answered * closing) return { ...shown, ...openRun, source: 'soft run' };
  return unsaid.length > 0
    ? { ...shown, ...openRun, source: 'not said' }
    : { ...shown, ...stiffRun, source: 'stiff run' };
};
