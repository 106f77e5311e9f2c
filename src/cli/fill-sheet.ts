import * as z from 'zod';
import type { Book } from '../book/index.ts';
import { lotTable, type OpenTrial, sampleTable, trialTable } from '../floor/fill/sheet/index.ts';
import { formatOf } from '../floor/read-floor.ts';
import { stationOf } from '../floor/station-of.ts';
import type { UnitSystem } from '../quantity/index.ts';
import { type Table, writeCsv, writeXlsx } from '../table/index.ts';
import type { Call, Ended } from './command.ts';
import { cliProblem } from './problems.ts';
import { readLotFile, readSamplesFile, readTrialsFile } from './read-fill-file.ts';
import { words } from './words.ts';
import type { World } from './world.ts';

export const fillSheetSchema = z
  .strictObject({
    document: z.literal('twinfloor fill sheet'),
    version: z.literal(1),
    path: z.string().describe('The file that was written'),
    rows: z.number().int().describe('Bottles in it, those that wait counted in'),
  })
  .describe('Answer of `twinfloor fill BOOK.json --sheet FILE --json`: what was written');

/** Bottles of each lane at each count of an empty sheet: three lows and three highs tell a line from a point. */
const repeats = 3;
/** The lower count of an empty sheet, over that of the book: far enough away to part pulses from after-run. */
const lower = 0.75;

/** Rows that wait for their bottles: every lane at its count and at one a quarter lower, row by row. */
const openTrials = (book: Book, floor: string, format: string | undefined): readonly OpenTrial[] =>
  [lower, 1].flatMap((share) =>
    Array.from({ length: repeats }, (_, i) => String(i + 1)).flatMap((repeat) =>
      (stationOf(book, 'fill')?.station.lanes ?? []).map(
        ({ tag, preset = 0 }): OpenTrial => ({
          floor,
          lane: tag,
          preset: Math.round(share * preset),
          row: `${share === 1 ? 'B' : 'A'}${repeat}`,
          ...(format === undefined ? {} : { format }),
        }),
      ),
    ),
  );

const bytesOf = (table: Table, path: string): Uint8Array | undefined => {
  if (/\.xlsx$/i.test(path)) return writeXlsx(table);
  return /\.csv$/i.test(path) ? new TextEncoder().encode(writeCsv(table)) : undefined;
};

/** Writes trials, measured bottles or a lot as a sheet; without a file of them, one that waits for its bottles. */
export const writeFillSheet = async (book: Book, call: Call, path: string, world: World): Promise<Ended> => {
  const { operands, values, flags } = call;
  const [, trials] = operands;
  const floor = values.from ?? (book.floors ?? []).find(({ role }) => role === 'built on')?.tag ?? '';
  const format = formatOf(book, values.format).format?.tag;
  const usual = { floor, ...(format === undefined ? {} : { format }) };
  const options = { words, system: (values.units as UnitSystem | undefined) ?? ('metric' as const) };
  let table: Table;
  if (trials !== undefined) {
    const read = await readTrialsFile(trials, book, usual, world);
    if (!read.ok) return { problems: read.problems, heading: 'heading' in read ? read.heading : undefined };
    table = trialTable(read.value.values, options);
  } else if (values.samples !== undefined) {
    const read = await readSamplesFile(values.samples, book, usual, world);
    if (!read.ok) return { problems: read.problems, heading: 'heading' in read ? read.heading : undefined };
    table = sampleTable(read.value.values, options);
  } else if (values.lot !== undefined) {
    const read = await readLotFile(values.lot, book, usual, world);
    if (!read.ok) return { problems: read.problems, heading: 'heading' in read ? read.heading : undefined };
    const [lot] = read.value.values;
    if (lot === undefined) return { problems: [cliProblem('CLI_NOTHING_TAKEN', path)] };
    table = lotTable(lot, options);
  } else table = trialTable(openTrials(book, floor, format), options);
  const bytes = bytesOf(table, path);
  if (bytes === undefined) {
    const more = { given: path, allowed: '.csv, .xlsx' };
    return { problems: [cliProblem('CLI_OPTION_VALUE', '--sheet', more)] };
  }
  const written = await world.writeBytes(path, bytes);
  if (!written.ok) return { problems: written.problems };
  const answer: z.infer<typeof fillSheetSchema> = {
    document: 'twinfloor fill sheet',
    version: 1,
    path,
    rows: table.rows.length,
  };
  world.out(
    flags.has('json')
      ? `${JSON.stringify(answer, null, 2)}\n`
      : `${words.say('fill.sheet.written', { path })}\n`,
  );
  return 0;
};
