import type { BookReader } from './book-reader.ts';
import { type FigureId, type FigureValues, figureValues } from './figure-values.ts';
import { findingSpecs, gapOf } from './finding-specs.ts';
import { type FloorInputs, readFloor } from './read-floor.ts';
import { readLimits } from './read-limits.ts';
import { type FloorSolution, solveFloor } from './solve-floor.ts';

export interface Interval {
  readonly low: number;
  readonly high: number;
}

export interface Intervals {
  readonly figures: { readonly [K in FigureId]?: Interval };
  /** Of the gap of each finding: positive is good. */
  readonly gaps: Readonly<Record<string, Interval & { readonly widest?: string }>>;
}

/** How far something moves either way, both counted positive. */
interface Move {
  down: number;
  up: number;
}

interface GapSum extends Move {
  /** Place that moves the gap most, and by how much. */
  widest?: string;
  most: number;
}

const nothing = (): Move => ({ down: 0, up: 0 });

const ownOf = <K extends string, T>(of: Partial<Record<K, T>>, key: K, make: () => T): T => {
  const found = of[key] ?? make();
  of[key] = found;
  return found;
};

/** Places of a floor's book whose values carry a spread or a range. */
export const uncertainPlaces = (inputs: FloorInputs) =>
  [inputs.forFill, inputs.forLine, inputs.forAgreement]
    .flatMap((reader) => [...reader.account.used])
    .filter(([, reading]) => reading.shape !== 'exact')
    .map(([path, reading]) => ({ path, ends: [reading.low as number, reading.high as number] as const }));

/** A variation in which tank and vessel move no more than before has the hour of its own cycle. */
const likeHour = (inputs: FloorInputs, solution: FloorSolution): FloorSolution['hour'] => {
  const { hour, line } = solution;
  if (hour === undefined || line === undefined) return undefined;
  const still = Math.abs(hour.rate.mean / line.rate - 1) < 1e-6 && hour.ranDry === undefined;
  return still && inputs.model.system !== undefined ? hour : undefined;
};

/**
 * 95 % intervals of a floor's figures and of the gaps of its findings.
 *
 * Method   each uncertain value is put to both ends of its own interval, one at a time, the floor is solved again, and the
 *          changes are added as squares, upward and downward apart: a rate that the washer caps moves down only
 * Returns  intervals where something moves; for a gap also the place that moves it most
 * Assumes  the uncertain values are independent; a range counts to its hard ends
 * Cost     two solutions an uncertain value
 * Source   JCGM 100:2008 (GUM) 5.1.2 with finite changes instead of derivatives, memory
 */
export const intervalsOf = (
  reader: BookReader,
  floor: number,
  format: string | undefined,
  inputs: FloorInputs,
  solution: FloorSolution,
  values: FigureValues,
): Intervals => {
  const figures: Partial<Record<FigureId, Move>> = {};
  const gaps: Record<string, GapSum> = {};
  const hourLike = likeHour(inputs, solution);
  const ids = Object.keys(values) as FigureId[];
  for (const { path, ends } of uncertainPlaces(inputs)) {
    const moves: Partial<Record<FigureId, Move>> = {};
    const gapMoves: Record<string, Move> = {};
    for (const end of ends) {
      const varied = readFloor(reader.vary(new Map([[path, end]])), floor, format);
      const other = figureValues(varied.model, solveFloor(varied.model, hourLike), readLimits(varied));
      for (const id of ids) {
        const change = (other[id] ?? values[id]!) - values[id]!;
        const move = ownOf(moves, id, nothing);
        move.up = Math.max(move.up, change);
        move.down = Math.max(move.down, -change);
      }
      for (const spec of findingSpecs) {
        const before = gapOf(spec, values);
        const after = gapOf(spec, other);
        if (before === undefined || after === undefined) continue;
        const move = ownOf(gapMoves, spec.id, nothing);
        move.up = Math.max(move.up, after - before);
        move.down = Math.max(move.down, before - after);
      }
    }
    for (const id of ids) {
      const move = moves[id]!;
      const sum = ownOf(figures, id, nothing);
      sum.down += move.down ** 2;
      sum.up += move.up ** 2;
    }
    for (const [id, move] of Object.entries(gapMoves)) {
      const sum = ownOf(gaps, id, (): GapSum => ({ down: 0, up: 0, most: 0 }));
      sum.down += move.down ** 2;
      sum.up += move.up ** 2;
      const reach = Math.max(move.down, move.up);
      if (reach > sum.most) {
        sum.most = reach;
        sum.widest = path;
      }
    }
  }
  const spread = (centre: number, move: Move): Interval => ({
    low: centre - Math.sqrt(move.down),
    high: centre + Math.sqrt(move.up),
  });
  return {
    figures: Object.fromEntries(
      Object.entries(figures)
        .filter(([, move]) => move.down > 0 || move.up > 0)
        .map(([id, move]) => [id, spread(values[id as FigureId]!, move)]),
    ),
    gaps: Object.fromEntries(
      Object.entries(gaps).map(([id, move]) => {
        const spec = findingSpecs.find((each) => each.id === id)!;
        return [
          id,
          {
            ...spread(gapOf(spec, values)!, move),
            ...(move.widest === undefined ? {} : { widest: move.widest }),
          },
        ];
      }),
    ),
  };
};
