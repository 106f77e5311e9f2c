import type { UnitSystem } from '../quantity/index.ts';
import { accept, type Result, refuse } from '../quantity/problem.ts';
import { foundSheets, sheetSearchText } from '../sheets/found-sheets.ts';
import { runSheet, type Sheet } from '../sheets/frame.ts';
import { loadSheet } from '../sheets/load-sheet.ts';
import { problemsAsTyped } from '../sheets/problems-as-typed.ts';
import type { SheetEntry } from '../sheets/sheet-entry.ts';
import type { Call, Ended } from './command.ts';
import { inColumns } from './help.ts';
import { nearestName } from './nearest-name.ts';
import { cliProblem } from './problems.ts';
import { sheetHelp } from './sheet-help.ts';
import { readSheetInputs } from './sheet-inputs.ts';
import { sheetText } from './sheet-text.ts';
import { sheetSentence } from './sheet-words.ts';
import { words } from './words.ts';
import type { World } from './world.ts';

/** All sheets: as much to load as the rest of the program, and wanted for a list of them only. */
const allEntries = async (): Promise<readonly SheetEntry[]> =>
  (await import('../sheets/registry.ts')).sheetEntries;

/** Sheets that are named where none has the name that was given, but the words of it stand in them. */
const mostNamed = 12;

const speakingOf = (entries: readonly SheetEntry[], id: string): readonly string[] => {
  const texts = new Map(
    entries.map(({ sheet, text: { en } }) => [
      sheet.id,
      sheetSearchText(sheet, { ...en, outputs: Object.values(en.outputs) }),
    ]),
  );
  return [...foundSheets(texts, id.replace(/[-/]/g, ' '))];
};

const findEntry = async (id: string): Promise<Result<SheetEntry>> => {
  const alone = await loadSheet(id);
  if (alone !== undefined) return accept(alone);
  const entries = await allEntries();
  // `pipe-loss` alone will do where only one discipline has it
  const found = entries.filter(({ sheet }) => sheet.id === id || sheet.id.split('/')[1] === id);
  if (found.length === 1 && found[0] !== undefined) return accept(found[0]);
  const ids = entries.map(({ sheet }) => sheet.id);
  const nearest = nearestName(id, id.includes('/') ? ids : ids.map((one) => one.split('/')[1] ?? one));
  if (nearest !== undefined) {
    return refuse(cliProblem('CLI_SHEET_NEAREST', id, { given: id, allowed: ids, parts: { nearest } }));
  }
  const speaking = speakingOf(entries, id);
  return refuse(
    speaking.length === 0 || speaking.length > mostNamed
      ? cliProblem('CLI_SHEET_UNKNOWN', id, { given: id, allowed: ids })
      : cliProblem('CLI_SHEET_FOUND', id, {
          given: id,
          allowed: ids,
          parts: { found: speaking.join(', ') },
        }),
  );
};

const listText = (entries: readonly SheetEntry[], world: World): string =>
  `${words.say('sheet.list')}\n${inColumns(
    entries.map(({ sheet, text }) => [sheet.id, text.en.title] as const),
    world.columns,
  )}\n`;

/** Prints the help of one sheet; gives false where the call names none. */
export const helpSheet = async ({ operands: [id] }: Call, world: World): Promise<boolean> => {
  if (id === undefined) return false;
  const entry = await findEntry(id);
  if (!entry.ok) return false;
  world.out(sheetHelp(entry.value, world));
  return true;
};

/** What is written as JSON, loaded only where it is asked for: it brings the schema library. */
const documents = () => import('./sheet-document.ts');

/** Runs the sheet of a call, or lists all. */
export const runSheetCommand = async ({ operands, values, flags }: Call, world: World): Promise<Ended> => {
  const [id, ...pairs] = operands;
  const json = (document: unknown) => world.out(`${JSON.stringify(document, null, 2)}\n`);
  if (id === undefined) {
    const entries = await allEntries();
    if (flags.has('json')) json((await documents()).sheetListDocument(entries));
    else world.out(listText(entries, world));
    return 0;
  }
  const entry = await findEntry(id);
  if (!entry.ok) return { problems: entry.problems };
  const sheet: Sheet = entry.value.sheet;
  const inputs = readSheetInputs(sheet, pairs, world.locale);
  if (!inputs.ok) return { problems: inputs.problems };
  const asked = values.units as UnitSystem | undefined;
  const wishes = { byKind: inputs.value.units, system: asked ?? inputs.value.system };
  const computed = runSheet(sheet, inputs.value.values);
  if (!computed.ok) {
    const problems = problemsAsTyped(computed.problems, sheet, inputs.value.texts, wishes, world.locale);
    return { problems, sentences: problems.map((problem) => sheetSentence(entry.value.text, problem)) };
  }
  if (flags.has('json'))
    json((await documents()).sheetDocument(entry.value, inputs.value.values, computed.value));
  else world.out(sheetText(entry.value, inputs.value, computed.value, wishes, world));
  return 0;
};
