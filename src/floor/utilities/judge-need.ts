import type { Kind } from '../../quantity/kinds.ts';
import type { BookReader } from '../book-reader.ts';
import type { Figure, Origin } from '../finding.ts';
import {
  addSquares,
  causesOf,
  type GapSum,
  type Interval,
  intervalAbout,
  type Move,
  nothing,
  reach,
} from '../interval-sum.ts';
import { verdictOf } from '../verdict-of.ts';
import { makeCalculation } from './calculation.ts';
import type { Changed } from './graph.ts';
import { type Basis, type Inquiry, type Met, variedBy } from './inquiry.ts';
import type { Known } from './known.ts';
import { type Answer, type Draw, type Need, needId } from './need.ts';
import type { UtilityFigure, UtilityFinding } from './utility-finding.ts';

const gapOf = (
  sense: Need['sense'],
  demand: number | undefined,
  have: number | undefined,
): number | undefined =>
  demand === undefined || have === undefined ? undefined : sense === 'least' ? have - demand : demand - have;

const reachTo = (move: Move, from: number | undefined, value: number | undefined): void => {
  if (from !== undefined && value !== undefined) reach(move, value - from);
};

const intervalOf = (centre: number | undefined, move: Move): Interval | undefined =>
  centre === undefined || (move.down === 0 && move.up === 0) ? undefined : intervalAbout(centre, move);

/** Where a value can be looked at: a working, or its place in the book. */
const placeOf = (from: Origin | undefined) =>
  from === undefined || 'solved' in from
    ? {}
    : 'path' in from
      ? { path: from.path }
      : { working: from.working, output: from.output };

const figureOf = (
  id: string,
  kind: Kind,
  known: Known | undefined,
  interval: Interval | undefined,
  { assumed, missing }: Basis,
): Figure => {
  return {
    id,
    kind,
    assumed: [...assumed],
    missing: known === undefined ? [...missing] : [],
    ...(known === undefined ? {} : { value: known.value }),
    ...interval,
    ...placeOf(known?.from),
  };
};

/** A number after a variation; undefined where it is not known, or is lost. */
const afterwards = (
  { graph }: Inquiry,
  changed: Changed,
  path: string,
  end: number,
  known: Known | undefined,
): number | undefined => {
  if (known === undefined) return undefined;
  const { ref, value } = known;
  if (ref !== undefined && 'path' in ref) return ref.path === path ? end : value;
  return graph.after(changed, ref, value);
};

/** Intervals of demand, have and the gap between them, with what makes them. */
const spread = (need: Need, inquiry: Inquiry, { demand, have }: Answer, { places }: Basis) => {
  const demandSum = nothing();
  const haveSum = nothing();
  const gap: GapSum = { ...nothing(), places: [] };
  const before = gapOf(need.sense, demand?.value, have?.value);
  for (const place of places) {
    const { path, ends, doubt } = place;
    const varied = variedBy(inquiry, place);
    const demandMove = nothing();
    const haveMove = nothing();
    const move = nothing();
    for (let i = 0; i < ends.length; i++) {
      const asked = afterwards(inquiry, varied[i]!.changed, path, ends[i]!, demand);
      const there = afterwards(inquiry, varied[i]!.changed, path, ends[i]!, have);
      reachTo(demandMove, demand?.value, asked);
      reachTo(haveMove, have?.value, there);
      reachTo(move, before, gapOf(need.sense, asked, there));
    }
    addSquares(demandSum, demandMove);
    addSquares(haveSum, haveMove);
    addSquares(gap, move);
    if (move.down > 0 || move.up > 0) gap.places.push({ path, doubt, move });
  }
  return {
    demand: intervalOf(demand?.value, demandSum),
    have: intervalOf(have?.value, haveSum),
    gap: intervalOf(before, gap),
    causes: causesOf(gap),
  };
};

/** Names of what may be changed; looked up only where something is short. */
const leversOf = (need: Need, reader: BookReader, inquiry: Inquiry): readonly string[] => {
  const { tracer: _, ...plain } = inquiry;
  const levers = need.levers!(makeCalculation(reader, plain));
  return [...new Set(levers.map(({ id }) => id))];
};

/**
 * One question judged: what is asked, what is there, and whether it carries.
 *
 * Method   the question is answered with every sheet kept as a step, then the steps that rest on it are computed again
 *          with each uncertain value at both of its ends; the changes are added as squares, upward and downward apart
 * Returns  a finding; unknown where something is missing, where a sheet refuses or where the interval lies on both sides
 * Assumes  the uncertain values are independent
 * Cost     the steps that rest on an uncertain value, twice
 */
export const judgeNeed = (need: Need, reader: BookReader, inquiry: Inquiry): UtilityFinding =>
  askNeed(need, reader, inquiry)();

/**
 * The same in two halves: the question is answered now, and judged when the second half is called. Several questions are
 * all answered before any is judged, so that a variation is computed once for all of them.
 */
export const askNeed = (need: Need, reader: BookReader, inquiry: Inquiry): (() => UtilityFinding) => {
  const calculation = makeCalculation(reader, inquiry);
  const answer = need.answer(calculation);
  return () => judgeAnswer({ need, reader, inquiry, met: calculation.met, answer });
};

interface Asked {
  readonly need: Need;
  readonly reader: BookReader;
  readonly inquiry: Inquiry;
  readonly met: Met;
  readonly answer: Answer;
}

const judgeAnswer = ({ need, reader, inquiry, met, answer }: Asked): UtilityFinding => {
  const { demand, have, gap, causes } = spread(need, inquiry, answer, met.basis);
  const own = gapOf(need.sense, answer.demand?.value, answer.have?.value);
  const verdict = answer.verdict ?? verdictOf(own, gap, Math.abs(answer.demand?.value ?? 1));
  const haveFigure = figureOf('have', need.kind, answer.have, have, met.basis);
  const demandFigure = figureOf('demand', need.kind, answer.demand, demand, met.basis);
  const decides =
    verdict !== 'unknown'
      ? undefined
      : ([...met.basis.missing][0] ?? met.refusals[0]?.places[0] ?? causes[0]?.path);
  return {
    id: needId(need),
    question: need.question,
    utility: need.utility,
    verdict,
    sense: need.sense,
    demand: demandFigure,
    have: haveFigure,
    causes,
    ifSaid: verdict !== 'unknown' && causes.some((cause) => cause.doubt !== 'given'),
    levers: verdict === 'carries' || need.levers === undefined ? [] : leversOf(need, reader, inquiry),
    notes: met.notes,
    refusals: met.refusals,
    ...(need.of === undefined ? {} : { of: need.of }),
    ...(need.tieIn === undefined ? {} : { tieIn: need.tieIn }),
    ...(answer.said === undefined ? {} : { said: answer.said }),
    // a verdict that something else decides may be short over a gap that is none: a margin would belie it
    ...(own === undefined ||
    answer.demand === undefined ||
    answer.demand.value === 0 ||
    (answer.verdict === 'short' && own >= 0)
      ? {}
      : { margin: own / Math.abs(answer.demand.value) }),
    ...(own === undefined ? {} : { gap: own }),
    ...(decides === undefined ? {} : { decides }),
  };
};

const numberOf = (known: Known<number | string> | undefined): Known | undefined =>
  typeof known?.value === 'number' ? (known as Known) : undefined;

/** A figure that nothing is held against, with its interval. */
export const askDraw = (draw: Draw, reader: BookReader, inquiry: Inquiry): (() => UtilityFigure) => {
  const calculation = makeCalculation(reader, inquiry);
  const known = draw.answer(calculation);
  return () => figureAnswer({ draw, inquiry, met: calculation.met, known });
};

interface Drawn {
  readonly draw: Draw;
  readonly inquiry: Inquiry;
  readonly met: Met;
  readonly known: Known<number | string> | undefined;
}

const figureAnswer = ({ draw, inquiry, met, known }: Drawn): UtilityFigure => {
  const number = numberOf(known);
  const sum = nothing();
  for (const place of number === undefined ? [] : met.basis.places) {
    const { path, ends } = place;
    const varied = variedBy(inquiry, place);
    const move = nothing();
    for (let i = 0; i < ends.length; i++) {
      reachTo(move, number?.value, afterwards(inquiry, varied[i]!.changed, path, ends[i]!, number));
    }
    addSquares(sum, move);
  }
  const { notes, refusals } = met;
  return {
    id: draw.id,
    utility: draw.utility,
    figure: {
      ...figureOf(draw.id, draw.kind, number, intervalOf(number?.value, sum), met.basis),
      ...(typeof known?.value === 'string' ? { ...placeOf(known.from), missing: [] } : {}),
    },
    notes,
    refusals,
    ...(draw.of === undefined ? {} : { of: draw.of }),
    ...(typeof known?.value === 'string' ? { said: known.value } : {}),
  };
};
