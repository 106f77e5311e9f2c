import {
  type Fitting,
  type Floor,
  fittings,
  type PipeMaterial,
  type PumpedSource,
  pipeMaterials,
  type Supply,
} from '../book/index.ts';
import type { Lane, Liquid, Pumped, RunPiece, Source, Tank } from '../hydraulics/system.ts';
import { standardGravity } from '../sheets/standard-gravity.ts';
import { atmosphericPressure } from '../sheets/water/atmospheric-pressure.ts';
import { laneFlow } from '../sheets/water/lane-flow.ts';
import { fitPumpCurve, type PumpPoint } from '../sheets/water/pump-curve.ts';
import { fitReadings } from '../sheets/water/reading-supply.ts';
import type { BookReader } from './book-reader.ts';

/** Where the formula of the standard atmosphere has a tenth of the pressure left, m: nothing stands higher. */
const highest = 39_897;

const noTank: Tank = {
  area: Number.POSITIVE_INFINITY,
  usable: Number.POSITIVE_INFINITY,
  makeUp: 0,
};

export interface FloorSupply {
  readonly source: Source;
  readonly run: readonly RunPiece[];
  /** Book place of each run piece, in the same order. */
  readonly runPaths: readonly string[];
  /** Height of the source's reference point above the datum, m, and where it came from. */
  readonly heightFrom: 'book' | 'rises' | 'datum';
  /** For a reading source: the flow at each reading, by its place in the book. */
  readonly readingFlows: Readonly<Record<number, number>>;
}

const readPiece = (reader: BookReader, supply: Supply, i: number, path: string): RunPiece | undefined => {
  const piece = supply.run?.[i];
  if (piece === undefined) return undefined;
  const at = `${path}/run/${i}`;
  if (piece.kind === 'constant') {
    const loss = reader.needed(`${at}/loss`, 'pressureDifference');
    return loss === undefined ? undefined : { kind: 'constant', loss };
  }
  if (piece.kind === 'valve') {
    const kv = reader.needed(`${at}/kv`, 'flowCoefficient');
    return kv === undefined ? undefined : { kind: 'valve', kv };
  }
  const bore = reader.needed(`${at}/bore`, 'length');
  const length = reader.needed(`${at}/length`, 'length');
  const stated = reader.number(`${at}/roughness`, 'length');
  let roughness = stated;
  if (roughness === undefined && piece.material !== undefined) {
    roughness = pipeMaterials[piece.material as PipeMaterial]?.roughness;
  }
  if (roughness === undefined) {
    roughness = reader.numberOr(`${at}/roughness`, 'length', pipeMaterials['commercial steel'].roughness);
  }
  let kSum = 0;
  for (const [j, fitting] of (piece.fittings ?? []).entries()) {
    const k = fitting.k ?? fittings[fitting.kind as Fitting]?.k;
    if (k === undefined) reader.miss(`${at}/fittings/${j}/k`);
    else kSum += k * (fitting.count ?? 1);
  }
  if (bore === undefined || length === undefined) return undefined;
  // a wall as rough as half the bore is no pipe any more; the schema lets it pass, the law does not reach it
  return { kind: 'pipe', bore, length, roughness: Math.min(roughness, 0.49 * bore), kSum };
};

const readPumped = (
  reader: BookReader,
  source: PumpedSource,
  path: string,
  floorPath: string,
  fallback: number,
  density: number,
): Pumped | undefined => {
  const points: PumpPoint[] = [];
  for (const i of (source.curve ?? []).keys()) {
    const flow = reader.needed(`${path}/curve/${i}/flow`, 'volumeFlow');
    const head = reader.needed(`${path}/curve/${i}/head`, 'length');
    if (flow !== undefined && head !== undefined) points.push({ flow, head });
  }
  if (points.length === 0) {
    reader.miss(`${path}/curve`);
    return undefined;
  }
  const rated =
    reader.number(`${path}/curveFrequency`, 'frequency') ??
    reader.number(`${path}/ratedFrequency`, 'frequency');
  const here =
    reader.number(`${path}/frequency`, 'frequency') ??
    reader.number(`${floorPath}/power/frequency`, 'frequency');
  let speedRatio = 1;
  if (rated !== undefined && here !== undefined) speedRatio = here / rated;
  else reader.assume(rated === undefined ? `${path}/curveFrequency` : `${floorPath}/power/frequency`);
  const tank: Tank =
    source.tank === undefined
      ? noTank
      : {
          area: reader.number(`${path}/tank/area`, 'area') ?? Number.POSITIVE_INFINITY,
          usable: reader.number(`${path}/tank/volume`, 'volume') ?? Number.POSITIVE_INFINITY,
          makeUp: reader.numberOr(`${path}/tank/makeUp`, 'volumeFlow', 0),
        };
  const altitude = reader.number(`${floorPath}/room/altitude`, 'length') ?? 0;
  const ambient = atmosphericPressure(Math.min(altitude, highest));
  const set =
    source.regulator === undefined ? undefined : reader.needed(`${path}/regulator/set`, 'gaugePressure');
  const ownHeight = reader.number(`${path}/height`, 'length');
  // the outlet's height cancels out unless a pressure is held there
  if (ownHeight === undefined && (set !== undefined || source.vessel !== undefined)) {
    reader.assume(`${path}/height`);
  }
  const height = ownHeight ?? fallback;
  const regulatorHeight = reader.number(`${path}/regulator/height`, 'length') ?? height;
  const pumped: Pumped = {
    kind: 'pumped',
    curve: fitPumpCurve(points),
    speedRatio,
    suction: reader.numberOr(`${path}/suctionSurface`, 'length', 0),
    height,
    tank,
    // holding its set pressure at another height is another set pressure at the pump's
    regulator:
      set === undefined
        ? Number.POSITIVE_INFINITY
        : set + density * standardGravity * (regulatorHeight - height),
    ambient,
  };
  if (source.vessel === undefined) return pumped;
  const volume = reader.needed(`${path}/vessel/volume`, 'volume');
  const precharge = reader.needed(`${path}/vessel/precharge`, 'gaugePressure');
  const cutIn = reader.needed(`${path}/vessel/cutIn`, 'gaugePressure');
  const cutOut = reader.needed(`${path}/vessel/cutOut`, 'gaugePressure');
  if (volume === undefined || precharge === undefined || cutIn === undefined || cutOut === undefined) {
    return undefined;
  }
  return { ...pumped, vessel: { volume, precharge: precharge + ambient, cutIn, cutOut } };
};

/** Flow that the lanes take from a manifold at a pressure: what a reading with n lanes open says of the flow. */
const flowAt = (
  lanes: readonly Lane[],
  open: number,
  pressure: number,
  manifold: number,
  liquid: Liquid,
): number => {
  return lanes
    .slice(0, open)
    .reduce((sum, lane) => sum + laneFlow(lane.kv, pressure, manifold, lane.outlet, liquid.density), 0);
};

/**
 * Source and run of a floor as plain numbers.
 *
 * Returns  undefined where the source can't be computed; what is missing is in the reader's account
 * Assumes  heights win: where the source's height is given, the rises of the pieces are not counted; where it is not,
 *          source = manifold - sum of rises; with neither, the source stands at the datum and says so
 */
export const readSupply = (
  reader: BookReader,
  floor: Floor,
  floorPath: string,
  lanes: readonly Lane[],
  manifold: number,
  liquid: Liquid,
): FloorSupply | undefined => {
  const { supply } = floor;
  const path = `${floorPath}/supply`;
  const given = supply?.source;
  if (supply === undefined || given === undefined) {
    reader.miss(`${path}/source`);
    return undefined;
  }
  const runPaths: string[] = [];
  const run: RunPiece[] = [];
  let complete = true;
  let rises = 0;
  let anyRise = false;
  for (const i of (supply.run ?? []).keys()) {
    const piece = readPiece(reader, supply, i, path);
    if (piece === undefined) complete = false;
    else {
      run.push(piece);
      runPaths.push(`${path}/run/${i}`);
    }
    const rise = reader.number(`${path}/run/${i}/rise`, 'length');
    if (rise !== undefined) {
      rises += rise;
      anyRise = true;
    }
  }
  if (supply.run === undefined && given.kind !== 'reading') reader.assume(`${path}/run`);
  const at = `${path}/source`;
  const fallback = anyRise ? manifold - rises : 0;
  const heightPath = given.kind === 'gravity' ? `${at}/surface` : `${at}/height`;
  const known = reader.number(heightPath, 'length') !== undefined;
  const heightFrom = known ? 'book' : anyRise ? 'rises' : 'datum';
  if (heightFrom === 'datum' && given.kind === 'main') reader.assume(heightPath);

  const readingFlows: Record<number, number> = {};
  let source: Source | undefined;
  if (given.kind === 'main') {
    const fixed = reader.needed(`${at}/static`, 'gaugePressure');
    const residual = reader.needed(`${at}/residual`, 'gaugePressure');
    const testFlow = reader.needed(`${at}/testFlow`, 'volumeFlow');
    if (given.exponent === undefined) reader.assume(`${at}/exponent`);
    if (fixed !== undefined && residual !== undefined && testFlow !== undefined) {
      source = {
        kind: 'main',
        static: fixed,
        // a spread may carry the two past each other; the loss is then none, never a gain
        residual: Math.min(residual, fixed),
        testFlow,
        exponent: given.exponent ?? 2,
        height: reader.number(`${at}/height`, 'length') ?? fallback,
      };
    }
  } else if (given.kind === 'gravity') {
    const surface = known ? reader.needed(`${at}/surface`, 'length') : anyRise ? fallback : undefined;
    if (surface === undefined) reader.miss(`${at}/surface`);
    else {
      const area = reader.number(`${at}/area`, 'area');
      const outlet = reader.number(`${at}/outlet`, 'length');
      if (area === undefined) reader.assume(`${at}/area`);
      else if (outlet === undefined) reader.assume(`${at}/outlet`);
      const tank: Tank =
        area === undefined
          ? noTank
          : {
              area,
              usable: outlet === undefined ? Number.POSITIVE_INFINITY : Math.max(0, surface - outlet) * area,
              makeUp: reader.numberOr(`${at}/makeUp`, 'volumeFlow', 0),
            };
      source = { kind: 'gravity', surface, tank };
    }
  } else if (given.kind === 'pumped') {
    source = readPumped(reader, given, at, floorPath, fallback, liquid.density);
  } else {
    const readings: { flow: number; pressure: number }[] = [];
    for (const [i, one] of (given.readings ?? []).entries()) {
      const pressure = reader.needed(`${at}/readings/${i}/pressure`, 'gaugePressure');
      const flow = reader.number(`${at}/readings/${i}/flow`, 'volumeFlow');
      if (pressure === undefined) continue;
      if (flow === undefined && one.lanesOpen === undefined) reader.miss(`${at}/readings/${i}/lanesOpen`);
      else {
        const through = flow ?? flowAt(lanes, one.lanesOpen ?? 0, pressure, manifold, liquid);
        readings.push({ pressure, flow: through });
        readingFlows[i] = through;
      }
    }
    if (readings.length === 0) reader.miss(`${at}/readings`);
    else {
      if (readings.length === 1) reader.assume(`${at}/readings/1`);
      source = {
        kind: 'reading',
        curve: fitReadings(
          readings.map((r) => r.flow),
          readings.map((r) => r.pressure),
        ),
      };
    }
  }
  return source === undefined || !complete ? undefined : { source, run, runPaths, heightFrom, readingFlows };
};
