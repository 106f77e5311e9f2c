import * as z from 'zod';
import type { Book } from '../book/index.ts';
import type { Assessment, Remedy } from '../floor/assessment.ts';
import {
  type Refusal,
  type UtilityAssessment,
  type UtilityFigure,
  type UtilityFinding,
  utilities,
} from '../floor/utilities/utility-finding.ts';
import { figureDocument, figureSchema, findingDocument, findingSchema } from './finding-document.ts';
import { laidDocument, laidSchema } from './laid-document.ts';
import type { LaidOver } from './laid-over.ts';
import { noteDocument } from './note-document.ts';
import { problemDocument, problemSchema } from './problem-document.ts';
import { noteSchema } from './quantity-document.ts';
import { refusalSentences } from './refusal-text.ts';
import { remedyDocument, remedySchema } from './remedy-document.ts';
import { words } from './words.ts';
import { workingDocument, workingSchema } from './working-document.ts';

const refusalSchema = z
  .strictObject({
    sheet: z.string(),
    problems: z.array(problemSchema),
    places: z.array(z.string()).describe('Places of the book whose values went into the refused inputs'),
  })
  .describe('A sheet that would not take what the book says');

const utilitySchema = z.enum(utilities);

const utilityFindingSchema = findingSchema.extend({
  question: z.string().describe('Which question it is; the id has the thing behind it'),
  utility: utilitySchema,
  of: z.string().optional().describe('Tag of the thing that it is about'),
  tieIn: z.string().optional().describe('Tag of the tie-in point at which the site has to bring it'),
  gap: z.number().optional().describe('How far it is on the good side, SI'),
  said: z
    .strictObject({ demand: z.string().optional(), have: z.string().optional() })
    .optional()
    .describe('What is asked and what is there where they are words'),
  refusals: z.array(refusalSchema),
});

const utilityFigureSchema = z.strictObject({
  id: z.string(),
  utility: utilitySchema,
  of: z.string().optional().describe('Tag of the thing that it is about'),
  figure: figureSchema,
  said: z.string().optional().describe('The answer where it is a word: a size out of a table'),
  notes: z.array(noteSchema),
  refusals: z.array(refusalSchema),
});

export const utilitiesSchema = z.strictObject({
  findings: z.array(utilityFindingSchema),
  figures: z.array(utilityFigureSchema).describe('Figures that nothing is held against'),
});

export const utilitiesDocumentSchema = z
  .strictObject({
    document: z.literal('twinfloor utilities'),
    version: z.literal(1),
    title: z.string().optional(),
    format: z.string(),
    floors: z.array(
      z.strictObject({
        floor: z.string(),
        name: z.string(),
        role: z.enum(['built on', 'bound for', 'other']),
        ...utilitiesSchema.shape,
        workings: z.array(workingSchema).describe('All workings of the floor; figures point into them'),
      }),
    ),
    remedies: z.array(remedySchema).optional().describe('Present with --remedies'),
    cautions: z.partialRecord(utilitySchema, z.string()).describe('What a person must hold besides'),
    on: laidSchema,
    caution: z.string(),
  })
  .describe(
    'Answer of `twinfloor utilities BOOK.json --json`: every number SI, with kind and unit beside it',
  );

export type UtilitiesDocument = z.infer<typeof utilitiesDocumentSchema>;

const refusalDocument = (refusal: Refusal): z.infer<typeof refusalSchema> => {
  const sentences = refusalSentences(refusal, { byKind: {} }, 'en');
  return {
    sheet: refusal.sheet,
    problems: refusal.problems.map((problem, i) => problemDocument(problem, sentences[i])),
    places: [...refusal.places],
  };
};

const utilityFindingDocument = (finding: UtilityFinding): z.infer<typeof utilityFindingSchema> => {
  const { question, utility, of, tieIn, gap, said, refusals } = finding;
  return {
    ...findingDocument(finding),
    question,
    utility,
    refusals: refusals.map(refusalDocument),
    ...(of === undefined ? {} : { of }),
    ...(tieIn === undefined ? {} : { tieIn }),
    ...(gap === undefined ? {} : { gap }),
    ...(said === undefined ? {} : { said: { ...said } }),
  };
};

const utilityFigureDocument = (one: UtilityFigure): z.infer<typeof utilityFigureSchema> => ({
  id: one.id,
  utility: one.utility,
  figure: figureDocument(one.figure),
  notes: one.notes.map((note) => noteDocument(note)),
  refusals: one.refusals.map(refusalDocument),
  ...(one.of === undefined ? {} : { of: one.of }),
  ...(one.said === undefined ? {} : { said: one.said }),
});

/** The utilities of a floor, as they stand in the assessment and alone. */
export const utilitiesPart = ({ findings, figures }: UtilityAssessment): z.infer<typeof utilitiesSchema> => ({
  findings: findings.map(utilityFindingDocument),
  figures: figures.map(utilityFigureDocument),
});

/** The utilities that any floor of an assessment is asked about, in the order of the trades. */
export const utilitiesIn = ({ floors }: Assessment) =>
  utilities.filter((utility) =>
    floors.some((floor) =>
      [...floor.utilities.findings, ...floor.utilities.figures].some((one) => one.utility === utility),
    ),
  );

export const utilitiesDocument = (
  book: Book,
  assessment: Assessment,
  remedies: readonly Remedy[] | undefined,
  laid: LaidOver = {},
): UtilitiesDocument => ({
  document: 'twinfloor utilities',
  version: 1,
  ...(book.about?.title === undefined ? {} : { title: book.about.title }),
  format: assessment.format,
  floors: assessment.floors.map((floor) => ({
    floor: floor.floor,
    name: floor.name,
    role: floor.role,
    ...utilitiesPart(floor.utilities),
    workings: floor.workings.map(workingDocument),
  })),
  ...(remedies === undefined ? {} : { remedies: remedies.map(remedyDocument) }),
  cautions: Object.fromEntries(
    utilitiesIn(assessment).map((utility) => [utility, words.say(`utility.caution.${utility}`)]),
  ),
  ...laidDocument(laid),
  caution: words.say('assess.caution'),
});
