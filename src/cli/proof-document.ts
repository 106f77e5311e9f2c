import * as z from 'zod';
import type { Book } from '../book/index.ts';
import {
  type BookPlaces,
  type BookProof,
  type CheckWords,
  checkSorts,
  checkWords,
  type FloorProof,
  type Gate,
  type GateName,
  gateNames,
  judgedEarlier,
  type Limit,
  type PlanOfDays,
  type ProofWait,
  type ProvedCheck,
  placesOfBook,
  type RampUp,
  restsOn,
  type StablePlace,
  stages,
} from '../proof/index.ts';
import { figureDocument, figureSchema } from './finding-document.ts';
import { given } from './given.ts';
import { problemDocument, problemSchema } from './problem-document.ts';
import { heardReplyDocument, heardReplySchema } from './reply-document.ts';
import { resultDocument, resultSchema } from './result-document.ts';
import { words } from './words.ts';
import { workingDocument, workingSchema } from './working-document.ts';

const text = z.string();
const texts = z.array(text);
const whole = z.number().int();

const limitSchema = z
  .strictObject({
    sense: z.enum(['least', 'most', 'within']),
    figure: figureSchema.describe('Without a value the limit is not known'),
    share: z.number().optional().describe('Of within: how far from the figure, as a share of it'),
    working: workingSchema.optional().describe('The sheet with the numbers that made it'),
    said: text.optional().describe('Words of the book beside or instead of the number'),
  })
  .describe('One bound of acceptance');

const placeSchema = z
  .strictObject({ of: text.optional().describe('Tag of the thing'), path: text.describe('Place within it') })
  .describe('A place of the book that stays the same when another thing is put before it');

const conditionSchema = z.strictObject({
  id: text,
  read: z.enum(['quantity', 'word', 'claim']).describe('How it is read'),
  limits: z.array(limitSchema),
  word: text.optional().describe('The word that must be read'),
  here: z.enum(['holds', 'cannot', 'unknown', 'asked']).describe('Whether it can be so on this floor'),
  have: figureSchema.optional().describe('What this floor has of it'),
  haveWord: text.optional(),
  by: z.number().optional().describe('Share of the bound by which this floor misses'),
});

const state = z.enum(['proved', 'shown', 'failed', 'concession', 'waits', 'open', 'stale', 'stands']);

const checkSchema = z.strictObject({
  id: text,
  sort: z.enum(checkSorts),
  name: text,
  expected: text.describe('What must be seen'),
  on: texts.describe('Tags that it is on'),
  stage: z.enum(stages),
  point: z.enum(['none', 'witness', 'hold']),
  instrument: text.optional(),
  readings: whole.describe('How many are wanted'),
  judged: z
    .enum(['each', 'mean', 'stop time'])
    .describe('Whether each reading counts, or what is made of all'),
  limits: z.array(limitSchema),
  ownLimit: text.optional().describe('Limit in the words of the book'),
  conditions: texts,
  ownConditions: texts.describe('Conditions in the words of the book'),
  after: texts.describe('Checks that come before, beside the stages'),
  missing: texts.describe('Places of the book that must say more'),
  foreseen: z.enum(['carries', 'short', 'unknown']).optional().describe('What the figures foretell'),
  late: z.strictObject({ who: text, before: z.enum(stages) }).optional(),
  duration: z.number().optional().describe('s'),
  plan: z.enum(['prove', 'show only', 'open']),
  cannot: texts.describe('Conditions that can’t hold on this floor'),
  untold: texts.describe('Conditions of which the book does not say whether they can'),
  basis: z
    .array(placeSchema.extend({ sha256: text }))
    .describe('What the book says where it hangs on, for the record of a result'),
  state,
  result: resultSchema.optional().describe('The last try'),
  earlier: z.array(resultSchema),
  changed: z.array(placeSchema).describe('What changed in the book since the last try'),
});

const gateSchema = z.strictObject({
  gate: z.enum(gateNames),
  floor: text,
  passed: z.boolean(),
  lacks: z.array(
    z.strictObject({
      id: text,
      sort: z.enum([
        'check',
        'finding',
        'question',
        'reading',
        'punch',
        'instrument',
        'agreement',
        'bypass',
        'setting',
        'unread',
        'wait',
        'goods',
        'join',
      ]),
      holder: z.enum(['builder', 'site']),
      path: text.optional(),
      joins: texts.optional().describe('Of joins: those of one box that lack the same'),
      needed: z.number().optional().describe('Of goods: pieces or kg that the run takes'),
      have: z.number().optional().describe('Of goods: what is at hand'),
    }),
  ),
  signed: z.strictObject({ by: text, role: text, record: text }).optional(),
  unnamed: texts.describe('Lacks that the signature does not name'),
});

const daysSchema = z
  .strictObject({
    from: text.optional().describe('First day'),
    crew: whole.describe('How many checks can be tried at once'),
    hours: z.number().describe('Work in a day, s'),
    end: z.number().describe('When the signature can be given, s from midnight before the first day'),
    day: text.optional(),
    work: z.number().describe('Work by hand, s'),
    steps: z.array(
      z.strictObject({
        sort: z.enum(['check', 'result', 'wait']),
        of: text.describe('Id of the check or tag of the wait'),
        start: z.number(),
        end: z.number(),
        slack: z.number().describe('By how much it may end later before the signature does, s'),
        critical: z.boolean(),
        usual: z.boolean().describe('How long it takes is common practice, not the book’s'),
        from: text.optional(),
        to: text.optional(),
      }),
    ),
    stages: z.array(z.strictObject({ stage: z.enum(stages), end: z.number(), day: text.optional() })),
    path: z
      .array(z.strictObject({ sort: z.enum(['check', 'result', 'wait']), of: text }))
      .describe('The chain that decides the end'),
    moving: texts.describe('Waits of which one day more moves the signature'),
    untimed: texts.describe('Waits of which nobody says how long they take'),
    overdue: texts.describe('Waits whose day is past before the plan begins'),
  })
  .describe('What is left, laid out in days');

const waitSchema = z.strictObject({
  wait: text,
  what: text.optional(),
  kind: text.optional(),
  floor: text.optional(),
  owner: text.optional(),
  before: text.optional(),
  after: text.optional(),
  state: z.enum(['open', 'asked', 'granted', 'refused', 'delivered']),
  duration: z.number().optional().describe('s'),
  due: text.optional(),
  asked: text.optional(),
  on: text.optional().describe('Day of the last word'),
  by: text.optional(),
  why: text.optional(),
});

export const proofSchema = z
  .strictObject({
    document: z.literal('twinfloor proof'),
    version: z.literal(1),
    title: text.optional(),
    format: text,
    floors: z.array(
      z.strictObject({
        floor: text,
        name: text,
        role: z.enum(['built on', 'bound for', 'other']),
        checks: z.array(checkSchema).describe('The protocol, in its order'),
        conditions: z.array(conditionSchema).describe('Each condition once'),
        carryOver: z.array(
          z.strictObject({
            check: text,
            from: text.describe('Floor that could not prove it'),
            reason: z.enum(['planned', 'undone', 'shown', 'failed', 'concession', 'waits', 'stale']),
            conditions: texts,
            shortfalls: texts,
            changed: z.array(placeSchema),
          }),
        ),
        progress: z.strictObject({
          counts: z.record(state, whole),
          next: texts.describe('What can be done now'),
          blocked: z.array(z.strictObject({ check: text, by: texts })),
        }),
        gates: z.array(gateSchema),
        days: daysSchema,
        quarantine: z
          .strictObject({
            made: whole.describe('Bottles made before release'),
            setAside: whole,
            runs: texts,
            released: text.optional(),
          })
          .optional(),
      }),
    ),
    replies: z.array(heardReplySchema).describe('What witnesses wrote who had the witness file alone'),
    punch: z.array(
      z.strictObject({
        point: text,
        text,
        state: z.enum(['open', 'closed']),
        by: text,
        of: texts,
        class: text.optional(),
        owner: text.optional(),
        due: text.optional(),
        floor: text.optional(),
        why: text.optional().describe('Why it is open anew, or how it was put right'),
        evidence: texts.describe('Media by their digest'),
        at: text.describe('Since when it stands so, by the clock of the device'),
        last: texts.describe(
          'Records that its next state follows; more than one: written apart from each other',
        ),
        found: z.strictObject({ by: text, at: text }).describe('Who made it known first, and when'),
      }),
    ),
    waits: z.array(waitSchema).describe('What others own'),
    afterwards: z.array(
      z.strictObject({
        id: text,
        kind: text,
        what: text.optional(),
        owner: text.optional(),
        check: text.optional(),
        day: text.optional(),
        done: text.optional().describe('Record that says so'),
        rampUp: z
          .strictObject({
            rate: z.number().optional().describe('Wanted, bottles a second'),
            efficiency: z.number().optional().describe('Wanted, share of the time in which it runs'),
            runs: texts.describe('Records of the runs of the week'),
            reached: z.number().optional(),
            ran: z.number().optional(),
            workings: z.array(workingSchema).describe('The sheets behind the two'),
            met: z.boolean().optional().describe('Absent: no run yet, or one that tells too little'),
          })
          .optional(),
      }),
    ),
    doubts: z.array(problemSchema).describe('What may be other than it is said'),
    caution: text,
  })
  .describe('Answer of `twinfloor proof BOOK.json [RECORDS] --json`: every number SI');

export type ProofDocument = z.infer<typeof proofSchema>;

const limitDocument = ({ sense, figure, share, working, said }: Limit): z.infer<typeof limitSchema> => ({
  sense,
  figure: figureDocument(figure),
  ...(share === undefined ? {} : { share }),
  ...(working === undefined ? {} : { working: workingDocument(working) }),
  ...(said === undefined ? {} : { said }),
});

const placeDocument = ({ of, path }: StablePlace): z.infer<typeof placeSchema> => ({
  ...(of === undefined ? {} : { of }),
  path,
});

const checkDocument = (
  { check, state: at, inForce, earlier, changed }: ProvedCheck,
  say: CheckWords,
  places: BookPlaces,
): z.infer<typeof checkSchema> => ({
  id: check.id,
  sort: check.sort,
  name: say.name(check),
  expected: say.expected(check),
  on: [...check.on],
  stage: check.stage,
  point: check.point,
  readings: check.readings,
  judged: check.judged,
  limits: check.limits.map(limitDocument),
  conditions: [...check.conditions],
  ownConditions: [...check.ownConditions],
  after: [...check.after],
  missing: [...check.missing],
  plan: check.plan,
  cannot: [...check.cannot],
  untold: [...check.untold],
  basis: places.basis(restsOn(check)).map((one) => ({ ...one })),
  state: at,
  earlier: judgedEarlier({ check, earlier }).map(resultDocument),
  changed: changed.map(placeDocument),
  ...given({
    instrument: check.ownInstrument ?? check.instrument,
    ownLimit: check.ownLimit,
    foreseen: check.foreseen,
    late: check.late,
    duration: check.duration,
    result: inForce === undefined ? undefined : resultDocument(inForce),
  }),
});

const rampUpDocument = ({ reached, ran, runs, rate, efficiency, met }: RampUp) => ({
  runs: [...runs],
  workings: [reached, ran].flatMap((one) => (one === undefined ? [] : [workingDocument(one.working)])),
  ...given({ rate, efficiency, met, reached: reached?.rate, ran: ran?.share }),
});

const gateDocument = ({ gate, floor, passed, lacks, signed, unnamed }: Gate): z.infer<typeof gateSchema> => ({
  gate,
  floor,
  passed,
  lacks: lacks.map(({ joins, ...lack }) => ({
    ...lack,
    ...(joins === undefined ? {} : { joins: [...joins] }),
  })),
  unnamed: [...unnamed],
  ...(signed === undefined ? {} : { signed: { ...signed } }),
});

const conditionsOf = ({ checks }: FloorProof): z.infer<typeof conditionSchema>[] => {
  const each = new Map(checks.flatMap(({ check }) => check.under.map((one) => [one.id, one] as const)));
  return [...each.values()].map(({ id, read, limits, word, here, have, haveWord, by }) => ({
    id,
    read,
    limits: limits.map(limitDocument),
    here,
    ...given({ word, haveWord, by, have: have === undefined ? undefined : figureDocument(have) }),
  }));
};

const daysDocument = ({
  steps,
  stages: over,
  path,
  moving,
  untimed,
  overdue,
  ...rest
}: PlanOfDays): z.infer<typeof daysSchema> => ({
  ...rest,
  steps: steps.map((step) => ({ ...step })),
  stages: over.map((one) => ({ ...one })),
  path: path.map((one) => ({ ...one })),
  moving: [...moving],
  untimed: [...untimed],
  overdue: [...overdue],
});

const waitDocument = (wait: ProofWait): z.infer<typeof waitSchema> => {
  const { path: _path, sample: _sample, note: _note, ...rest } = wait;
  return rest;
};

/** The protocol of each floor with what was recorded, what carries over and the gates; one gate where it is asked for. */
export const proofDocument = (
  book: Book,
  format: string,
  { floors, waits, afterwards, doubts, punch, replies }: BookProof,
  gate: GateName | undefined,
): ProofDocument => {
  const say = checkWords(book, words.say, words.has);
  const places = placesOfBook(book);
  return {
    document: 'twinfloor proof',
    version: 1,
    ...(book.about?.title === undefined ? {} : { title: book.about.title }),
    format,
    floors: floors.map((floor) => ({
      floor: floor.floor,
      name: floor.name,
      role: floor.role,
      checks: floor.checks.map((one) => checkDocument(one, say, places)),
      conditions: conditionsOf(floor),
      carryOver: floor.carryOver.map((one) => ({
        check: one.check,
        from: one.from,
        reason: one.reason,
        conditions: [...one.conditions],
        shortfalls: [...one.shortfalls],
        changed: one.changed.map(placeDocument),
      })),
      progress: {
        counts: { ...floor.progress.counts },
        next: [...floor.progress.next],
        blocked: floor.progress.blocked.map(({ check, by }) => ({ check, by: [...by] })),
      },
      gates: floor.gates.filter((one) => gate === undefined || one.gate === gate).map(gateDocument),
      days: daysDocument(floor.days),
      ...(floor.quarantine === undefined
        ? {}
        : { quarantine: { ...floor.quarantine, runs: [...floor.quarantine.runs] } }),
    })),
    replies: replies.map(heardReplyDocument),
    punch: punch.map((one) => ({
      ...one,
      of: [...one.of],
      evidence: [...one.evidence],
      last: [...one.last],
    })),
    waits: waits.map(waitDocument),
    afterwards: afterwards.map(({ path: _path, rampUp, ...row }) => ({
      ...row,
      ...(rampUp === undefined ? {} : { rampUp: rampUpDocument(rampUp) }),
    })),
    doubts: doubts.map((doubt) => problemDocument(doubt)),
    caution: words.say('proof.caution'),
  };
};
