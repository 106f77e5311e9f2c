import { stillSystem } from '../hydraulics/still-system.ts';
import type { TimeLeft } from '../line/time-left-for-fill.ts';
import type { BookReader } from './book-reader.ts';
import { type FigureId, type FigureValues, figureValues } from './figure-values.ts';
import { findingSpecs, gapOf } from './finding-specs.ts';
import {
  addSquares,
  type Cause,
  causesOf,
  type GapSum,
  type Interval,
  intervalAbout,
  nothing,
  reach,
} from './interval-sum.ts';
import { type FloorInputs, readFloor } from './read-floor.ts';
import { placesOfLimits, readLimits } from './read-limits.ts';
import { type FloorModel, type FloorSolution, solveFill, solveFloor } from './solve-floor.ts';
import { type Doubt, type UncertainPlace, uncertainPlaces } from './uncertain-places.ts';
import { delayPlace } from './utilities/air/index-delay.ts';

export interface Intervals {
  readonly figures: { readonly [K in FigureId]?: Interval };
  /** Of the gap of each finding: positive is good. */
  readonly gaps: Readonly<Record<string, GapInterval>>;
}

export interface GapInterval extends Interval {
  /** What moves the gap, most first. */
  readonly causes: readonly Cause[];
}

/** Share of what is asked that a value must move, at its lower end, for its upper end to be looked at on its own. */
const negligible = 0.003;

/** An hour in which every row is like the first holds for a variation too, while the make-up still covers the draw. */
const evenHour = (solution: FloorSolution): FloorSolution['hour'] => {
  const { hour, line } = solution;
  if (hour === undefined || line === undefined || hour.ranDry !== undefined) return undefined;
  return Math.abs(hour.rate.mean / line.rate - 1) < 1e-6 ? hour : undefined;
};

/** What the variations of a floor start from, and how each is solved at the least cost that changes no difference. */
interface Base {
  readonly values: FigureValues;
  readonly vary: (path: string, value: number) => FigureValues;
}

/** A floor that has been solved, and the book that it was read from. */
export interface SolvedFloor {
  readonly reader: BookReader;
  readonly floor: number;
  readonly format: string | undefined;
  readonly inputs: FloorInputs;
  readonly solution: FloorSolution;
  readonly values: FigureValues;
  readonly timeLeft: TimeLeft | undefined;
}

const baseOf = ({ reader, floor, format, inputs, solution, values, timeLeft }: SolvedFloor): Base => {
  const hour = evenHour(solution);
  const { fill } = solution;
  const noHour = solution.hour === undefined;

  /** The counts stay those of the floor as it is: they are set once, whatever the truth turns out to be. */
  const counted = (model: FloorModel): FloorModel => {
    if (fill === undefined || model.system === undefined) return model;
    const preset = (i: number): number => fill.system.lanes[i]!.preset;
    return {
      ...model,
      lanes: model.lanes.map((lane, i) => ({
        ...lane,
        preset: preset(i),
        presetPath: lane.presetPath ?? '',
      })),
      system: {
        ...model.system,
        lanes: model.system.lanes.map((lane, i) => ({ ...lane, preset: preset(i) })),
      },
    };
  };
  const solve = (given: FloorModel, sameFill: FloorSolution['fill']): FloorSolution => {
    const model = counted(given);
    const { system } = model;
    const still =
      system === undefined || fill === undefined ? undefined : stillSystem(system, fill.row.drawn);
    const before = { roughHour: true, noHour, ...(hour === undefined ? {} : { hour }) };
    if (sameFill !== undefined) return solveFloor(model, { ...before, fill: sameFill });
    const quick = still === undefined ? undefined : solveFill({ ...model, system: still });
    return system === undefined || quick === undefined || 'stuck' in quick
      ? solveFloor(model, before)
      : solveFloor(model, { ...before, fill: { ...quick, system } });
  };
  const base = fill === undefined ? solution : solve(inputs.model, undefined);
  const known = { timeLeft };
  const limits = readLimits(inputs);
  const limitPlaces = new Set(placesOfLimits(inputs));
  return {
    values: fill === undefined ? values : figureValues(inputs.model, base, limits, known),
    vary: (path, value) => {
      const varied = readFloor(reader.vary(new Map([[path, value]])), floor, format, { inputs, path });
      const sameFill = varied.fillPart === inputs.fillPart ? base.fill : undefined;
      const solved = solve(varied.model, sameFill);
      const sameTimes = varied.linePart === inputs.linePart && varied.agreementPart === inputs.agreementPart;
      const allowed = limitPlaces.has(path) ? readLimits(varied) : limits;
      return figureValues(varied.model, solved, allowed, sameTimes ? known : undefined);
    },
  };
};

/** An uncertain place, or several that act through one number and are moved as one. */
interface Uncertain extends UncertainPlace {
  /** The places behind it with their parts of the move; their squares add up to one. */
  readonly shares?: readonly { readonly path: string; readonly doubt: Doubt; readonly share: number }[];
}

/** Everything uncertain in the air moves the line through the time that its cylinders take: moved as one. */
const delayAsOne = ({ inputs }: SolvedFloor): Uncertain | undefined => {
  const { added, places } = inputs.timesRead.delay;
  const moved = places
    .map(({ path, doubt, ends }) => ({
      path,
      doubt,
      move: Math.max(...ends.map((end) => Math.abs(end - added))),
    }))
    .filter(({ move }) => move > 0);
  const whole = Math.hypot(...moved.map(({ move }) => move));
  if (!(whole > 0)) return undefined;
  return {
    path: delayPlace({ floor: inputs.floorNumber, formatPath: inputs.formatPath }),
    doubt: 'given',
    ends: [added + whole, added - whole],
    shares: moved.map(({ path, doubt, move }) => ({ path, doubt, share: move / whole })),
  };
};

/**
 * 95 % intervals of a floor's figures and of the gaps of its findings.
 *
 * Method   each uncertain value is put to both ends of its own interval, one at a time, the floor is solved again, and the
 *          changes are added as squares, upward and downward apart: a rate that the washer caps moves down only
 * Returns  intervals where something moves; for a gap also what moves it, by the share of its width
 * Assumes  the uncertain values are independent; a range counts to its hard ends; a stated value without a width and one
 *          that had to be assumed take those of `default-spread.ts`
 * Cost     two solutions an uncertain value, one where it moves next to nothing
 * Source   JCGM 100:2008 (GUM) 5.1.2 with finite changes instead of derivatives, memory
 */
export const intervalsOf = (solved: SolvedFloor): Intervals => {
  const { inputs, values } = solved;
  const uncertain = uncertainPlaces([
    inputs.forFill.account,
    inputs.forLine.account,
    inputs.forAgreement.account,
  ]);
  const delay = delayAsOne(solved);
  if (uncertain.length === 0 && delay === undefined) return { figures: {}, gaps: {} };
  const base = baseOf(solved);
  const figures = (Object.keys(values) as FigureId[]).map((id) => ({
    id,
    from: base.values[id],
    sum: nothing(),
  }));
  const gaps = findingSpecs.flatMap((spec) => {
    const before = gapOf(spec, base.values);
    const gap = (of: FigureValues): number | undefined => gapOf(spec, of);
    const sum: GapSum = { ...nothing(), places: [] };
    return before === undefined
      ? []
      : [{ spec, before, gap, scale: Math.abs(base.values[spec.demand]!), sum }];
  });
  const all: readonly Uncertain[] = [...uncertain, ...(delay === undefined ? [] : [delay])];
  for (const { path, ends, doubt, shares } of all) {
    const figureMoves = figures.map(nothing);
    const gapMoves = gaps.map(nothing);
    const weigh = (other: FigureValues, mirrored: boolean): void => {
      for (const [i, { id, from }] of figures.entries()) {
        if (from !== undefined) reach(figureMoves[i]!, (other[id] ?? from) - from, mirrored);
      }
      for (const [i, { before, gap }] of gaps.entries()) {
        const after = gap(other);
        if (after !== undefined) reach(gapMoves[i]!, after - before, mirrored);
      }
    };
    const low = base.vary(path, ends[0]);
    const little = gaps.every(({ before, gap, scale }) => {
      const after = gap(low);
      return after !== undefined && Math.abs(after - before) <= negligible * scale;
    });
    weigh(low, little);
    if (!little) weigh(base.vary(path, ends[1]), false);
    for (const [i, { sum }] of figures.entries()) addSquares(sum, figureMoves[i]!);
    for (const [i, { sum }] of gaps.entries()) {
      const move = gapMoves[i]!;
      addSquares(sum, move);
      if (!(move.down > 0 || move.up > 0)) continue;
      sum.places.push(
        ...(shares?.map((each) => ({
          path: each.path,
          doubt: each.doubt,
          move: { down: move.down * each.share, up: move.up * each.share },
        })) ?? [{ path, doubt, move }]),
      );
    }
  }
  return {
    figures: Object.fromEntries(
      figures
        .filter(({ sum }) => sum.down > 0 || sum.up > 0)
        .map(({ id, sum }) => [id, intervalAbout(values[id]!, sum)]),
    ),
    gaps: Object.fromEntries(
      gaps.map(({ spec, sum }) => [
        spec.id,
        { ...intervalAbout(gapOf(spec, values)!, sum), causes: causesOf(sum) },
      ]),
    ),
  };
};
