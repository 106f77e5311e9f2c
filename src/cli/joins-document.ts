import * as z from 'zod';
import type { Book } from '../book/index.ts';
import { type Found, type JoinEnd, type JoinState, type LaidJoin, printedCode } from '../joins/index.ts';
import type { Packing } from '../packing/packing-of.ts';
import { given } from './given.ts';
import { faultText } from './joins-text.ts';
import { packingDocument, packingSchema } from './packing-document.ts';
import { problemDocument, problemSchema } from './problem-document.ts';
import type { ReadList } from './read-join-file.ts';
import type { ToldJoins } from './told-joins.ts';
import { words } from './words.ts';

const text = z.string();
const texts = z.array(text);
const whole = z.number().int();

const endSchema = z.strictObject({
  label: text.optional(),
  on: text.optional().describe('Tag of the thing that it belongs to'),
  section: text.optional(),
  box: text.optional(),
  size: text.optional(),
  colour: text.optional(),
});

const recordedSchema = z.strictObject({
  record: text.describe('Id of the record'),
  at: text,
  by: text,
  writer: text,
  state: z.enum(['parted', 'made', 'tested', 'trouble']),
  floor: text.optional(),
  reading: text.optional().describe('As typed'),
  method: text.optional(),
  instrument: text.optional(),
  evidence: texts,
  remark: text.optional(),
});

const stateSchema = z.strictObject({
  state: z
    .enum(['parted', 'made', 'tested', 'trouble'])
    .describe('The one that is farther from being done, of two'),
  conflict: z.boolean().describe('Two records that do not know of each other differ'),
  last: z.array(recordedSchema).describe('Records that no other follows; the next names them'),
  records: whole.describe('How many there are'),
});

const joinSchema = z.strictObject({
  tag: text,
  code: text.describe('As its label bears it'),
  kind: text.optional(),
  name: text.optional(),
  label: text.optional(),
  from: endSchema,
  to: endSchema,
  split: text.optional(),
  box: text.optional().describe('Where it is made'),
  cable: text.optional(),
  core: text.optional(),
  potential: text.optional(),
  recorded: stateSchema.optional(),
});

const nearSchema = z.strictObject({ join: text, code: text });

export const joinsSchema = z
  .strictObject({
    document: z.literal('twinfloor joins'),
    version: z.literal(1),
    title: text.optional(),
    joins: z.array(joinSchema),
    faults: z.array(
      z.strictObject({
        code: text,
        path: text.describe('Place in the book where it is put right'),
        ends: z.array(endSchema.extend({ join: text, side: z.enum(['from', 'to']) })),
        parts: z.record(text, z.union([text, z.number()])),
        text: text.describe('The fault as a sentence'),
      }),
    ),
    schedule: z.strictObject({
      beforeShipping: texts,
      stages: z.array(
        z.strictObject({
          stage: text,
          sections: texts,
          stops: z.array(z.strictObject({ box: text.optional(), unplaced: z.boolean(), joins: texts })),
          distance: z.number().describe('m'),
        }),
      ),
      distance: z.number().describe('m, straight lines between boxes whose place is known'),
      inRow: z.boolean().describe('Assumed: sections end to end, since the plan places none'),
    }),
    energising: z.array(
      z.strictObject({
        box: text.optional(),
        joins: texts,
        lacks: z
          .array(z.strictObject({ why: text, join: text }))
          .describe('What is not recorded, bonds first'),
      }),
    ),
    photographs: z
      .array(
        z.strictObject({
          picture: text.describe('Digest of the photograph'),
          box: text,
          at: text.describe('When it was first spoken of'),
          ends: z.array(
            z.strictObject({
              join: text,
              side: z.enum(['from', 'to']),
              x: z.number().optional().describe('Share of the width, from the left; absent: taken off'),
              y: z.number().optional().describe('Share of the height, from the top'),
              conflict: z.boolean().describe('Placed apart by two who did not know of each other'),
              records: texts.describe('Placements that no other follows; the next names them'),
            }),
          ),
        }),
      )
      .describe('Photographs of the boxes that records speak of, with the ends on them'),
    found: z
      .strictObject({
        typed: text,
        is: z.enum(['found', 'shared', 'mistyped', 'unknown']),
        join: text.optional(),
        nearest: z.array(nearSchema),
      })
      .optional()
      .describe('What became of the code that was asked for'),
    list: z
      .strictObject({
        path: text,
        written: z.boolean(),
        header: whole.describe('Row of the headings'),
        columns: z.array(
          z.strictObject({
            column: whole,
            heading: text,
            field: text.optional(),
            by: z.enum(['remembered', 'guessed', 'nothing']),
          }),
        ),
        taken: z.array(z.strictObject({ row: whole, tag: text, known: z.boolean() })),
        problems: z.array(problemSchema),
        notes: z.array(problemSchema),
        empty: whole.describe('Rows without anything in a known column'),
      })
      .optional()
      .describe('What was read of a list'),
    packing: packingSchema.optional().describe('What travels, where it was asked for'),
    caution: text,
  })
  .describe('Answer of `twinfloor joins BOOK.json [RECORDS] --json`: every number SI');

export type JoinsDocument = z.infer<typeof joinsSchema>;

const endDocument = ({ side: _, ...end }: JoinEnd): z.infer<typeof endSchema> => end;

const stateDocument = ({ state, conflict, last, all }: JoinState): z.infer<typeof stateSchema> => ({
  state,
  conflict,
  records: all.length,
  last: last.map(({ id, join: _j, follows: _f, evidence = [], ...one }) => ({
    ...one,
    record: id,
    evidence: [...evidence],
  })),
});

const joinDocument = (join: LaidJoin, state: JoinState | undefined): z.infer<typeof joinSchema> => {
  const { path: _p, after: _a, code, from, to, ...rest } = join;
  return {
    ...rest,
    code: printedCode(code),
    from: endDocument(from),
    to: endDocument(to),
    ...given({ recorded: state === undefined ? undefined : stateDocument(state) }),
  };
};

/** What was asked for beside the joins. */
export interface Asked {
  readonly code?: { readonly typed: string; readonly found: Found } | undefined;
  readonly list?: { readonly path: string; readonly written: boolean; readonly read: ReadList } | undefined;
  readonly packing?: Packing | undefined;
}

const foundDocument = ({ typed, found }: NonNullable<Asked['code']>): JoinsDocument['found'] => ({
  typed,
  is: found.is,
  nearest: found.is === 'found' ? [] : found.nearest.map((one) => ({ ...one })),
  ...(found.is === 'found' ? { join: found.join } : {}),
});

const listDocument = ({
  path,
  written,
  read: { list, notes },
}: NonNullable<Asked['list']>): JoinsDocument['list'] => ({
  path,
  written,
  header: list.matched.header + 1,
  columns: list.matched.columns.map((one) => ({ ...one })),
  taken: list.taken.map((one) => ({ ...one })),
  problems: list.problems.map((one) => problemDocument(one)),
  notes: notes.map((one) => problemDocument(one)),
  empty: list.empty,
});

/** The joins with their faults, the order of the rebuild and what is recorded. */
export const joinsDocument = (
  book: Book,
  told: ToldJoins,
  { code, list, packing }: Asked,
): JoinsDocument => ({
  document: 'twinfloor joins',
  version: 1,
  ...given({ title: book.about?.title }),
  joins: told.joins.map((join) => joinDocument(join, told.states.get(join.tag))),
  faults: told.faults.map((fault) => ({
    code: fault.code,
    path: fault.path,
    ends: fault.ends.map((end) => ({ ...end })),
    parts: { ...fault.parts },
    text: faultText(fault),
  })),
  schedule: {
    beforeShipping: [...told.schedule.beforeShipping],
    distance: told.schedule.distance,
    inRow: told.schedule.inRow,
    stages: told.schedule.stages.map(({ stage, sections, stops, distance }) => ({
      stage,
      distance,
      sections: [...sections],
      stops: stops.map((stop) => ({ ...stop, joins: [...stop.joins] })),
    })),
  },
  energising: told.boxes.map(({ box, joins, lacks }) => ({
    ...given({ box }),
    joins: [...joins],
    lacks: lacks.map((lack) => ({ ...lack })),
  })),
  photographs: [...told.pictures.values()].flat().map(({ ends, ...picture }) => ({
    ...picture,
    ends: ends.map(({ point, last, ...end }) => ({ ...end, ...point, records: last.map(({ id }) => id) })),
  })),
  ...given({
    found: code === undefined ? undefined : foundDocument(code),
    list: list === undefined ? undefined : listDocument(list),
    packing:
      packing === undefined
        ? undefined
        : packingDocument(
            packing,
            `${words.say('packing.caution.lift')} ${words.say('packing.caution.papers')}`,
          ),
  }),
  caution: words.say('joins.caution'),
});
