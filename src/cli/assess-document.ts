import * as z from 'zod';
import type { Book } from '../book/index.ts';
import type { Assessment, FloorAssessment, LaneFigures, Remedy } from '../floor/assessment.ts';
import { type Kind, kinds } from '../quantity/kinds.ts';
import { chainDocument, chainSchema } from './chain-document.ts';
import { figureDocument, figureSchema, findingDocument, findingSchema } from './finding-document.ts';
import { laidDocument, laidSchema } from './laid-document.ts';
import type { LaidOver } from './laid-over.ts';
import { noteDocument } from './note-document.ts';
import { noteSchema, valueSchema } from './quantity-document.ts';
import { remedyDocument, remedySchema } from './remedy-document.ts';
import { utilitiesPart, utilitiesSchema } from './utilities-document.ts';
import { words } from './words.ts';
import { workingDocument, workingSchema } from './working-document.ts';

const number = z.number();

const floorSchema = z.strictObject({
  floor: z.string(),
  name: z.string(),
  role: z.enum(['built on', 'bound for', 'other']),
  format: z.string(),
  liquid: z.string().optional(),
  figures: z.record(z.string(), figureSchema),
  findings: z.array(findingSchema),
  utilities: utilitiesSchema.describe('Air, power, water, heat, drains, building: what the line asks'),
  lanes: z.array(
    z.strictObject({
      lane: z.string(),
      presetFrom: z.string(),
      figures: z.record(z.string(), valueSchema),
      workings: z
        .record(z.string(), z.number().int())
        .describe('Workings of its flow with all lanes open, its fill and its dose'),
    }),
  ),
  hold: z
    .strictObject({
      by: z.string(),
      station: z.string(),
      waitsSeconds: number,
      chain: chainSchema,
    })
    .optional()
    .describe('What sets the pace, and the seconds that the line waits for it in every cycle'),
  cycle: z.array(
    z.strictObject({
      station: z.string(),
      state: z.enum(['works', 'waits']),
      what: z.string().describe('The step; for a wait what it waits for'),
      waitsFor: z.string().optional().describe('Station whose step ends the wait'),
      fromSeconds: number,
      toSeconds: number,
    }),
  ),
  curve: z
    .strictObject({
      supply: z.array(z.strictObject({ flow: number, pressure: number })),
      points: z.array(z.strictObject({ lanesOpen: number, flow: number, pressure: number })),
    })
    .describe(
      'Pressure left at the manifold, gauge Pa, against flow, m3/s; and where each number of open lanes works',
    ),
  tank: z.array(z.strictObject({ seconds: number, level: number })),
  workings: z.array(workingSchema),
  notes: z.array(noteSchema),
});

export const assessmentSchema = z
  .strictObject({
    document: z.literal('twinfloor assessment'),
    version: z.literal(1),
    title: z.string().optional(),
    format: z.string(),
    floors: z.array(floorSchema),
    remedies: z.array(remedySchema).optional().describe('Present with --remedies'),
    on: laidSchema,
    caution: z.string(),
  })
  .describe('Answer of `twinfloor assess BOOK.json --json`: every number SI, with kind and unit beside it');

export type AssessmentDocument = z.infer<typeof assessmentSchema>;

/** Kinds of the figures of a lane. */
const laneKinds = {
  preset: 'count',
  presetForLevel: 'count',
  flowAllOpen: 'volumeFlow',
  flowAtEnd: 'volumeFlow',
  countTime: 'time',
  fillTime: 'time',
  volume: 'volume',
  afterRun: 'volume',
  overflow: 'volume',
  shortBy: 'volume',
  nozzleVelocity: 'velocity',
} as const satisfies Partial<Record<keyof LaneFigures, Kind>>;

const laneDocument = (lane: LaneFigures) => ({
  lane: lane.lane,
  presetFrom: lane.presetFrom,
  workings: Object.fromEntries(
    Object.entries(lane.workings).filter((one): one is [string, number] => one[1] !== undefined),
  ),
  figures: Object.fromEntries(
    Object.entries(laneKinds).flatMap(([name, kind]) => {
      const value = lane[name as keyof typeof laneKinds];
      return value === undefined ? [] : [[name, { kind, unit: kinds[kind], value }]];
    }),
  ),
});

const floorDocument = (floor: FloorAssessment): z.infer<typeof floorSchema> => {
  const { hold } = floor;
  return {
    floor: floor.floor,
    name: floor.name,
    role: floor.role,
    format: floor.format,
    ...(floor.liquid === undefined ? {} : { liquid: floor.liquid }),
    figures: Object.fromEntries(
      Object.entries(floor.figures).map(([id, figure]) => [id, figureDocument(figure)]),
    ),
    findings: floor.findings.map(findingDocument),
    utilities: utilitiesPart(floor.utilities),
    lanes: floor.lanes.map(laneDocument),
    ...(hold === undefined
      ? {}
      : {
          hold: {
            by: hold.by,
            station: hold.station,
            waitsSeconds: hold.waits,
            chain: chainDocument(hold.chain),
          },
        }),
    cycle: floor.cycle.map(({ from, to, ...bar }) => ({
      ...bar,
      fromSeconds: from,
      toSeconds: to,
    })),
    curve: {
      supply: floor.curve.supply.map((point) => ({ ...point })),
      points: floor.curve.points.map((point) => ({ ...point })),
    },
    tank: floor.tank.map(({ time, level }) => ({ seconds: time, level })),
    workings: floor.workings.map(workingDocument),
    notes: floor.notes.map((note) => noteDocument(note)),
  };
};

export const assessDocument = (
  book: Book,
  assessment: Assessment,
  remedies: readonly Remedy[] | undefined,
  laid: LaidOver = {},
): AssessmentDocument => ({
  document: 'twinfloor assessment',
  version: 1,
  ...(book.about?.title === undefined ? {} : { title: book.about.title }),
  format: assessment.format,
  floors: assessment.floors.map(floorDocument),
  ...(remedies === undefined ? {} : { remedies: remedies.map(remedyDocument) }),
  ...laidDocument(laid),
  caution: words.say('assess.caution'),
});
