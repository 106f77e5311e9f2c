import * as z from 'zod';
import { type Book, valueAt } from '../book/index.ts';
import type { LotJudgement } from '../fill/judge-lot.ts';
import { lotControl } from '../fill/lot-bottles.ts';
import type { RunControl } from '../fill/lot-control.ts';
import type { WeighedLot as LotInSi } from '../fill/weighed-lot.ts';
import type { WeighedLot } from '../floor/fill/index.ts';
import { problemDocument, problemSchema } from './problem-document.ts';
import type { FillFile } from './read-fill-file.ts';
import { rowsDocument, rowsSchema } from './rows-document.ts';
import { words } from './words.ts';
import { workingDocument, workingSchema } from './working-document.ts';

/** A lot with what its rule says of it. */
export interface JudgedLot {
  readonly given: WeighedLot;
  /** Absent where no rule was agreed or asked. */
  readonly lot?: LotInSi;
  readonly judged?: LotJudgement;
  /** The same bottles as a run; absent where their contents are not known. */
  readonly control?: RunControl;
}

/** A lot with the verdict of its rule, and its bottles as a run. */
export const judgedLot = (given: WeighedLot, lot: LotInSi, judged: LotJudgement): JudgedLot => {
  const control = lotControl(judged, lot);
  return { given, lot, judged, ...(control === undefined ? {} : { control }) };
};

const stepPlace = z.number().int().optional();

export const lotSchema = z
  .strictObject({
    document: z.literal('twinfloor lot'),
    version: z.literal(1),
    title: z.string().optional(),
    rows: rowsSchema.optional().describe('Only where the lot came as a sheet'),
    lots: z.array(
      z.strictObject({
        floor: z.string(),
        format: z.string(),
        packages: z.number().int(),
        size: z.number().int().optional(),
        rule: z.string().optional().describe('Absent where none was agreed or asked'),
        edition: z.string().optional(),
        verdict: z.enum(['accept', 'reject', 'take more', 'not decided']),
        more: z.number().int().describe('Packages still to draw'),
        text: z.string().describe('The verdict in words'),
        missing: z.array(problemSchema).describe('What would decide'),
        problems: z.array(problemSchema).describe('What can’t be'),
        remarks: z.array(problemSchema).describe('What must be known with the verdict'),
        worksheet: z.array(workingSchema).describe('The whole way, each step a sheet with its numbers'),
        judgedBy: z.number().int().optional().describe('Step of the worksheet that gave the verdict'),
        control: z
          .strictObject({
            series: z.array(
              z.strictObject({
                lane: z.string().optional().describe('Absent where no lanes are known: all bottles'),
                bottles: z.number().int(),
                drift: z.enum(['up', 'down', 'none', 'unknown']),
                seenAt: z.number().int().optional().describe('Bottle of the series, from 1'),
                chart: stepPlace.describe('Chart of single bottles: step of the worksheet below'),
                average: stepPlace.describe('Moving average'),
                sums: stepPlace.describe('Cumulative sums'),
                capability: stepPlace.describe('Capability with its bound'),
              }),
            ),
            lanesDiffer: z.boolean().optional().describe('By more than chance'),
            comparison: stepPlace.describe('Comparison of the lanes'),
            remarks: z.array(problemSchema),
            worksheet: z.array(workingSchema),
          })
          .optional()
          .describe('The same bottles as a run, in the order drawn'),
      }),
    ),
    caution: z.string(),
  })
  .describe('Answer of `twinfloor fill BOOK.json --lot FILE --json`: every number SI');

export type LotDocument = z.infer<typeof lotSchema>;

export const verdictWords = ({ judged }: JudgedLot): string =>
  words.say(`fill.verdict.${judged?.verdict ?? 'not decided'}`, { more: judged?.more ?? 0 });

/** Steps of a worksheet as workings: an input that a former step gave names it. */
export const worksheetOf = (judged: Pick<LotJudgement, 'steps'>) =>
  judged.steps.map(({ from, ...step }) => ({
    ...step,
    from: Object.fromEntries(
      Object.entries(from).map(([input, { step: working, output }]) => [input, { working, output }]),
    ),
  }));

const controlDocument = (control: RunControl) => ({
  series: control.series.map((each) => ({ ...each })),
  ...(control.lanesDiffer === undefined ? {} : { lanesDiffer: control.lanesDiffer }),
  ...(control.comparison === undefined ? {} : { comparison: control.comparison }),
  remarks: control.remarks.map((problem) => problemDocument(problem)),
  worksheet: worksheetOf(control).map((step) => workingDocument(step)),
});

export const lotDocument = (book: Book, lots: readonly JudgedLot[], file: FillFile<unknown>): LotDocument => {
  const title = valueAt(book, '/about/title');
  const told = (problems: LotJudgement['missing']) => problems.map((problem) => problemDocument(problem));
  return {
    document: 'twinfloor lot',
    version: 1,
    ...(typeof title === 'string' ? { title } : {}),
    ...(file.report === undefined ? {} : { rows: rowsDocument(file.report) }),
    lots: lots.map((one) => {
      const { given, lot, judged } = one;
      return {
        floor: given.floor,
        format: given.format,
        packages: given.packages.length,
        ...(given.size === undefined ? {} : { size: given.size }),
        ...(lot === undefined ? {} : { rule: lot.rule }),
        ...(lot?.edition === undefined ? {} : { edition: lot.edition }),
        verdict: judged?.verdict ?? 'not decided',
        more: judged?.more ?? 0,
        text: verdictWords(one),
        missing: told(judged?.missing ?? []),
        problems: told(judged?.problems ?? []),
        remarks: told(judged?.remarks ?? []),
        worksheet: judged === undefined ? [] : worksheetOf(judged).map((step) => workingDocument(step)),
        ...(judged?.judged === undefined ? {} : { judgedBy: judged.judged }),
        ...(one.control === undefined ? {} : { control: controlDocument(one.control) }),
      };
    }),
    caution: words.say('fill.caution'),
  };
};
