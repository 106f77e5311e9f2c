import type { Book } from '../book/index.ts';
import { assessBook } from '../floor/index.ts';
import {
  findSettingColumns,
  floorOfMoment,
  readSettingTable,
  type SettingRegister,
  type SettingsRead,
  type SettingWords,
  settingRegister,
  settingTable,
  settingWords,
} from '../proof/settings/index.ts';
import type { Problem, Result } from '../quantity/problem.ts';
import { bypassesOf } from '../record/bypasses.ts';
import type { SettingMoment } from '../record/setting-moments.ts';
import { readTable, type Table, writeCsv, writeXlsx } from '../table/index.ts';
import { limits } from '../table/limits.ts';
import { askedInVain } from './asked-in-vain.ts';
import type { Call, Ended } from './command.ts';
import { cliProblem } from './problems.ts';
import { headingOf, readBookFile } from './read-book-file.ts';
import { type RecordsFile, readRecordsFile } from './read-records-file.ts';
import { comparedSettings } from './settings-compared.ts';
import { type SettingsTold, settingsDocument } from './settings-document.ts';
import { settingsTextOf } from './settings-text.ts';
import { words } from './words.ts';
import type { World } from './world.ts';

/** The moments that are compared where one of the two is left out. */
const usual = { from: 'run-off', to: 'as left' } as const;

/** A slip of the hand must not write over the book itself, nor one input be read twice. */
const wrongCall = ({ operands, values: { out, sheet, from, to } }: Call): readonly Problem[] => [
  ...((from ?? to) !== undefined && (from ?? usual.from) === (to ?? usual.to)
    ? [
        cliProblem('CLI_OPTION_VALUE', '--to', {
          given: to ?? usual.to,
          allowed: words.say('settings.other'),
        }),
      ]
    : []),
  ...([...operands, sheet].filter((path) => path === '-').length > 1
    ? [cliProblem('CLI_INPUT_TWICE', '-')]
    : []),
  ...(out === undefined || /\.(xlsx|csv)$/i.test(out)
    ? []
    : [cliProblem('CLI_OPTION_VALUE', '--out', { given: out, allowed: words.say('cli.sheetFile') })]),
];

const bytesOf = (table: Table, out: string): Uint8Array =>
  /\.csv$/i.test(out)
    ? new TextEncoder().encode(writeCsv(table))
    : writeXlsx(table, words.say('settingSheet.lists'));

/** What a sheet that came back says, in whichever tab it is. */
const readSheet = async (
  path: string,
  book: Book,
  register: SettingRegister,
  say: SettingWords,
  world: World,
): Promise<Result<SettingsRead>> => {
  const bytes = await world.readBytes(path, limits.file);
  if (!bytes.ok) return bytes;
  const tabs = readTable(bytes.value);
  if (!tabs.ok) return tabs;
  const tab =
    tabs.value.find(({ rows }) => findSettingColumns(rows, words.say) !== undefined) ?? tabs.value[0];
  const read = readSettingTable(tab?.rows ?? [], register, { book, words: say, say: words.say });
  return { ok: true, value: read };
};

/**
 * Prints the register, two moments of it beside each other, or what a sheet of it brings; status 1 where something was
 * left beyond what is allowed or is still bypassed.
 */
export const runSettings = async (call: Call, world: World): Promise<Ended> => {
  const [path = '-', recordsPath] = call.operands;
  const wrong = wrongCall(call);
  if (wrong.length > 0) return { problems: wrong };
  const file = await readBookFile(path, world);
  if (!file.ok) return { problems: file.problems, heading: headingOf(path, file) };
  const book = file.value;
  const vain = askedInVain(book, path, call);
  if (vain.length > 0) return { problems: vain };
  const recorded: RecordsFile | undefined =
    recordsPath === undefined ? undefined : await readRecordsFile(recordsPath, world);
  if (recorded?.ok === false) return { problems: recorded.problems, heading: recorded.heading };
  const records = recorded?.value.records ?? [];
  const { format, floor, sheet, out } = call.values;
  const assessment = assessBook(book, format === undefined ? {} : { format });
  const register = settingRegister(book, assessment, records);
  const say = settingWords(book, words.say, world.locale);
  const [from, to] = [call.values.from, call.values.to] as readonly (SettingMoment | undefined)[];
  const asked = floor ?? floorOfMoment(book, 'as left') ?? '';
  const compared =
    from === undefined && to === undefined
      ? undefined
      : comparedSettings(book, assessment, register, {
          from: from ?? usual.from,
          to: to ?? usual.to,
          floor: asked,
          records,
        });
  const read = sheet === undefined ? undefined : await readSheet(sheet, book, register, say, world);
  if (read?.ok === false) return { problems: read.problems, heading: sheet };
  let written: SettingsTold['written'];
  if (out !== undefined) {
    const bytes = bytesOf(settingTable(register, say, words.say), out);
    const done = await world.writeBytes(out, bytes);
    if (!done.ok) return { problems: done.problems };
    written = { path: out, bytes: bytes.length, rows: register.rows.length };
  }
  const bypasses = bypassesOf(records);
  const told: SettingsTold = { register, bypasses, compared, read: read?.value, written, say };
  const answer = call.flags.has('json') ? settingsDocument(book, told) : undefined;
  if (register.problems.length > 0) {
    if (answer === undefined) world.out(settingsTextOf(told, { book, assessment, world }));
    return { problems: register.problems, heading: recordsPath, answer };
  }
  if (answer !== undefined) world.out(`${JSON.stringify(answer, null, 2)}\n`);
  else if (written !== undefined)
    world.out(`${words.say('settings.written', { count: written.rows, path: written.path })}\n`);
  else world.out(settingsTextOf(told, { book, assessment, world }));
  if ((read?.value.notUnderstood.length ?? 0) > 0) return 2;
  const beyond = register.rows.some(({ at }) => at['as left']?.beyond !== undefined);
  return beyond || bypasses.some(({ removed }) => removed === undefined) ? 1 : 0;
};
