import * as z from 'zod';
import type { Book } from '../book/index.ts';
import type { BoundShift, ShiftAnswer, Shown } from '../floor/shift/index.ts';
import { owners } from '../line/shift/index.ts';
import { chainDocument, chainSchema } from './chain-document.ts';
import { problemDocument, problemSchema } from './problem-document.ts';
import type { ShiftAsked } from './shift-options.ts';
import type { ShiftTold } from './shift-told.ts';
import { words } from './words.ts';
import { workingDocument, workingSchema } from './working-document.ts';

const number = z.number();
const paths = z.array(z.string());
const working = number.int().optional().describe('Index into the workings of the floor');
const owner = z.enum(owners).describe('To whom it is counted');

const shownSchema = z.strictObject({ mean: number, low: number, high: number, working });
const timeSchema = z.strictObject({ seconds: number, low: number, high: number });
const valueSchema = z.strictObject({ value: number, working });

const answerSchema = z.strictObject({
  runningRate: valueSchema.optional().describe('Bottles a second while nothing stops'),
  stops: z.enum(['declared', 'logged', 'partly', 'none']).optional().describe('How the stops are known'),
  fillFrom: z
    .strictObject({
      from: z.string().describe('Floor on which the trials were made'),
      trials: number.int(),
      set: timeSchema.describe('Slowest lane of a set, from the opening of the lanes'),
      byBook: number.optional().describe('What the book alone says of it, s'),
      lanes: z.array(timeSchema.extend({ lane: z.string(), spread: number.describe('From set to set, s') })),
    })
    .optional()
    .describe('Present where trials say what the fill takes'),
  log: z
    .strictObject({
      runs: number.int(),
      seconds: number,
      causes: z.array(
        z.strictObject({
          cause: z.string(),
          stops: number.int(),
          running: number.describe('Seconds of work, or by the clock, in which they came'),
          between: number,
          low: number,
          high: number,
          clear: number,
          taken: z
            .strictObject({ between: number, clear: number })
            .describe('What the shift takes: what is declared counts as one stop'),
        }),
      ),
      unseen: z
        .array(z.string())
        .describe('Causes that did not come in the runs: rarer by their hours than declared'),
      unknown: z
        .array(z.strictObject({ cause: z.string(), stops: number.int(), seconds: number }))
        .describe('Causes that the book does not name on this floor: left out'),
    })
    .optional()
    .describe('Present where runs were recorded with their stops'),
  missing: paths.describe('Places of the book whose absence makes the bottles of a shift unknown'),
  assumed: paths,
  unfollowed: z.array(z.string()).describe('Hold rules that are not followed'),
  notInRate: z
    .array(z.string())
    .describe('Hold rules that the shift follows and the running rate does not know'),
  problems: z.array(problemSchema).describe('Why the line cannot be run'),
  shifts: number.int().optional().describe('Shifts that were run'),
  good: shownSchema.optional().describe('Good bottles of a shift; absent is unknown'),
  goodFrom: z
    .tuple([number, number])
    .optional()
    .describe('Mean good bottles with the fill as long, and as short, as the book leaves open'),
  agreed: z
    .strictObject({ bottles: number, verdict: z.enum(['carries', 'short', 'unknown']) })
    .optional()
    .describe('Agreed rate with its efficiency over the shift'),
  counts: z.strictObject({ put: number, fallen: number, rejected: number, gained: number }).optional(),
  minutes: z
    .array(
      z.strictObject({
        state: z.string(),
        station: z.string(),
        cause: z.string().optional(),
        step: z.string().optional(),
        owner,
        seconds: number,
        share: number,
        working,
      }),
    )
    .describe('Where the shift goes; the seconds add up to it'),
  stations: z.array(
    z.strictObject({ station: z.string(), seconds: z.record(z.string(), number), waiting: number }),
  ),
  causes: z.array(
    z.strictObject({
      cause: z.string(),
      stations: z.array(z.string()),
      owner,
      strikes: number,
      stoodSeconds: number,
      lostSeconds: number.describe('What it cost where the minutes of the line are counted'),
    }),
  ),
  efficiency: z
    .strictObject({
      setRate: number,
      overall: number,
      technical: number,
      machine: number,
      supply: number,
      people: number,
      material: number,
      working: number.int(),
    })
    .optional()
    .describe('Shares; seconds lost by owner'),
  ranDry: z
    .strictObject({
      share: number.describe('Of the shifts'),
      at: number.describe('Seconds from the start, mean'),
      bottles: number.describe('Good bottles before it, mean'),
      makeUp: number.describe('Make-up that carries the running rate, m3/s'),
      usable: number.describe('What the tank must give beside its make-up, m3'),
      working,
      tankWorking: working,
    })
    .optional()
    .describe('Present where the tank of the supply ran dry before the shift was over'),
  hold: z
    .strictObject({
      period: number.describe('Seconds of a set of the lanes'),
      byBelts: number
        .optional()
        .describe('Seconds of it that conveyors cost which stand with what stands at their ends'),
      chain: chainSchema,
      next: z.strictObject({ period: number, shorter: number, steps: chainSchema }).optional(),
    })
    .optional(),
  worth: z.array(
    z.strictObject({
      step: z.enum(['fill', 'dwell', 'cap']),
      seconds: number.describe('Of the step as it is'),
      gain: number.describe('Bottles a second more for `over` seconds less, exact, while nothing stops'),
      over: number,
      until: number.describe('Seconds of the step at which another loop decides'),
    }),
  ),
  changes: z.array(
    z.strictObject({
      change: z.string(),
      by: number.optional().describe('Seconds or bottles'),
      cause: z.string().optional(),
      pairs: number.int(),
      good: shownSchema.describe('Good bottles a shift more, by common chances'),
    }),
  ),
  contacts: z.array(
    z.strictObject({
      zone: z.string(),
      rows: number.int(),
      least: number,
      mean: number,
      most: number,
      own: number.optional().describe('At the own index of the washer'),
      need: number.optional(),
      rule: z.string().optional(),
      verdict: z.enum(['carries', 'short', 'unknown', 'not asked']),
      working,
    }),
  ),
  residue: valueSchema.optional().describe('Detergent left after the rinses, kg/m3'),
  proof: z
    .strictObject({
      rateReached: z.boolean().optional(),
      between: number,
      clear: number,
      efficiency: number,
      confidence: number,
      agreedBetween: number,
      runs: z.array(
        z.strictObject({
          allowed: number.int(),
          running: number,
          length: number,
          passing: number,
          working: number.int(),
        }),
      ),
      inAgreedRun: number.int().optional(),
      byTime: z.strictObject({ length: number, stops: number, working: number.int() }).optional(),
      never: z.array(problemSchema).optional(),
    })
    .optional()
    .describe('Present with --proof: run lengths in seconds by allowed stops'),
  shown: z
    .strictObject({
      rate: valueSchema,
      between: valueSchema.optional(),
      availability: valueSchema.optional(),
    })
    .optional()
    .describe('What the run that took place shows at least'),
  workings: z.array(workingSchema),
});

export const shiftSchema = z
  .strictObject({
    document: z.literal('twinfloor shift'),
    version: z.literal(1),
    title: z.string().optional(),
    seed: number.int(),
    floors: z.array(
      z.strictObject({
        floor: z.string(),
        name: z.string(),
        role: z.enum(['built on', 'bound for', 'other']),
        format: z.string(),
        duration: number.describe('Seconds of the shift'),
        ...answerSchema.shape,
        changed: answerSchema.optional().describe('Present with --change: the same with it'),
        moved: shownSchema.optional().describe('Good bottles a shift that the change gives'),
      }),
    ),
    caution: z.string(),
  })
  .describe('Answer of `twinfloor shift BOOK.json --json`: every number SI');

export type ShiftDocument = z.infer<typeof shiftSchema>;

const shownDocument = ({ mean, low, high, working: of }: Shown): z.infer<typeof shownSchema> => ({
  mean,
  low,
  high,
  ...(of === undefined ? {} : { working: of }),
});

const holdDocument = ({ hold, period, byBelts, next }: Omit<BoundShift, 'line'>) =>
  hold === undefined || period === undefined
    ? {}
    : {
        hold: {
          period,
          ...(byBelts === undefined ? {} : { byBelts }),
          chain: chainDocument(hold.chain),
          ...(next === undefined
            ? {}
            : {
                next: {
                  period: next.period,
                  shorter: next.shorter,
                  steps: next.steps.map(({ step, station, seconds }) => ({ step, station, seconds })),
                },
              }),
        },
      };

const answerDocument = (answer: ShiftAnswer): z.infer<typeof answerSchema> => {
  const { bound, figures, washing, proof, good } = answer;
  return {
    missing: [...bound.missing],
    assumed: [...bound.assumed],
    unfollowed: [...bound.unfollowed],
    notInRate: [...bound.notInRate],
    problems: bound.problems.map((problem) => problemDocument(problem)),
    minutes: answer.minutes.map((row) => ({ ...row })),
    stations: (figures?.stations ?? []).map(({ station, states, waiting }) => ({
      station,
      seconds: Object.fromEntries(Object.entries(states).map(([state, { mean }]) => [state, mean])),
      waiting: waiting.mean,
    })),
    causes: (figures?.causes ?? []).map(({ cause, stations, owner: of, strikes, stood, lost }) => ({
      cause,
      stations: [...stations],
      owner: of,
      strikes: strikes.mean,
      stoodSeconds: stood.mean,
      lostSeconds: lost.mean,
    })),
    worth: bound.worth.map((one) => ({ ...one })),
    changes: answer.changes.map(({ good: worth, ...change }) => ({ ...change, good: shownDocument(worth) })),
    contacts: (washing?.zones ?? []).map((zone) => ({ ...zone })),
    workings: answer.workings.map(workingDocument),
    ...holdDocument(bound),
    ...(answer.runningRate === undefined ? {} : { runningRate: answer.runningRate }),
    ...(bound.stops === undefined ? {} : { stops: bound.stops }),
    ...(bound.fillFrom === undefined
      ? {}
      : { fillFrom: { ...bound.fillFrom, lanes: bound.fillFrom.lanes.map((lane) => ({ ...lane })) } }),
    ...(bound.log === undefined
      ? {}
      : {
          log: {
            ...bound.log,
            causes: bound.log.causes.map((cause) => ({ ...cause })),
            unseen: [...bound.log.unseen],
            unknown: bound.log.unknown.map((cause) => ({ ...cause })),
          },
        }),
    ...(answer.shifts === undefined ? {} : { shifts: answer.shifts }),
    ...(good === undefined ? {} : { good: shownDocument(good) }),
    ...(answer.goodFrom === undefined ? {} : { goodFrom: [...answer.goodFrom] as [number, number] }),
    ...(answer.agreed === undefined ? {} : { agreed: answer.agreed }),
    ...(figures === undefined
      ? {}
      : {
          counts: {
            put: figures.put.mean,
            fallen: figures.fallen.mean,
            rejected: figures.rejected.mean,
            gained: figures.gained,
          },
        }),
    ...(answer.ranDry === undefined ? {} : { ranDry: answer.ranDry }),
    ...(answer.efficiency === undefined ? {} : { efficiency: answer.efficiency }),
    ...(washing?.residue === undefined ? {} : { residue: washing.residue }),
    ...(proof === undefined
      ? {}
      : {
          proof: {
            between: proof.between,
            clear: proof.clear,
            efficiency: proof.efficiency,
            confidence: proof.confidence,
            agreedBetween: proof.agreedBetween,
            runs: proof.runs.map((run) => ({ ...run })),
            ...(proof.rateReached === undefined ? {} : { rateReached: proof.rateReached }),
            ...(proof.inAgreedRun === undefined ? {} : { inAgreedRun: proof.inAgreedRun }),
            ...(proof.byTime === undefined ? {} : { byTime: proof.byTime }),
            ...(proof.never === undefined
              ? {}
              : { never: proof.never.map((problem) => problemDocument(problem)) }),
          },
        }),
    ...(answer.shown === undefined ? {} : { shown: answer.shown }),
  };
};

export const shiftDocument = (
  book: Book,
  told: readonly ShiftTold[],
  { seed }: ShiftAsked,
): ShiftDocument => ({
  document: 'twinfloor shift',
  version: 1,
  ...(book.about?.title === undefined ? {} : { title: book.about.title }),
  seed,
  floors: told.map(({ answer, changed, moved }) => ({
    floor: answer.bound.floor,
    name: answer.bound.name,
    role: answer.bound.role,
    format: answer.bound.format,
    duration: answer.bound.duration,
    ...answerDocument(answer),
    ...(changed === undefined ? {} : { changed: answerDocument(changed) }),
    ...(moved === undefined ? {} : { moved: shownDocument(moved) }),
  })),
  caution: words.say('shift.caution'),
});
