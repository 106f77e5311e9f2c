import type { Book } from '../../book/index.ts';
import { nextLoop } from '../../line/next-loop.ts';
import { type ShiftLine, timeWorth } from '../../line/shift/index.ts';
import type { LineSolution } from '../../line/solve-line.ts';
import { bookReader } from '../book-reader.ts';
import { holdOf } from '../cycle-chart.ts';
import type { Figure } from '../finding.ts';
import { holdRulesOf } from '../hold-rules-of.ts';
import { judgeFloor } from '../judge-floor.ts';
import { type FloorSolution, solveFloor } from '../solve-floor.ts';
import type { BoundShift, NextLoop, StepWorth } from './bound-shift.ts';
import { loggedLine, type StopLog } from './logged-stops.ts';
import { floorShiftProblem } from './problems.ts';
import { shiftLineOf, stopsOfStations } from './shift-line-of.ts';
import { lineProblemsOf, shiftProblemsOf } from './shift-problems-of.ts';
import type { ShiftRecords } from './shift-records.ts';
import { type TrialFill, trialFill } from './trial-fill.ts';

/** A shift where the agreement names none, common practice. */
const usualShift = 8 * 3600;
/** Two-sided, where the agreement names none. */
const usualConfidence = 0.95;

const nextOf = ({ graph, cycle, period }: LineSolution): NextLoop | undefined => {
  const next = nextLoop(graph, cycle);
  if (next === undefined) return undefined;
  const own = next.period / graph.fills;
  return {
    steps: next.loop.flatMap(({ steps }) => steps).filter(({ seconds }) => seconds > 0),
    period: own,
    shorter: period - own,
  };
};

const paceOf = ({ rate, period, byBelts, cycle, graph: { bottles, fills } }: LineSolution) => ({
  ...(byBelts === undefined ? {} : { byBelts }),
  runningRate: rate,
  period,
  loop: { blocks: cycle.loop.reduce((sum, { lag }) => sum + lag, 0), bottles, fills },
});

const worthOf = ({ times, period, rate, graph }: LineSolution): readonly StepWorth[] =>
  (['fill', 'dwell', 'cap'] as const).flatMap((step) => {
    const found = timeWorth(times, step);
    if (found === undefined || !(found.worth > 0)) return [];
    const { now, until = 0, worth } = found;
    const over = Math.min(1, now - until);
    if (!(over > 0)) return [];
    const block = period * graph.fills;
    const shorter = block - ((worth * block * block) / graph.bottles) * over;
    return [{ step, seconds: now, gain: graph.bottles / shorter - rate, over, until }];
  });

/** s by which a set may take more or less than it was taken for, by trials, else by what the book is not sure of. */
const fillEndsOf = (found: TrialFill | undefined, byBook: Figure | undefined): BoundShift['fillEnds'] => {
  if (found !== undefined) {
    const { seconds, low, high } = found.told.set;
    return [low - seconds, high - seconds];
  }
  const { value, low, high } = byBook ?? {};
  return value === undefined || low === undefined || high === undefined
    ? undefined
    : [low - value, high - value];
};

/** Whether times between stops come from a log: all that there are were measured, or were met in runs. */
const stopsFrom = (
  used: ReadonlyMap<string, { readonly standing: string }>,
  stops: number,
  log: StopLog | undefined,
): BoundShift['stops'] => {
  if (stops === 0) return 'none';
  if (log !== undefined && log.causes.length > 0) return log.unseen.length > 0 ? 'partly' : 'logged';
  const between = [...used].filter(([path]) => /\/(stops|stopDevices)\/.*\/between$/.test(path));
  return between.length > 0 && between.every(([, { standing }]) => standing === 'measured')
    ? 'logged'
    : 'declared';
};

const cantRun = (book: Book, line: ShiftLine, { stuck, deadlock, ...solved }: FloorSolution) => {
  const ofBook = shiftProblemsOf(book);
  if (stuck !== undefined) {
    const parts = { lanes: stuck.join(', ') };
    return [...ofBook, floorShiftProblem('SHIFT_FILL_NEVER_ENDS', '/line/stations', { parts })];
  }
  if (deadlock !== undefined) {
    const parts = { loop: [...deadlock, deadlock[0]].join(' → ') };
    return [...ofBook, { code: 'SHIFT_DEADLOCK', path: '/line/holdRules', parts }];
  }
  return solved.line === undefined || ofBook.length > 0 ? ofBook : lineProblemsOf(book, line);
};

/**
 * One floor of a book as a line for a shift, with what its exact cycle says.
 *
 * Method   times, fill and index as the assessment finds them; stops, losses and room out of the book
 * Symbols  floor     its place among the floors of the book
 *          recorded  trials and runs of its floors: what they say of the fill and of the stops goes before what the book says
 * Returns  plain data; the line is absent where a station does not say what makes it stand, where the rate is unknown, or
 *          where the line can't run, and then says why
 * Cost     one judgement of the floor
 */
export const bindShift = (
  book: Book,
  floor: number,
  format?: string,
  recorded: ShiftRecords = {},
): BoundShift => {
  const reader = bookReader(book);
  const { inputs, solution: byBook, figures } = judgeFloor(reader, floor, format);
  const own = reader.scope();
  const duration = own.numberOr('/agreement/shift', 'time', usualShift);
  const confidence = own.number('/agreement/confidence', 'ratio') ?? usualConfidence;
  const found = trialFill(reader, inputs, recorded, { byBook: byBook.fill, confidence });
  const solution = found === undefined ? byBook : solveFloor(inputs.model, { fill: found.fill });
  const stops = stopsOfStations(own, floor);
  const declared = stops.every((each) => each.declared);
  const asDeclared = shiftLineOf({
    reader: own,
    inputs,
    solution,
    duration,
    stopsAt: (station) => stops[station]?.stops ?? [],
    deviations: found?.deviations,
  });
  const here = (recorded.runs ?? []).filter(
    (run) =>
      run.floor === inputs.floor.tag && (run.format === undefined || run.format === inputs.format?.tag),
  );
  const { line, log } = loggedLine(book, asDeclared, here, confidence);
  const efficiency = inputs.ratePath.replace(/\/rate$/, '/efficiency');
  const agreedEfficiency = own.number(efficiency, 'ratio');
  const rules = holdRulesOf(book);
  const rateKnown = solution.line !== undefined;
  const problems = cantRun(book, line, solution);
  const { missing } = own.account;
  const wanted = [...(rateKnown ? [] : (figures.runningRate?.missing ?? [])), ...missing];
  const runs = rateKnown && wanted.length === 0 && problems.length === 0;
  const count = stops.reduce((sum, each) => sum + each.stops.length, 0) + line.lineStops.length;
  const ends = fillEndsOf(found, figures.fillTime);
  const hold = holdOf(inputs, solution);
  const next = solution.line === undefined ? undefined : nextOf(solution.line);
  const { agreedRate } = inputs.model;
  const known = stopsFrom(own.account.used, count, log);
  return {
    floor: inputs.floor.tag,
    name: inputs.floor.name ?? inputs.floor.tag,
    role: inputs.floor.role ?? 'other',
    format: inputs.format?.tag ?? '',
    duration,
    agreedRun: inputs.model.agreedTime,
    confidence,
    missing: [...new Set(wanted)],
    assumed: [
      ...new Set([
        ...own.account.assumed.keys(),
        ...inputs.forLine.account.assumed.keys(),
        ...inputs.forFill.account.assumed.keys(),
      ]),
    ],
    problems,
    unfollowed: rules.unfollowed,
    notInRate: rules.holds
      .filter(({ until }) => until === 'room' || until === 'way out')
      .map(({ rule }) => rule),
    worth: solution.line === undefined ? [] : worthOf(solution.line),
    ...(runs ? { line } : {}),
    ...(solution.line === undefined ? {} : paceOf(solution.line)),
    ...(agreedRate === undefined ? {} : { agreedRate }),
    ...(agreedEfficiency === undefined ? {} : { agreedEfficiency }),
    ...(declared && known !== undefined ? { stops: known } : {}),
    ...(ends === undefined ? {} : { fillEnds: ends }),
    ...(found === undefined ? {} : { fillFrom: found.told }),
    ...(log === undefined ? {} : { log }),
    ...(hold === undefined ? {} : { hold }),
    ...(next === undefined ? {} : { next }),
  };
};
