import type { Note } from '../sheets/frame.ts';
import type { FloorAssessment } from './assessment.ts';
import type { BookReader } from './book-reader.ts';
import { cycleChart, holdOf } from './cycle-chart.ts';
import { type FigureId, slowestLane, worstJet } from './figure-values.ts';
import { type Judged, judgeFloor, type Opens } from './judge-floor.ts';
import { laneFigures } from './lane-figures.ts';
import { lineKey } from './line-figures.ts';
import { onDemand } from './on-demand.ts';
import { type FloorInputs, formatOf } from './read-floor.ts';
import { readLimits } from './read-limits.ts';
import type { FloorSolution } from './solve-floor.ts';
import { supplyCurve, tankOverTime } from './supply-curve.ts';
import {
  type LaneTrace,
  traceLanes,
  traceManifoldFlow,
  traceOverflow,
  traceTankLevel,
} from './trace-lanes.ts';
import { traceLine } from './trace-line.ts';
import { type SupplyTrace, tracePressureNeeded, traceSupply } from './trace-supply.ts';
import { makeTracer, type Trace, type Tracer } from './tracer.ts';
import { assessUtilities } from './utilities/assess-utilities.ts';

const traceAll = (
  tracer: Tracer,
  { inputs, solution, values, needed, timeLeft }: Judged,
): { readonly opens: Opens; readonly lanes: readonly LaneTrace[] } => {
  const { fill } = solution;
  const supply: SupplyTrace | undefined = fill === undefined ? undefined : traceSupply(tracer, inputs, fill);
  const lanes = fill === undefined || supply === undefined ? [] : traceLanes(tracer, inputs, fill, supply);
  const line = traceLine(tracer, inputs, solution, supply, lanes, timeLeft);
  const opens: { -readonly [K in FigureId]?: { working: number; output: string } } = {};
  const open = (id: FigureId, working: number | undefined, output: string): void => {
    if (working !== undefined) opens[id] = { working, output };
  };
  const pressure = fill?.system.source.kind === 'reading' ? 'pressure' : 'manifoldPressure';
  open('manifoldPressure', supply?.manifoldPressure, pressure);
  open('runVelocity', supply?.runLoss, 'highestVelocity');
  open('lagTime', supply?.lag, 'lostInAll');
  open('surgePressure', supply?.surge, 'highest');
  if (fill !== undefined && supply !== undefined) {
    open('manifoldFlow', traceManifoldFlow(tracer, inputs, fill, supply), 'flow');
    open('overflow', traceOverflow(tracer, inputs, fill, lanes), 'overflow');
    open('tankLow', traceTankLevel(tracer, inputs, fill, solution.hour?.drawnMost ?? 0), 'level');
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
  if (fill !== undefined && supply !== undefined && needed !== undefined) {
    open('manifoldPressureNeeded', tracePressureNeeded(tracer, inputs, fill, supply, needed), pressure);
  }
  return { opens, lanes };
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

/** What the line does on a floor, with its workings. */
type LineAnswer = Omit<
  FloorAssessment,
  'floor' | 'name' | 'role' | 'utilities' | 'workings' | 'workingAt'
> & {
  readonly trace: Trace;
};

const assessLine = (reader: BookReader, floor: number, format: string | undefined): LineAnswer => {
  const tracer = makeTracer();
  let lanes: readonly LaneTrace[] = [];
  const { inputs, solution, figures, findings } = judgeFloor(reader, floor, format, {
    opens: (judged) => {
      const traced = traceAll(tracer, judged);
      lanes = traced.lanes;
      return traced.opens;
    },
  });
  const hold = holdOf(inputs, solution);
  return {
    format: inputs.format?.tag ?? '',
    figures,
    findings,
    lanes: laneFigures(inputs, solution, lanes),
    cycle: cycleChart(solution),
    curve: supplyCurve(solution),
    tank: tankOverTime(solution),
    notes: notesOf(inputs, solution),
    ...(inputs.liquid === undefined ? {} : { liquid: inputs.liquid.product }),
    ...(hold === undefined ? {} : { hold }),
    trace: tracer.whole,
  };
};

/**
 * One floor of a book: figures, findings, lanes, what holds it, with the workings of all of it.
 *
 * Cost     the utilities, more than half of it all, are worked out when they or the workings are first looked at: a page of
 *          the rate waits for none of them. What looks at nothing that has changed since the book before is taken over
 */
export const assessFloor = (
  reader: BookReader,
  floor: number,
  format: string | undefined,
): FloorAssessment => {
  const where = { floor, formatPath: formatOf(reader.book, format).path };
  const { trace, ...line } = reader.kept(lineKey(where), () => assessLine(reader, floor, format));
  const tracer = makeTracer();
  tracer.takeIn(trace);
  const utilities = assessUtilities(reader, where, tracer);
  const workings = onDemand(() => {
    // theirs are among them
    void utilities.findings;
    return tracer.workings;
  });
  const { tag, name, role } = reader.book.floors![floor]!;
  return {
    floor: tag,
    name: name ?? tag,
    role: role ?? 'other',
    ...line,
    utilities,
    get workings() {
      return workings();
    },
    workingAt: tracer.workingAt,
  };
};
