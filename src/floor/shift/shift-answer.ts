import type { Book } from '../../book/index.ts';
import {
  type Bounds,
  boundsOf,
  goodsOfShifts,
  type RunParts,
  type ShiftFigures,
  type ShiftLine,
  shiftFigures,
  sumsOfShifts,
} from '../../line/shift/index.ts';
import { bottleRateSheet } from '../../sheets/rate/bottle-rate.ts';
import { efficiencyByOwnerSheet } from '../../sheets/rate/efficiency-by-owner.ts';
import { intervalOfRunsSheet } from '../../sheets/rate/interval-of-runs.ts';
import { meanDrawSheet } from '../../sheets/rate/mean-draw.ts';
import { pairedChangeSheet } from '../../sheets/rate/paired-change.ts';
import { tankForRun, tankForRunSheet } from '../../sheets/rate/tank-for-run.ts';
import { timeLostSheet } from '../../sheets/rate/time-lost.ts';
import { bookReader } from '../book-reader.ts';
import type { Verdict, Working } from '../finding.ts';
import { formatOf } from '../read-floor.ts';
import { makeTracer, type Tracer } from '../tracer.ts';
import { bindShift } from './bind-shift.ts';
import type { BoundShift } from './bound-shift.ts';
import { type LostRow, lostRows, timeByOwner } from './lost-times.ts';
import { type ProofPlan, proofPlan, type RunMade, type RunShown, runShown } from './proof-run.ts';
import { type ShiftChangeTried, shiftChanges, withFillBy } from './shift-changes.ts';
import type { ShiftRecords } from './shift-records.ts';
import { type ShiftWashing, shiftWashing } from './zone-contacts.ts';

export interface ShiftOptions {
  readonly format?: string;
  /** Trials and runs that were recorded on the floors. */
  readonly recorded?: ShiftRecords;
  readonly seed: number;
  /** Shifts that are run; of a change a share of these, in pairs. */
  readonly shifts: number;
  /** What one change is worth is left out. */
  readonly noWorth?: boolean;
  readonly proof?: boolean;
  readonly run?: RunMade;
  /** Runs the shifts, where they are to run on several cores. */
  readonly runParts?: RunParts;
  /** Share of the work that is over, for whoever waits. */
  readonly progress?: (share: number) => void;
}

/** A figure with its interval and its working. */
export interface Shown extends Bounds {
  readonly working?: number;
}

/** What one change is worth: good bottles a shift more, by shifts that met the same chances. */
export interface ChangeWorth extends Omit<ShiftChangeTried, 'line'> {
  readonly pairs: number;
  readonly good: Shown;
}

export interface ShiftEfficiency {
  /** Bottles a second that it is held against: the agreed rate, else the running one. */
  readonly setRate: number;
  /** As the plant sees it, and as the machine answers for it. */
  readonly overall: number;
  readonly technical: number;
  readonly machine: number;
  readonly supply: number;
  readonly people: number;
  readonly material: number;
  readonly working: number;
}

/** A tank that gave no more than its make-up before the shift was over. */
export interface SupplyRanDry {
  /** Share of the shifts in which it did; s from the start and good bottles before it, their means. */
  readonly share: number;
  readonly at: number;
  readonly bottles: number;
  /** Make-up that carries the running rate for ever, m3/s; or what the tank must give beside its make-up, m3. */
  readonly makeUp: number;
  readonly usable: number;
  readonly working?: number;
  /** Of what the tank must give. */
  readonly tankWorking?: number;
}

/** One floor's shift in data. */
export interface ShiftAnswer {
  readonly bound: Omit<BoundShift, 'line'>;
  readonly runningRate?: { readonly value: number; readonly working?: number };
  /** The rest is absent where the line can't be run. */
  readonly shifts?: number;
  readonly good?: Shown;
  /** Mean good bottles where the fill is as long, and as short, as the book leaves open. */
  readonly goodFrom?: readonly [number, number];
  /** Good bottles against what was agreed for a shift. */
  readonly agreed?: { readonly bottles: number; readonly verdict: Verdict };
  readonly figures?: ShiftFigures;
  readonly ranDry?: SupplyRanDry;
  readonly minutes: readonly LostRow[];
  readonly efficiency?: ShiftEfficiency;
  readonly changes: readonly ChangeWorth[];
  readonly washing?: ShiftWashing;
  readonly proof?: ProofPlan;
  readonly shown?: RunShown;
  readonly workings: readonly Working[];
}

/** Pairs of shifts for a change: they share their chances, so fewer tell as much. */
const pairShare = 0.2;
const leastPairs = 10;

/** Members that the sheets of lists show in full; a longer list has its interval from the sums. */
const mostListed = 1000;

const intervalIn = (tracer: Tracer, figures: ShiftFigures, confidence: number): Shown => {
  const { shifts, good, goodCounts } = figures;
  const bounds = boundsOf(good, shifts, confidence) ?? { mean: good.mean, low: good.mean, high: good.mean };
  if (shifts < 2 || shifts > mostListed) return bounds;
  const working = tracer.trace(
    intervalOfRunsSheet,
    {
      values: { value: goodCounts.flatMap((each) => new Array<number>(each.shifts).fill(each.good)) },
      confidence: { value: confidence, from: { path: '/agreement/confidence' } },
    },
    { output: 'mean', value: good.mean },
  );
  return working === undefined ? bounds : { ...bounds, working };
};

const efficiencyIn = (
  tracer: Tracer,
  bound: BoundShift,
  figures: ShiftFigures,
): ShiftEfficiency | undefined => {
  const setRate = bound.agreedRate ?? bound.runningRate;
  if (setRate === undefined) return undefined;
  const owners = timeByOwner(figures.minutes);
  const working = tracer.trace(efficiencyByOwnerSheet, {
    duration: { value: bound.duration, from: { path: '/agreement/shift' } },
    setRate: { value: setRate },
    good: { value: figures.good.mean },
    machine: { value: owners.machine },
    supply: { value: owners.supply },
    people: { value: owners.people },
    material: { value: owners.material },
  });
  const overall = tracer.output(working, 'overall');
  const technical = tracer.output(working, 'technical');
  if (working === undefined || overall === undefined || technical === undefined) return undefined;
  return { setRate, overall, technical, ...owners, working };
};

/** Each row of the shift with its working. */
const minutesIn = (
  tracer: Tracer,
  { duration, agreedRate, runningRate }: BoundShift,
  figures: ShiftFigures,
): readonly LostRow[] => {
  const setRate = agreedRate ?? runningRate;
  return lostRows(figures.minutes, duration).map((row) => {
    if (row.state === 'running' || setRate === undefined) return row;
    const working = tracer.trace(timeLostSheet, {
      duration: { value: duration, from: { path: '/agreement/shift' } },
      // the sum of means may pass the shift by its rounding
      lost: { value: Math.min(duration, row.seconds) },
      setRate: { value: setRate },
    });
    return working === undefined ? row : { ...row, working };
  });
};

/** Where a tank ran dry: when, after how many bottles, and what would carry it. */
const ranDryIn = (
  tracer: Tracer,
  { line, duration, runningRate }: BoundShift,
  figures: ShiftFigures,
): SupplyRanDry | undefined => {
  const supply = line?.fill?.supply;
  const { ranDry } = figures;
  if (supply === undefined || ranDry === undefined || runningRate === undefined) return undefined;
  const working = tracer.trace(meanDrawSheet, {
    rate: { value: runningRate },
    volume: { value: supply.perBottle },
  });
  const makeUp = tracer.output(working, 'flow') ?? runningRate * supply.perBottle;
  const tankWorking = tracer.trace(tankForRunSheet, {
    draw: { value: makeUp, ...(working === undefined ? {} : { from: { working, output: 'flow' } }) },
    makeUp: { value: supply.makeUp },
    duration: { value: duration, from: { path: '/agreement/shift' } },
  });
  return {
    ...ranDry,
    makeUp,
    usable: tankForRun(makeUp, supply.makeUp, duration),
    ...(working === undefined ? {} : { working }),
    ...(tankWorking === undefined ? {} : { tankWorking }),
  };
};

const agreedIn = (
  { agreedRate, agreedEfficiency, duration }: BoundShift,
  good: Bounds,
): ShiftAnswer['agreed'] => {
  if (agreedRate === undefined) return undefined;
  const bottles = agreedRate * (agreedEfficiency ?? 1) * duration;
  return {
    bottles,
    verdict: good.low >= bottles ? 'carries' : good.high < bottles ? 'short' : 'unknown',
  };
};

/** What a change is worth, from shifts that met the same chances before and after it. */
export const changeWorth = (
  tracer: Tracer,
  before: readonly number[],
  after: readonly number[],
  confidence: number,
): Shown | undefined => {
  const working = tracer.trace(pairedChangeSheet, {
    before: { value: before },
    after: { value: after },
    confidence: { value: confidence, from: { path: '/agreement/confidence' } },
  });
  const of = (output: string) => tracer.output(working, output);
  const [mean, low, high] = [of('mean'), of('low'), of('high')];
  return working === undefined || mean === undefined || low === undefined || high === undefined
    ? undefined
    : { mean, low, high, working };
};

const rateIn = (tracer: Tracer, { runningRate, period, loop }: BoundShift): ShiftAnswer['runningRate'] => {
  if (runningRate === undefined || period === undefined || loop === undefined) return undefined;
  const working = tracer.trace(
    bottleRateSheet,
    { bottles: { value: loop.bottles / loop.fills }, period: { value: period, from: { solved: 'loop' } } },
    { output: 'rate', value: runningRate },
  );
  return { value: runningRate, ...(working === undefined ? {} : { working }) };
};

/**
 * What a whole shift does on one floor.
 *
 * Symbols  floor  its place among the floors of the book
 * Returns  where a station does not say what makes it stand, the running rate and the places that would answer
 * Assumes  the book has been read
 * Cost     so many shifts, and two fifths of them for each change
 */
export const shiftAnswer = (book: Book, floor: number, options: ShiftOptions): ShiftAnswer => {
  const { format, seed, shifts, progress, runParts } = options;
  const found = bindShift(book, floor, format, options.recorded);
  const { line, ...bound } = found;
  const tracer = makeTracer();
  const runningRate = rateIn(tracer, found);
  const shown = options.run === undefined ? undefined : runShown(tracer, options.run, bound.confidence);
  const common = {
    bound,
    ...(runningRate === undefined ? {} : { runningRate }),
    ...(shown === undefined ? {} : { shown }),
  };
  if (line === undefined) return { ...common, workings: tracer.workings, minutes: [], changes: [] };
  const { confidence } = bound;
  const figures = shiftFigures(line, sumsOfShifts(line, { seed, shifts, runParts }));
  const good = intervalIn(tracer, figures, confidence);
  const tried = options.noWorth === true ? [] : shiftChanges(line);
  const pairs = Math.min(shifts, Math.max(leastPairs, Math.round(pairShare * shifts)));
  const whole = shifts + pairs * (tried.length + 3);
  progress?.(shifts / whole);
  const goodWith = (other: ShiftLine): number =>
    shiftFigures(other, sumsOfShifts(other, { seed, shifts: pairs, runParts })).good.mean;
  const { fillEnds } = bound;
  // both ends meet the chances of the same first shifts as the fill that is taken
  const goodBy = (seconds: number, same: number): number =>
    good.mean + goodWith(withFillBy(line, seconds)) - same;
  const ends = (): readonly [number, number] | undefined => {
    if (fillEnds === undefined || fillEnds[0] === fillEnds[1]) return undefined;
    const same = goodWith(line);
    return [goodBy(fillEnds[1], same), goodBy(fillEnds[0], same)];
  };
  const goodFrom = ends();
  const before =
    tried.length === 0 || pairs < 2 ? [] : goodsOfShifts(line, { seed, shifts: pairs, runParts });
  const changes = tried.flatMap(({ line: other, ...change }, i): ChangeWorth[] => {
    const worth = changeWorth(
      tracer,
      before,
      goodsOfShifts(other, { seed, shifts: pairs, runParts }),
      confidence,
    );
    progress?.((shifts + pairs * (i + 4)) / whole);
    return worth === undefined ? [] : [{ ...change, pairs, good: worth }];
  });
  const efficiency = efficiencyIn(tracer, found, figures);
  const agreed = agreedIn(found, good);
  const ranDry = ranDryIn(tracer, found, figures);
  const proof = options.proof === true ? proofPlan(tracer, found, figures) : undefined;
  const where = { floor, formatPath: formatOf(book, format).path };
  return {
    ...common,
    shifts,
    good,
    figures,
    minutes: minutesIn(tracer, found, figures),
    changes: [...changes].sort((a, b) => b.good.mean - a.good.mean),
    washing: shiftWashing(bookReader(book), where, tracer, figures.contacts),
    ...(ranDry === undefined ? {} : { ranDry }),
    ...(goodFrom === undefined ? {} : { goodFrom }),
    ...(agreed === undefined ? {} : { agreed }),
    ...(efficiency === undefined ? {} : { efficiency }),
    ...(proof === undefined ? {} : { proof }),
    // those of all figures above, so not before them
    workings: tracer.workings,
  };
};
