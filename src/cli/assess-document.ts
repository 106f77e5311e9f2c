import * as z from 'zod';
import type { Book } from '../book/index.ts';
import type {
  Assessment,
  Figure,
  FloorAssessment,
  LaneFigures,
  Remedy,
  Working,
} from '../floor/assessment.ts';
import { type Kind, kinds } from '../quantity/kinds.ts';
import type { Field, Note } from '../sheets/frame.ts';
import { sheetEntries } from '../sheets/registry.ts';
import { noteSchema, valueDocument, valueSchema } from './quantity-document.ts';
import { noteSentence } from './sheet-words.ts';
import { words } from './words.ts';

const number = z.number();
const paths = z.array(z.string());

const figureSchema = z
  .strictObject({
    id: z.string(),
    kind: z.string().describe('Kind of quantity'),
    unit: z.string().describe('SI unit of value, low and high'),
    value: number.optional().describe('Absent is unknown'),
    low: number.optional().describe('Lower end of the 95 % interval'),
    high: number.optional().describe('Upper end of the 95 % interval'),
    working: z.number().int().optional().describe('Index into the workings of the floor'),
    output: z.string().optional().describe('Which output of that working'),
    path: z.string().optional().describe('Where it stands in the book, for a figure that is said there'),
    assumed: paths.describe('Places in the book that were absent and for which a default was taken'),
    missing: paths.describe('Places in the book whose absence makes the figure unknown'),
  })
  .describe('One number of one floor');

const findingSchema = z.strictObject({
  id: z.string(),
  verdict: z.enum(['carries', 'short', 'unknown']),
  sense: z.enum(['least', 'most']).describe('least: have must reach demand; most: have must stay under it'),
  demand: figureSchema,
  have: figureSchema,
  margin: number.optional().describe('Share of the demand, positive is good'),
  decides: z.string().optional().describe('The place in the book whose answer would decide an unknown'),
  ifSaid: z
    .boolean()
    .describe('Rests on values that were stated without a width: holds if what they said holds'),
  causes: z
    .array(
      z.strictObject({
        path: z.string(),
        doubt: z.enum(['given', 'stated', 'assumed']),
        share: number.describe('Share of the width that would go if this value were sure'),
      }),
    )
    .describe('What makes the width of the answer, most first'),
  levers: z.array(z.string()),
  notes: z.array(noteSchema),
});

const originSchema = z.union([
  z.strictObject({ path: z.string(), assumed: z.boolean().optional() }),
  z.strictObject({ working: z.number().int(), output: z.string() }),
  z
    .strictObject({ solved: z.enum(['balance', 'row', 'hour', 'loop']) })
    .describe('Found together with others by iteration'),
]);

const workingSchema = z.strictObject({
  sheet: z.string(),
  version: z.number().int(),
  inputs: z.record(z.string(), valueSchema),
  outputs: z.record(z.string(), valueSchema),
  notes: z.array(noteSchema),
  from: z.record(z.string(), originSchema).describe('Where each input came from'),
  residual: number.optional().describe('What is left over where the answer was found by iteration, SI'),
});

const floorSchema = z.strictObject({
  floor: z.string(),
  name: z.string(),
  role: z.enum(['built on', 'bound for', 'other']),
  format: z.string(),
  liquid: z.string().optional(),
  figures: z.record(z.string(), figureSchema),
  findings: z.array(findingSchema),
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
      chain: z.array(
        z.strictObject({
          step: z.string(),
          station: z.string(),
          seconds: number,
          lane: z.string().optional(),
          because: z.string().optional().describe('Tag of the hold rule, or the kind of room'),
        }),
      ),
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

const remedySchema = z.strictObject({
  floor: z.string(),
  finding: z.string(),
  lever: z.string(),
  path: z.string().describe('The place in the book that the lever turns; the first of several'),
  patch: z
    .array(z.strictObject({ path: z.string(), value: z.unknown() }))
    .describe('Empty where nothing carries'),
  changes: z
    .array(
      z.strictObject({
        lever: z.string(),
        path: z.string(),
        kind: z.string(),
        unit: z.string(),
        value: number,
        text: z.string(),
      }),
    )
    .describe('One change a lever; two where no lever carries alone; empty where nothing carries'),
  breaks: z
    .array(
      z.strictObject({
        floor: z.string(),
        finding: z.string(),
        verdict: z.string(),
        margin: number.optional(),
      }),
    )
    .describe('Findings that carried and no longer would'),
  nextSmaller: z
    .strictObject({ text: z.string(), margin: number.optional() })
    .optional()
    .describe('What the next smaller candidate still gives, and by how much it misses'),
  margin: number.optional(),
});

export const assessmentSchema = z
  .strictObject({
    document: z.literal('twinfloor assessment'),
    version: z.literal(1),
    title: z.string().optional(),
    format: z.string(),
    floors: z.array(floorSchema),
    remedies: z.array(remedySchema).optional().describe('Present with --remedies'),
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

const entryOf = (sheet: string) => sheetEntries.find((entry) => entry.sheet.id === sheet);

const noteDocument = (note: Note, sheet?: string): z.infer<typeof noteSchema> => {
  const entry = sheet === undefined ? undefined : entryOf(sheet);
  return {
    code: note.code,
    ...(note.parts === undefined ? {} : { parts: { ...note.parts } }),
    text: entry === undefined ? words.say(note.code, note.parts) : noteSentence(entry.text, note),
  };
};

const figureDocument = (figure: Figure): z.infer<typeof figureSchema> => ({
  ...figure,
  unit: kinds[figure.kind],
  assumed: [...figure.assumed],
  missing: [...figure.missing],
});

const valuesDocument = (values: Working['inputs'], fields: Readonly<Record<string, Field>>) =>
  Object.fromEntries(
    Object.entries(values).flatMap(([name, value]) => {
      const field = fields[name];
      return field === undefined ? [] : [[name, valueDocument(value, field)]];
    }),
  );

const workingDocument = (working: Working): z.infer<typeof workingSchema> => {
  const { sheet, version, inputs, outputs, notes, from, residual } = working;
  const fields = entryOf(sheet)?.sheet;
  return {
    sheet,
    version,
    inputs: valuesDocument(inputs, fields?.inputs ?? {}),
    outputs: valuesDocument(outputs, fields?.outputs ?? {}),
    notes: notes.map((note) => noteDocument(note, sheet)),
    from: Object.fromEntries(Object.entries(from).map(([name, origin]) => [name, { ...origin }])),
    ...(residual === undefined ? {} : { residual }),
  };
};

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
    findings: floor.findings.map(({ demand, have, levers, notes, causes, ...finding }) => ({
      ...finding,
      demand: figureDocument(demand),
      have: figureDocument(have),
      levers: [...levers],
      causes: causes.map((cause) => ({ ...cause })),
      notes: notes.map((note) => noteDocument(note)),
    })),
    lanes: floor.lanes.map(laneDocument),
    ...(hold === undefined
      ? {}
      : {
          hold: {
            by: hold.by,
            station: hold.station,
            waitsSeconds: hold.waits,
            chain: hold.chain.map((step) => ({ ...step })),
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

const remedyDocument = ({
  changes,
  patch,
  nextSmaller,
  breaks,
  ...remedy
}: Remedy): z.infer<typeof remedySchema> => ({
  ...remedy,
  patch: patch.map((one) => ({ ...one })),
  changes: changes.map((change) => ({ ...change, unit: kinds[change.kind] })),
  breaks: breaks.map((harm) => ({ ...harm })),
  ...(nextSmaller === undefined ? {} : { nextSmaller: { ...nextSmaller } }),
});

export const assessDocument = (
  book: Book,
  assessment: Assessment,
  remedies: readonly Remedy[] | undefined,
): AssessmentDocument => ({
  document: 'twinfloor assessment',
  version: 1,
  ...(book.about?.title === undefined ? {} : { title: book.about.title }),
  format: assessment.format,
  floors: assessment.floors.map(floorDocument),
  ...(remedies === undefined ? {} : { remedies: remedies.map(remedyDocument) }),
  caution: words.say('assess.caution'),
});
