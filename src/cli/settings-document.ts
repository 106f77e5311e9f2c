import * as z from 'zod';
import type { Book } from '../book/index.ts';
import {
  type RegisterRow,
  type SettingBound,
  type SettingRegister,
  type SettingsRead,
  type SettingWords,
  settingSorts,
} from '../proof/settings/index.ts';
import type { Bypass } from '../record/bypasses.ts';
import { settingMoments } from '../record/setting-moments.ts';
import { given } from './given.ts';
import { problemDocument, problemSchema } from './problem-document.ts';
import type { ComparedSettings } from './settings-compared.ts';
import { words } from './words.ts';
import { workingDocument, workingSchema } from './working-document.ts';

const text = z.string();
const moment = z.enum(settingMoments);

const boundSchema = z.strictObject({
  value: z.number().describe('SI'),
  text: text.optional().describe('As the book writes it'),
  path: text.optional(),
  working: workingSchema.optional().describe('The sheet with the numbers that made it'),
});

const atSchema = z.strictObject({
  value: text.describe('As it was read, with its unit'),
  si: z.number().optional(),
  beyond: z.enum(['least', 'most']).optional().describe('End of the allowed range that it lies beyond'),
  odd: z.boolean().optional().describe('No bound speaks of it and it looks like a slip'),
  record: text,
  floor: text,
  at: text,
  by: text,
  why: text.optional(),
  instrument: text.optional(),
  evidence: z.array(text).optional().describe('SHA-256 of photographs'),
  remark: text.optional(),
});

const verdictSchema = z.strictObject({
  verdict: z.enum(['carries', 'short', 'unknown']),
  margin: z.number().optional(),
});

const movedSchema = z.strictObject({
  finding: text,
  from: verdictSchema.optional(),
  to: verdictSchema.optional(),
});

export const settingsSchema = z
  .strictObject({
    document: z.literal('twinfloor settings'),
    version: z.literal(1),
    title: text.optional(),
    rows: z.array(
      z.strictObject({
        id: text,
        sort: z.enum(settingSorts),
        name: text,
        place: text.describe('Where it is found'),
        on: text.optional().describe('Tag of the thing that it belongs to'),
        station: text.optional(),
        format: text.optional(),
        floor: text.optional().describe('Floor on which alone it is'),
        is: z.enum(['quantity', 'number', 'count', 'digest', 'text']).describe('How it is read'),
        unit: text.describe('Empty where it has none'),
        designed: text.optional().describe('What the book says that it is to be'),
        paths: z.array(text).describe('Places of the book at which its value stands'),
        least: boundSchema.optional(),
        most: boundSchema.optional(),
        at: z.partialRecord(moment, atSchema),
      }),
    ),
    bypasses: z.array(
      z.strictObject({
        bypass: text,
        of: text,
        by: text,
        at: text,
        floor: text.optional(),
        why: text.optional(),
        check: text.optional(),
        removed: z.strictObject({ by: text, at: text }).optional().describe('Absent: it is in'),
      }),
    ),
    comparison: z
      .strictObject({
        from: moment,
        to: moment,
        floor: text.describe('Whose checks and findings are looked at'),
        changed: z.array(
          z.strictObject({
            setting: text,
            from: text,
            to: text,
            checks: z.array(
              z.strictObject({ check: text, state: text, stale: z.boolean() }).describe('Hangs on it'),
            ),
            moves: z.array(movedSchema).describe('Findings that it moves on its own'),
          }),
        ),
        same: z.array(text),
        untold: z.array(z.strictObject({ setting: text, missing: z.array(moment) })),
        moves: z.array(movedSchema).describe('Findings that all changes together move'),
      })
      .optional(),
    sheet: z
      .strictObject({
        taken: z.array(
          z.strictObject({
            row: z.number().int(),
            setting: text,
            floor: text,
            moment,
            value: text,
            by: text,
            why: text.optional(),
            remark: text.optional(),
            before: text.optional(),
          }),
        ),
        notUnderstood: z.array(
          z.strictObject({
            row: z.number().int(),
            setting: text.optional(),
            given: text,
            problems: z.array(problemSchema),
          }),
        ),
        unchanged: z.number().int(),
        empty: z.number().int(),
        missing: z.array(text),
      })
      .optional()
      .describe('What a sheet that came back would put into the records'),
    written: z.strictObject({ path: text, bytes: z.number().int(), rows: z.number().int() }).optional(),
    caution: text,
  })
  .describe('Answer of `twinfloor settings BOOK.json [RECORDS] --json`');

type Document = z.infer<typeof settingsSchema>;

const boundDocument = ({ value, text: said, path, working }: SettingBound): z.infer<typeof boundSchema> => ({
  value,
  ...given({
    text: said,
    path,
    working: working === undefined ? undefined : workingDocument(working),
  }),
});

const rowDocument = ({ row, range, at }: RegisterRow, say: SettingWords): Document['rows'][number] => ({
  id: row.id,
  sort: row.sort,
  name: say.name(row),
  place: say.place(row),
  is: row.form.is,
  unit: say.unit(row),
  paths: [...row.paths],
  at: Object.fromEntries(
    Object.entries(at).map(([when, { text: value, value: si, beyond, odd, record }]) => [
      when,
      {
        value,
        record: record.id,
        floor: record.floor,
        at: record.at,
        by: record.by,
        ...given({
          si,
          beyond,
          odd,
          why: record.why,
          instrument: record.instrument,
          evidence: record.evidence === undefined ? undefined : [...record.evidence],
          remark: record.remark,
        }),
      },
    ]),
  ),
  ...given({
    on: row.on,
    station: row.station,
    format: row.format,
    floor: row.floor,
    designed: row.designed,
    least: range.least === undefined ? undefined : boundDocument(range.least),
    most: range.most === undefined ? undefined : boundDocument(range.most),
  }),
});

const comparisonDocument = (compared: ComparedSettings): NonNullable<Document['comparison']> => ({
  from: compared.comparison.from,
  to: compared.comparison.to,
  floor: compared.floor,
  changed: compared.changes.map(({ change, checks, moves }) => ({
    setting: change.row.id,
    from: change.from.text,
    to: change.to.text,
    checks: checks.map((one) => ({ ...one })),
    moves: moves.map((one) => ({ ...one })),
  })),
  same: compared.comparison.same.map(({ id }) => id),
  untold: compared.comparison.untold.map(({ row, missing }) => ({ setting: row.id, missing: [...missing] })),
  moves: compared.moves.map((one) => ({ ...one })),
});

const sheetDocument = (read: SettingsRead): NonNullable<Document['sheet']> => ({
  taken: read.taken.map((one) => ({ ...one })),
  notUnderstood: read.notUnderstood.map(({ problems, ...one }) => ({
    ...one,
    problems: problems.map((problem) => problemDocument(problem)),
  })),
  unchanged: read.unchanged,
  empty: read.empty,
  missing: [...read.missing],
});

export interface SettingsTold {
  readonly register: SettingRegister;
  readonly bypasses: readonly Bypass[];
  readonly compared?: ComparedSettings | undefined;
  readonly read?: SettingsRead | undefined;
  readonly written?: Document['written'];
  readonly say: SettingWords;
}

/** The register with what was asked of it. */
export const settingsDocument = (
  book: Book,
  { register, bypasses, compared, read, written, say }: SettingsTold,
): Document => ({
  document: 'twinfloor settings',
  version: 1,
  ...(book.about?.title === undefined ? {} : { title: book.about.title }),
  rows: register.rows.map((row) => rowDocument(row, say)),
  bypasses: bypasses.map((one) => ({ ...one })),
  ...given({
    comparison: compared === undefined ? undefined : comparisonDocument(compared),
    sheet: read === undefined ? undefined : sheetDocument(read),
    written,
  }),
  caution: words.say('setting.caution'),
});
