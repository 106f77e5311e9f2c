import type { UnitWishes } from '../quantity/unit-choice.ts';
import type { Computed, Values } from '../sheets/frame.ts';
import type { SheetEntry } from '../sheets/sheet-entry.ts';
import { inColumns } from './help.ts';
import type { TypedInputs } from './sheet-inputs.ts';
import { fieldName, noteSentence } from './sheet-words.ts';
import { shownField } from './shown.ts';
import { words } from './words.ts';
import type { World } from './world.ts';

type Row = readonly [string, string];

/** A sheet with its numbers, for a reader: inputs as they were understood, outputs, what to know about them. */
export const sheetText = (
  { sheet, text, cases }: SheetEntry,
  typed: TypedInputs,
  { outputs, notes, assumed }: Computed<Values>,
  wishes: UnitWishes,
  world: World,
): string => {
  const inputRows = Object.entries(sheet.inputs).flatMap(([name, field]): Row[] => {
    const said = fieldName(name, text.en.inputs);
    if (typed.shown[name] !== undefined) return [[said, typed.shown[name]]];
    const value = assumed.includes(name) && field.type !== 'list' ? field.assumed : undefined;
    if (value === undefined) return [];
    return [[said, `${shownField(value, field, wishes, world.locale)} (${words.say('sheet.assumed')})`]];
  });
  const outputRows = Object.entries(sheet.outputs).flatMap(([name, field]): Row[] => {
    const value = outputs[name];
    if (value === undefined) return [];
    return [[fieldName(name, text.en.outputs), shownField(value, field, wishes, world.locale)]];
  });
  return [
    `${text.en.title}  ${sheet.id}`,
    `${words.say('sheet.inputs')}\n${inColumns(inputRows, world.columns)}`,
    `${words.say('sheet.outputs')}\n${inColumns(outputRows, world.columns)}`,
    ...notes.map((note) => words.say('sheet.note', { text: noteSentence(text, note) })),
    ...(cases.length === 0 ? [words.say('sheet.note', { text: words.say('sheet.unverified') })] : []),
  ]
    .join('\n\n')
    .concat('\n');
};
