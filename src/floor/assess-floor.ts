import { pressureNeeded } from '../hydraulics/pressure-needed.ts';
import type { Problem } from '../quantity/problem.ts';
import type { Note } from '../sheets/frame.ts';
import type { Figure, Finding, FloorAssessment, Verdict } from './assessment.ts';
import type { Account, BookReader } from './book-reader.ts';
import { cycleChart, holdOf } from './cycle-chart.ts';
import {
  type FigureId,
  type FigureValues,
  figureKinds,
  figureValues,
  slowestLane,
  worstJet,
} from './figure-values.ts';
import { type FindingSpec, findingSpecs, gapOf, groundOf } from './finding-specs.ts';
import { type Intervals, intervalsOf } from './intervals.ts';
import { laneFigures } from './lane-figures.ts';
import { type FloorInputs, readFloor } from './read-floor.ts';
import { limitPaths, readLimits } from './read-limits.ts';
import { type FloorSolution, solveFloor } from './solve-floor.ts';
import { supplyCurve, tankOverTime } from './supply-curve.ts';
import { type LaneTrace, traceLanes } from './trace-lanes.ts';
import { traceLine } from './trace-line.ts';
import { type SupplyTrace, traceSupply } from './trace-supply.ts';
import { makeTracer, type Tracer } from './tracer.ts';

/** Working and its output for each figure that has one. */
type Opens = { readonly [K in FigureId]?: { readonly working: number; readonly output: string } };

const traceAll = (
  tracer: Tracer,
  inputs: FloorInputs,
  solution: FloorSolution,
  values: FigureValues,
): { readonly opens: Opens; readonly lanes: readonly LaneTrace[] } => {
  const { fill } = solution;
  const supply: SupplyTrace | undefined = fill === undefined ? undefined : traceSupply(tracer, inputs, fill);
  const lanes = fill === undefined || supply === undefined ? [] : traceLanes(tracer, inputs, fill, supply);
  const line = traceLine(tracer, inputs, solution, supply, lanes);
  const opens: { -readonly [K in FigureId]?: { working: number; output: string } } = {};
  const open = (id: FigureId, working: number | undefined, output: string): void => {
    if (working !== undefined) opens[id] = { working, output };
  };
  const pressure = fill?.system.source.kind === 'reading' ? 'pressure' : 'manifoldPressure';
  open('manifoldPressure', supply?.manifoldPressure, pressure);
  open(
    'manifoldFlow',
    supply?.runLoss ?? supply?.manifoldPressure,
    supply?.runLoss === undefined ? pressure : 'loss',
  );
  open('runVelocity', supply?.runLoss, 'highestVelocity');
  open('lagTime', supply?.lag, 'lostInAll');
  open('surgePressure', supply?.surge, 'highest');
  if (fill !== undefined) {
    const slowest = fill.row.lanes.indexOf(slowestLane(fill));
    open('fillTime', lanes[slowest]?.fill, 'fillTime');
    const least = fill.row.lanes.findIndex((lane) => lane.volume === values.leastVolume);
    open('leastVolume', lanes[least]?.dose, 'volume');
    const jet = worstJet(fill, inputs.model.lanes, readLimits(inputs));
    open(
      'jetSpeed',
      jet === undefined ? undefined : lanes[inputs.model.lanes.indexOf(jet.lane)]?.jet,
      'velocity',
    );
  }
  open('washerIndex', line.washerIndex, 'index');
  open('washerRate', line.washerRate, 'rate');
  open('closingRate', line.closingRate, 'rate');
  open('fillStationTime', line.fillStationTime, 'time');
  open('cycle', line.cycle, 'period');
  open('runningRate', line.runningRate, 'rate');
  open('hourRate', line.hourRate, 'rate');
  open('worstRow', line.worstRow, 'rate');
  open('fillTimeLeft', line.fillTimeLeft, 'left');
  open('meanDraw', line.meanDraw, 'flow');
  open('manifoldPressureNeeded', line.fillTimeLeft, 'left');
  return { opens, lanes };
};

const grounds = (inputs: FloorInputs, id: FigureId): readonly Account[] => {
  const fill = inputs.forFill.account;
  const line = inputs.forLine.account;
  switch (groundOf[id]) {
    case 'fill':
      return [fill];
    case 'line':
      return [line];
    case 'both':
      return [fill, line];
    case 'agreement':
      return [inputs.forAgreement.account];
  }
};

/** Places whose absence alone makes a limit unknown. */
const limitMissing = (inputs: FloorInputs, id: FigureId): readonly string[] => {
  const paths = limitPaths(inputs);
  const own: Partial<Record<FigureId, string | undefined>> = {
    rating: paths.rating,
    jetAllowed: paths.jetBeforeCovered ?? `${inputs.floorPath}/liquid/product`,
    makeUp: paths.makeUp,
    tankOutlet: paths.outlet,
    tankLow: `${inputs.floorPath}/supply/source/area`,
    level: `${inputs.formatPath}/level`,
    jetSpeed: inputs.model.lanes.some((lane) => lane.nozzleBore === undefined)
      ? `${inputs.model.lanes.find((lane) => lane.nozzleBore === undefined)!.path}/nozzleBore`
      : undefined,
    agreedRate: inputs.ratePath,
    // bottles in a shift want to know what stops the line, and for how long
    shiftOutput: `${inputs.stationPath ?? '/line/stations'}/stops`,
    takeOffRate: (inputs.forLine.book.line?.stations ?? [])
      .map((station, i) => (station.kind === 'take-off' ? `/line/stations/${i}/rate` : undefined))
      .find((path) => path !== undefined),
  };
  const path = own[id];
  return path === undefined ? [] : [path];
};

const figure = (
  inputs: FloorInputs,
  values: FigureValues,
  intervals: Intervals,
  opens: Opens,
  id: FigureId,
): Figure => {
  const value = values[id];
  const accounts = grounds(inputs, id);
  const interval = intervals.figures[id];
  const missing =
    value === undefined
      ? [...new Set([...limitMissing(inputs, id), ...accounts.flatMap((account) => [...account.missing])])]
      : [];
  return {
    id,
    kind: figureKinds[id],
    assumed: [...new Set(accounts.flatMap((account) => [...account.assumed]))],
    missing,
    ...(value === undefined ? {} : { value }),
    ...(interval === undefined || value === undefined ? {} : interval),
    ...(opens[id] ?? {}),
  };
};

/** A gap this small against its demand is rounding, not a shortage. */
const rounding = 1e-9;

const verdictOf = (
  gap: number | undefined,
  interval: { low: number; high: number } | undefined,
  scale: number,
): Verdict => {
  if (gap === undefined) return 'unknown';
  const low = interval?.low ?? gap;
  const high = interval?.high ?? gap;
  if (low >= -rounding * scale) return 'carries';
  return high < 0 ? 'short' : 'unknown';
};

const finding = (
  spec: FindingSpec,
  values: FigureValues,
  intervals: Intervals,
  figures: Readonly<Record<string, Figure>>,
): Finding => {
  const decider = findingSpecs.find((each) => each.id === (spec.decidedBy ?? spec.id))!;
  const gap = gapOf(decider, values);
  const own = gapOf(spec, values);
  const demand = values[spec.demand];
  const interval = intervals.gaps[decider.id];
  const verdict =
    own === undefined ? 'unknown' : verdictOf(gap, interval, Math.abs(values[decider.demand] ?? 1));
  const have = figures[spec.have]!;
  const asked = figures[spec.demand]!;
  const decides =
    verdict !== 'unknown' ? undefined : (have.missing[0] ?? asked.missing[0] ?? interval?.widest);
  const notes: Note[] = [];
  return {
    id: spec.id,
    verdict,
    demand: asked,
    have,
    sense: spec.sense,
    levers: spec.levers,
    notes,
    ...(own === undefined || demand === undefined || demand === 0 ? {} : { margin: own / Math.abs(demand) }),
    ...(decides === undefined ? {} : { decides }),
  };
};

const notesOf = (inputs: FloorInputs, solution: FloorSolution): readonly Note[] => {
  const notes: Note[] = [];
  if (inputs.liquid?.outside === true) notes.push({ code: 'FLOOR_LIQUID_OUTSIDE' });
  if (solution.stuck !== undefined) {
    notes.push({ code: 'FLOOR_FILL_NEVER_ENDS', parts: { lanes: solution.stuck.join(', ') } });
  }
  if (solution.deadlock !== undefined) {
    notes.push({ code: 'FLOOR_DEADLOCK', parts: { events: solution.deadlock.join(', ') } });
  }
  const stuck = solution.hour?.walk?.stuck;
  if (stuck !== undefined) {
    notes.push({ code: 'FLOOR_STANDS_STILL', parts: { seconds: stuck.at, lanes: stuck.lanes.join(', ') } });
  }
  if (solution.hour?.ranDry !== undefined) {
    notes.push({ code: 'FLOOR_RUNS_DRY', parts: { seconds: solution.hour.ranDry } });
  }
  if (inputs.supply?.heightFrom === 'rises') notes.push({ code: 'FLOOR_HEIGHT_FROM_RISES' });
  return notes;
};

/** One floor of a book: figures, findings, lanes, what holds it, with the workings of all of it. */
export const assessFloor = (
  reader: BookReader,
  floor: number,
  format: string | undefined,
): FloorAssessment => {
  const inputs = readFloor(reader, floor, format);
  const limits = readLimits(inputs);
  const solution = solveFloor(inputs.model);
  let values = figureValues(inputs.model, solution, limits);
  const { fill } = solution;
  if (fill !== undefined && values.fillTimeLeft !== undefined) {
    const needed = pressureNeeded(fill.system, fill.pressure, values.fillTimeLeft);
    if (needed !== undefined) values = { ...values, manifoldPressureNeeded: needed };
  }
  const intervals = intervalsOf(reader, floor, format, inputs, solution, values);
  const tracer = makeTracer();
  const { opens, lanes } = traceAll(tracer, inputs, solution, values);
  const figures = Object.fromEntries(
    (Object.keys(figureKinds) as FigureId[]).map((id) => [id, figure(inputs, values, intervals, opens, id)]),
  );
  const book = reader.book.floors![floor]!;
  const hold = holdOf(inputs, solution);
  const problems: readonly Problem[] = [];
  return {
    floor: book.tag,
    name: book.name ?? book.tag,
    role: book.role ?? 'other',
    format: inputs.format?.tag ?? '',
    figures,
    findings: findingSpecs
      .filter((spec) => spec.asked(inputs, values))
      .map((spec) => finding(spec, values, intervals, figures)),
    lanes: laneFigures(inputs, solution, lanes),
    cycle: cycleChart(solution),
    curve: supplyCurve(solution),
    tank: tankOverTime(solution),
    workings: tracer.workings,
    problems,
    notes: notesOf(inputs, solution),
    ...(inputs.liquid === undefined ? {} : { liquid: inputs.liquid.product }),
    ...(hold === undefined ? {} : { hold }),
  };
};
