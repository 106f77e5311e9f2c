import type { Computed, Field, Value, Values } from '../sheets/frame.ts';
import type { SheetEntry } from '../sheets/sheet-entry.ts';
import { inColumns } from './help.ts';
import { fieldName, noteSentence } from './sheet-words.ts';
import { shownField } from './shown.ts';
import type { UnitWishes } from './unit-choice.ts';
import { words } from './words.ts';
import type { World } from './world.ts';

/** A sheet with its numbers, for a reader: inputs, outputs, what to know about them. */
export const sheetText = (
  { sheet, text, cases }: SheetEntry,
  given: Values,
  { outputs, notes, assumed }: Computed<Values>,
  wishes: UnitWishes,
  world: World,
): string => {
  const rows = (
    fields: Readonly<Record<string, Field>>,
    values: Values,
    names: Readonly<Record<string, string>>,
  ) =>
    Object.entries(fields).flatMap(([name, field]): (readonly [string, string])[] => {
      const isAssumed = assumed.includes(name) && fields === sheet.inputs;
      const value: Value | undefined = values[name] ?? (field.type === 'list' ? undefined : field.assumed);
      if (value === undefined) return [];
      const mark = isAssumed ? ` (${words.say('sheet.assumed')})` : '';
      return [[fieldName(name, names), shownField(value, field, wishes, world.locale) + mark]];
    });
  return [
    `${text.en.title}  ${sheet.id}`,
    `${words.say('sheet.inputs')}\n${inColumns(rows(sheet.inputs, given, text.en.inputs), world.columns)}`,
    `${words.say('sheet.outputs')}\n${inColumns(rows(sheet.outputs, outputs, text.en.outputs), world.columns)}`,
    ...notes.map((note) => words.say('sheet.note', { text: noteSentence(text, note) })),
    ...(cases.length === 0 ? [words.say('sheet.note', { text: words.say('sheet.unverified') })] : []),
  ]
    .join('\n\n')
    .concat('\n');
};
