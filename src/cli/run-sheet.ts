import type { UnitSystem } from '../quantity/index.ts';
import { accept, type Result, refuse } from '../quantity/problem.ts';
import { runSheet, type Sheet } from '../sheets/frame.ts';
import { sheetEntries } from '../sheets/registry.ts';
import type { SheetEntry } from '../sheets/sheet-entry.ts';
import type { Call, Ended } from './command.ts';
import { inColumns } from './help.ts';
import { nearestName } from './nearest-name.ts';
import { cliProblem } from './problems.ts';
import { sheetDocument, sheetListDocument } from './sheet-document.ts';
import { sheetHelp } from './sheet-help.ts';
import { readSheetInputs } from './sheet-inputs.ts';
import { inUserUnits } from './sheet-problems.ts';
import { sheetText } from './sheet-text.ts';
import { sheetSentence } from './sheet-words.ts';
import { words } from './words.ts';
import type { World } from './world.ts';

const findEntry = (id: string): Result<SheetEntry> => {
  const ids = sheetEntries.map(({ sheet }) => sheet.id);
  // `pipe-loss` alone will do where only one discipline has it
  const found = sheetEntries.filter(({ sheet }) => sheet.id === id || sheet.id.split('/')[1] === id);
  if (found.length === 1 && found[0] !== undefined) return accept(found[0]);
  const nearest = nearestName(id, id.includes('/') ? ids : ids.map((one) => one.split('/')[1] ?? one));
  return refuse(
    nearest === undefined
      ? cliProblem('CLI_SHEET_UNKNOWN', id, { given: id, allowed: ids })
      : cliProblem('CLI_SHEET_NEAREST', id, { given: id, allowed: ids, parts: { nearest } }),
  );
};

const listText = (world: World): string =>
  `${words.say('sheet.list')}\n${inColumns(
    sheetEntries.map(({ sheet, text }) => [sheet.id, text.en.title] as const),
    world.columns,
  )}\n`;

/** Prints the help of one sheet; gives false where the call names none. */
export const helpSheet = ({ operands: [id] }: Call, world: World): boolean => {
  if (id === undefined) return false;
  const entry = findEntry(id);
  if (!entry.ok) return false;
  world.out(sheetHelp(entry.value, world));
  return true;
};

/** Runs the sheet of a call, or lists all. */
export const runSheetCommand = async ({ operands, values, flags }: Call, world: World): Promise<Ended> => {
  const [id, ...pairs] = operands;
  const json = (document: unknown) => world.out(`${JSON.stringify(document, null, 2)}\n`);
  if (id === undefined) {
    if (flags.has('json')) json(sheetListDocument(sheetEntries));
    else world.out(listText(world));
    return 0;
  }
  const entry = findEntry(id);
  if (!entry.ok) return { problems: entry.problems };
  const sheet: Sheet = entry.value.sheet;
  const inputs = readSheetInputs(sheet, pairs, world.locale);
  if (!inputs.ok) return { problems: inputs.problems };
  const asked = values.units as UnitSystem | undefined;
  const wishes = { byKind: inputs.value.units, system: asked ?? inputs.value.system };
  const computed = runSheet(sheet, inputs.value.values);
  if (!computed.ok) {
    const problems = inUserUnits(computed.problems, sheet, inputs.value.texts, wishes, world.locale);
    return { problems, sentences: problems.map((problem) => sheetSentence(entry.value.text, problem)) };
  }
  if (flags.has('json')) json(sheetDocument(entry.value, inputs.value.values, computed.value));
  else world.out(sheetText(entry.value, inputs.value, computed.value, wishes, world));
  return 0;
};
