import * as z from 'zod';
import type { FloorAssessment } from '../floor/assessment.ts';

export const chainSchema = z.array(
  z.strictObject({
    step: z.string(),
    station: z.string(),
    seconds: z.number(),
    lane: z.string().optional(),
    because: z.string().optional().describe('Tag of the hold rule, or the kind of room'),
  }),
);

type Chain = NonNullable<FloorAssessment['hold']>['chain'];

/** The chain that sets the pace, of each step what the schema names and nothing else. */
export const chainDocument = (chain: Chain): z.infer<typeof chainSchema> =>
  chain.map(({ step, station, seconds, lane, because }) => ({
    step,
    station,
    seconds,
    ...(lane === undefined ? {} : { lane }),
    ...(because === undefined ? {} : { because }),
  }));
