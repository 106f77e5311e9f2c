import * as z from 'zod';

/** The part of the contract that opens the hall: pure schemas, as in `api.ts`, which takes these routes into its table. */

const moment = z.string().describe('Moment in ISO 8601, UTC');
const way = z
  .enum(['tls', 'plain'])
  .describe('Encrypted by a certificate that this laptop made, or not at all');

const deviceSchema = z.object({
  id: z.string(),
  name: z.string(),
  way,
  joined: moment,
  /** Absent where it has not been here since the program began. */
  seen: moment.optional(),
});

/** The hall as a page on the laptop sees it. */
export const hallOfLaptopSchema = z.object({
  here: z.literal('laptop'),
  networks: z.array(z.object({ name: z.string(), address: z.string() })),
  door: z
    .object({
      address: z.string(),
      port: z.number().int(),
      way,
      url: z.string(),
      /** Whether the laptop still has the address. */
      there: z.boolean(),
      fingerprint: z.string().optional(),
    })
    .optional(),
  code: z.object({ text: z.string(), until: moment }).optional(),
  over: z.enum(['used', 'late', 'guessed']).optional(),
  /** Wrong codes since this one was made. */
  wrong: z.number().int(),
  devices: z.array(deviceSchema),
});
export type HallOfLaptop = z.infer<typeof hallOfLaptopSchema>;

/** What a joined device is told. */
const hallOfDeviceSchema = z.object({ here: z.literal('device'), name: z.string(), way });

export const hallSchema = z.discriminatedUnion('here', [hallOfLaptopSchema, hallOfDeviceSchema]);
export type HallSeen = z.infer<typeof hallSchema>;

export const hallContract = {
  readHall: { method: 'GET', path: '/api/hall', answers: { 200: hallSchema } },
  openHall: {
    method: 'POST',
    path: '/api/hall/open',
    body: z.strictObject({ address: z.string().max(64), port: z.number().int().min(0).max(65535), way }),
    answers: { 200: hallOfLaptopSchema },
  },
  closeHall: {
    method: 'POST',
    path: '/api/hall/close',
    body: z.strictObject({}),
    answers: { 200: hallOfLaptopSchema },
  },
  renewHallCode: {
    method: 'POST',
    path: '/api/hall/code',
    body: z.strictObject({}),
    answers: { 200: hallOfLaptopSchema },
  },
  removeHallDevice: {
    method: 'POST',
    path: '/api/hall/remove',
    body: z.strictObject({ device: z.string().max(64) }),
    answers: { 200: hallOfLaptopSchema },
  },
} as const;
