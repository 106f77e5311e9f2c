import * as z from 'zod';
import { problemSchema } from './problem-document.ts';
import { rowsSchema } from './rows-document.ts';
import { samplesSchema } from './samples-document.ts';
import { withinSchema } from './within-document.ts';

const number = z.number();
const trialPlace = z
  .number()
  .int()
  .describe('Place of the trial in the file, from 0; in a sheet among the rows that were taken');
const said = { code: z.string(), text: z.string().describe('The same as a sentence') };
const lane = z.string().describe('Tag of the lane');

const countSchema = z.strictObject({
  lane,
  preset: z.number().int(),
  lower: z.number().int().describe('Counts between which the one lies that would just do'),
  upper: z.number().int(),
  volume: number.describe('Mean volume, m3'),
  reached: number.optional().describe('Level goal: chance that a bottle reaches its level'),
  overflow: number.optional().describe('Level goal: mean overflow of a bottle, m3'),
  wanted: number.optional().describe('Volume goal: mean volume that the rule wants, m3'),
  limit: z.enum(['mean', 'once', 'twice']).optional().describe('Volume goal: which limit of the rule does'),
  giveaway: number.optional().describe('Volume goal: mean above the label, m3'),
});

export const presetsSchema = z
  .strictObject({
    goal: z.enum(['level', 'volume']),
    none: z.strictObject(said).optional().describe('Why no count can be named'),
    lanes: z.array(countSchema),
    share: number.optional().describe('Share of bottles that must reach the level'),
    capacity: z
      .strictObject({ mean: number, deviation: number, from: z.enum(['samples', 'book', 'assumed']) })
      .optional()
      .describe('What the bottles hold to their level, m3'),
    label: number.optional().describe('m3 at the reference temperature'),
    labelHere: number.optional().describe('m3 at the temperature of the fill'),
    deficiency: number.optional().describe('By how much a bottle may fall short, m3'),
    overflow: number.optional().describe('Mean over the lanes, m3 a bottle'),
    shiftOverflow: number.optional().describe('m3 a shift'),
    common: z
      .strictObject({
        preset: z.number().int(),
        price: number.describe('What one count for all lanes gives away more, m3 a bottle'),
        shiftPrice: number.optional().describe('m3 a shift'),
      })
      .optional(),
  })
  .describe('Counts for the goal, rounded up, never to the nearest');

const causes = z
  .record(z.string(), number)
  .describe('Shares of the variance: volumes, times, before, supply, allowances, order');

export const fillSchema = z
  .strictObject({
    document: z.literal('twinfloor fill'),
    version: z.literal(1),
    title: z.string().optional(),
    format: z.string().optional(),
    from: z.string().describe('Floor of the trials'),
    to: z.string().optional().describe('Floor that is foretold'),
    rows: rowsSchema.optional().describe('Only where the trials came as a sheet'),
    samples: samplesSchema.optional(),
    trials: z.strictObject({
      given: z.number().int(),
      here: z.number().int().describe('Made on the floor of the trials, with this format'),
      refused: z
        .array(z.strictObject({ trial: trialPlace, problems: z.array(problemSchema) }))
        .describe('Left out: the rest stands'),
      notes: z
        .array(z.strictObject({ ...said, trials: z.array(trialPlace) }))
        .describe('What had to be assumed, and what is wanted'),
      apart: z.array(z.strictObject({ trial: trialPlace, ...said })).describe('Not used, and why'),
      volumes: z
        .array(
          z.strictObject({
            trial: trialPlace,
            lane,
            preset: z.number().int(),
            volume: number.optional().describe('m3'),
            volumeDeviation: number.optional().describe('Of this bottle by itself'),
            commonDeviation: number.optional().describe('Of all bottles alike: the balance’s calibration'),
            time: number.optional().describe('s'),
            timeDeviation: number.optional(),
            net: number.optional().describe('kg on the balance'),
            density: number.optional().describe('kg/m3 of the liquid in that bottle'),
          }),
        )
        .describe('Each bottle as it was taken'),
    }),
    slips: z
      .array(
        z.strictObject({
          trial: trialPlace,
          ...said,
          field: z.string(),
          entered: z.union([number, z.string()]).optional().describe('SI; a tag for a lane'),
          likely: z.union([number, z.string()]).optional(),
          compared: z.strictObject({
            of: z.enum(['net', 'time', 'tare']),
            given: number.optional(),
            expected: number,
            within: number,
            bottles: z.number().int(),
            text: z.string(),
          }),
        }),
      )
      .describe('Values that are questioned; they were used as they stand'),
    estimate: z
      .strictObject({
        lanes: z.array(
          z.strictObject({
            lane,
            pulses: withinSchema,
            afterRun: withinSchema.describe('Delay and half the closing time'),
            kv: withinSchema,
            drip: withinSchema,
            shutTime: withinSchema.describe('From the count to the lane fully shut'),
            spread: number
              .optional()
              .describe('Scatter of the lane’s own bottles with what the balance adds, m3'),
            trials: z.number().int(),
          }),
        ),
        volumeSpread: number.describe('Scatter of single bottles with what the balance adds, m3'),
        ownSpread: number.describe('The lanes’ own scatter, m3'),
        timeSpread: number.describe('Scatter of single times, s'),
        doubts: z
          .array(z.strictObject({ ...said, lanes: z.array(z.string()), trials: z.array(trialPlace) }))
          .describe('What the trials can’t tell, or what in them can’t be right'),
        residuals: z.array(
          z.strictObject({
            trial: trialPlace,
            of: z.enum(['volume', 'time']),
            read: number,
            fitted: number,
            standard: number.describe('Miss in standard deviations'),
            outlying: z.boolean(),
          }),
        ),
      })
      .optional(),
    presets: presetsSchema.optional().describe('On the floor of the trials'),
    next: z
      .array(
        z.strictObject({
          lane,
          preset: z.number().int(),
          throttled: z.boolean(),
          largeVessel: z.boolean().describe('It would run over: it wants a larger vessel'),
          bottles: z.number().int(),
          narrower: number.describe('By how much the intervals become narrower, as a share'),
          volumeNow: number.describe('Standard deviation of the volume there, m3'),
          volumeThen: number,
          timeNow: number.describe('Standard deviation of the time there, s'),
          timeThen: number,
        }),
      )
      .optional()
      .describe('Trials that could be made next, the one that narrows most first'),
    prediction: z
      .strictObject({
        floor: z.string(),
        confidence: number,
        lanes: z.array(
          z.strictObject({
            lane,
            preset: z.number().int(),
            presetFrom: z.enum(['call', 'book', 'trials']),
            volume: withinSchema.describe('Mean over many bottles'),
            bottle: withinSchema.describe('One bottle: the lane’s own spread counted in'),
            time: withinSchema.describe('Mean time from the opening of the lanes to this one fully shut'),
            afterRun: withinSchema.describe('Volume that passes after the count, with the drip'),
            reached: number.optional().describe('Share of bottles that reach their level with this count'),
            volumeCauses: causes,
            timeCauses: causes,
          }),
        ),
        rowTime: withinSchema.describe('Slowest lane'),
        stationTime: withinSchema.optional().describe('Bottles in to bottles out'),
        rate: withinSchema.optional().describe('Bottles a second'),
        start: presetsSchema.describe('Counts to begin with there'),
        allowances: z
          .array(
            z.strictObject({
              ...said,
              moves: z.enum(['pulse', 'afterRun', 'kv']),
              shift: number.describe('Share by which the value is expected to move'),
              deviation: number.describe('Standard deviation of that share'),
              common: z.boolean().describe('All lanes move alike'),
              source: z.enum(['common practice', 'meter class', 'measured']),
            }),
          )
          .describe(
            'What two floors change and the trials can’t tell; a measurement takes the place of a line',
          ),
        runs: z
          .array(
            z.strictObject({
              floor: z.string(),
              share: number.describe('Part of what a stiff run’s liquid does that is counted'),
              deviation: number.describe('Standard deviation of that part, of both floors alike'),
              ofRun: number
                .optional()
                .describe('The same, of this floor’s run alone; absent where it is known'),
              source: z.enum(['stiff run', 'soft run', 'not said', 'measured']),
              unsaid: z
                .array(z.string())
                .describe('Places of pipes that say neither material nor wall and elasticity'),
              narrower: number.describe(
                'Share that goes at most from the interval of a volume once the part is known',
              ),
              inertia: number.describe('Time constant of the run, s'),
              jets: number.describe('Part of the head that is left for the jets'),
              closing: number.describe('Shortest closing of a lane, s'),
              flow: number.describe('With all lanes open, m3/s'),
              volume: number.describe(
                'What a stiff run presses through lanes that close together beyond a straight closing, m3',
              ),
            }),
          )
          .describe('The liquid in the runs while lanes close; without a floor of which no run is known'),
        waived: z.boolean().describe('The call wanted nothing allowed for'),
        sameProduct: z.boolean(),
        viscosityRatio: number.describe('Kinematic, there over here'),
        flowRatio: number.describe('There over here'),
        airRatio: number.optional().describe('Of the valves’ air, absolute; absent where not known'),
        stuckShare: number.describe('Share of what may be true in which some lane never reaches its count'),
        realMoves: z.number().int().describe('Real moves on which such intervals were scored'),
        score: z
          .strictObject({
            inside: z.number().int(),
            of: z.number().int(),
            confidence: number,
            scores: z.array(
              z.strictObject({
                lane,
                of: z.enum(['volume', 'time']),
                measured: number,
                deviation: number,
                bottles: z.number().int(),
                foretold: number,
                standard: number,
                inside: z.boolean(),
              }),
            ),
          })
          .optional()
          .describe('Against trials that were made there'),
      })
      .optional(),
    unanswered: z.array(z.strictObject(said)).describe('What can’t be answered, and what would'),
    caution: z.string(),
  })
  .describe('Answer of `twinfloor fill BOOK.json TRIALS --json`: every number SI');

export type FillDocument = z.infer<typeof fillSchema>;
