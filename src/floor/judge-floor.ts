import { type PressureNeeded, pressureNeeded } from '../hydraulics/pressure-needed.ts';
import { timeLeftForFill } from '../line/time-left-for-fill.ts';
import type { Note } from '../sheets/frame.ts';
import type { Figure, Finding } from './assessment.ts';
import type { BookReader } from './book-reader.ts';
import { type FigureId, type FigureValues, figureKinds, figureValues } from './figure-values.ts';
import { type FindingSpec, findingSpecs, type Ground, gapOf, groundOf } from './finding-specs.ts';
import { type Intervals, intervalsOf, type SolvedFloor } from './intervals.ts';
import { type FloorInputs, readFloor } from './read-floor.ts';
import { limitPaths, readLimits } from './read-limits.ts';
import { type FloorSolution, solveFloor } from './solve-floor.ts';
import { stationOf } from './station-of.ts';
import { verdictOf } from './verdict-of.ts';

/** Working and its output for each figure that has one. */
export type Opens = { readonly [K in FigureId]?: { readonly working: number; readonly output: string } };

/** What was assumed and what is missing behind a figure. */
interface Basis {
  readonly assumed: readonly string[];
  readonly missing: readonly string[];
}

/** The bases of all figures: figures on one ground share one. */
const basesOf = (inputs: FloorInputs): Readonly<Record<Ground, Basis>> => {
  const basis = (...readers: readonly BookReader[]): Basis => ({
    assumed: [...new Set(readers.flatMap(({ account }) => [...account.assumed.keys()]))],
    missing: [...new Set(readers.flatMap(({ account }) => [...account.missing]))],
  });
  const { forFill, forLine, forAgreement } = inputs;
  return {
    fill: basis(forFill),
    line: basis(forLine),
    both: basis(forFill, forLine),
    agreement: basis(forAgreement),
  };
};

/** Figures that are said in the book and not computed. */
const said: ReadonlySet<FigureId> = new Set([
  'agreedRate',
  'level',
  'rating',
  'jetAllowed',
  'makeUp',
  'tankOutlet',
  'takeOffRate',
]);

type OwnPlaces = { readonly [K in FigureId]?: string | undefined };

/** Bottles in a shift want to know what stops each station, and for how long. */
const stopsWanted = ({ forLine: { book } }: FloorInputs): string | undefined => {
  const stations = book.line?.stations ?? [];
  const silent = stations.findIndex(({ stops }) => stops === undefined);
  return silent < 0 ? undefined : `/line/stations/${silent}/stops`;
};

/** Places whose absence alone makes a figure unknown, and where those that are said stand. */
const ownPlaces = (inputs: FloorInputs): OwnPlaces => {
  const paths = limitPaths(inputs);
  const noBore = inputs.model.lanes.find((lane) => lane.nozzleBore === undefined);
  const takeOff = stationOf(inputs.forLine.book, 'take-off');
  return {
    rating: paths.rating,
    jetAllowed: paths.jetBeforeCovered ?? `${inputs.floorPath}/liquid/product`,
    makeUp: paths.makeUp,
    tankOutlet: paths.outlet,
    tankLow: `${inputs.floorPath}/supply/source/area`,
    level: `${inputs.formatPath}/level`,
    jetSpeed: noBore === undefined ? undefined : `${noBore.path}/nozzleBore`,
    agreedRate: inputs.ratePath,
    shiftOutput: stopsWanted(inputs),
    takeOffRate: takeOff === undefined ? undefined : `${takeOff.path}/rate`,
  };
};

const figure = (
  bases: Readonly<Record<Ground, Basis>>,
  places: OwnPlaces,
  values: FigureValues,
  intervals: Intervals,
  opens: Opens,
  id: FigureId,
): Figure => {
  const value = values[id];
  const { assumed, missing } = bases[groundOf[id]];
  const interval = intervals.figures[id];
  const own = places[id];
  return {
    id,
    kind: figureKinds[id],
    assumed,
    missing: value === undefined ? [...new Set([...(own === undefined ? [] : [own]), ...missing])] : [],
    ...(value === undefined ? {} : { value }),
    ...(interval === undefined || value === undefined ? {} : interval),
    ...(opens[id] ?? {}),
    ...(value !== undefined && own !== undefined && said.has(id) ? { path: own } : {}),
  };
};

/** The spec whose gap decides a finding. */
const deciderOf = (spec: FindingSpec): FindingSpec =>
  findingSpecs.find(({ id }) => id === (spec.decidedBy ?? spec.id)) ?? spec;

const finding = (
  spec: FindingSpec,
  values: FigureValues,
  intervals: Intervals,
  figures: Readonly<Record<string, Figure>>,
): Finding => {
  const decider = deciderOf(spec);
  const gap = gapOf(decider, values);
  const own = gapOf(spec, values);
  const demand = values[spec.demand];
  const interval = intervals.gaps[decider.id];
  const verdict =
    own === undefined
      ? 'unknown'
      : spec.fails?.(values) === true
        ? 'short'
        : verdictOf(gap, interval, Math.abs(values[decider.demand] ?? 1));
  const have = figures[spec.have]!;
  const asked = figures[spec.demand]!;
  const decides =
    verdict !== 'unknown' ? undefined : (have.missing[0] ?? asked.missing[0] ?? interval?.causes[0]?.path);
  const notes: Note[] = [];
  return {
    id: spec.id,
    verdict,
    demand: asked,
    have,
    sense: spec.sense,
    levers: spec.levers,
    notes,
    causes: interval?.causes ?? [],
    ifSaid: verdict !== 'unknown' && (interval?.causes ?? []).some((cause) => cause.doubt !== 'given'),
    ...(own === undefined || demand === undefined || demand === 0 ? {} : { margin: own / Math.abs(demand) }),
    ...(decides === undefined ? {} : { decides }),
  };
};

/** One floor judged: its figures and findings, without the workings. */
export interface Judgement {
  readonly inputs: FloorInputs;
  readonly solution: FloorSolution;
  readonly values: FigureValues;
  readonly findings: readonly Finding[];
  readonly figures: Readonly<Record<string, Figure>>;
}

/** The numbers of a floor before they are put into findings. */
export interface Judged extends SolvedFloor {
  readonly needed: PressureNeeded | undefined;
}

/** What a judgement is asked for. */
interface NumbersOptions {
  /** Leaves out the hour and the findings that rest on it. */
  readonly noHour?: boolean;
}

const numbersOf = (
  reader: BookReader,
  floor: number,
  format: string | undefined,
  { noHour }: NumbersOptions,
): Judged => {
  const inputs = readFloor(reader, floor, format);
  const limits = readLimits(inputs);
  const solution = solveFloor(inputs.model, { noHour: noHour === true });
  const { agreedRate, times } = inputs.model;
  const timeLeft = agreedRate === undefined ? undefined : timeLeftForFill(times, agreedRate);
  let values = figureValues(inputs.model, solution, limits, { timeLeft });
  const { fill } = solution;
  let needed: PressureNeeded | undefined;
  if (fill !== undefined && values.fillTimeLeft !== undefined) {
    needed = pressureNeeded(fill.system, fill, values.fillTimeLeft);
    if (needed !== undefined) values = { ...values, manifoldPressureNeeded: needed.pressure };
  }
  return { reader, floor, format, inputs, solution, values, needed, timeLeft };
};

const judgementOf = (
  { inputs, solution, values }: Judged,
  intervals: Intervals,
  opened: Opens = {},
): Judgement => {
  const bases = basesOf(inputs);
  const places = ownPlaces(inputs);
  const figures = Object.fromEntries(
    (Object.keys(figureKinds) as FigureId[]).map((id) => [
      id,
      figure(bases, places, values, intervals, opened, id),
    ]),
  );
  return {
    inputs,
    solution,
    values,
    figures,
    findings: findingSpecs
      .filter((spec) => spec.asked(inputs, values))
      .map((spec) => finding(spec, values, intervals, figures)),
  };
};

export interface JudgeOptions extends NumbersOptions {
  /** Gives the working of each figure, once the numbers are known. */
  readonly opens?: (judged: Judged) => Opens;
}

/** Demand against what one floor has. */
export const judgeFloor = (
  reader: BookReader,
  floor: number,
  format: string | undefined,
  { opens, ...options }: JudgeOptions = {},
): Judgement => {
  const judged = numbersOf(reader, floor, format, options);
  const intervals = intervalsOf(judged);
  return judgementOf(judged, intervals, opens?.(judged));
};

/** Gives a finding by its id. */
export type FindingAsked = (id: string) => Finding | undefined;

const isShort = (id: string, values: FigureValues): boolean => {
  const spec = findingSpecs.find((each) => each.id === id);
  if (spec === undefined) return false;
  const decider = deciderOf(spec);
  return verdictOf(gapOf(decider, values), undefined, Math.abs(values[decider.demand] ?? 1)) === 'short';
};

/**
 * One floor solved once and judged as far as it is asked whether a finding carries: no interval helps one that its
 * figures leave short.
 */
export const floorAsked = (
  reader: BookReader,
  floor: number,
  format: string | undefined,
  options: NumbersOptions,
): FindingAsked => {
  const judged = numbersOf(reader, floor, format, options);
  const askedOf = (intervals: () => Intervals): FindingAsked => {
    let findings: readonly Finding[] | undefined;
    return (id) => {
      findings ??= judgementOf(judged, intervals()).findings;
      return findings.find((each) => each.id === id);
    };
  };
  const plain = askedOf(() => ({ figures: {}, gaps: {} }));
  const sure = askedOf(() => intervalsOf(judged));
  return (id) => (isShort(id, judged.values) ? plain(id) : sure(id));
};
