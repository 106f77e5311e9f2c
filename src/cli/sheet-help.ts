import { defaultUnit, unitsOf } from '../quantity/index.ts';
import type { Field } from '../sheets/frame.ts';
import type { SheetEntry } from '../sheets/sheet-entry.ts';
import { inColumns } from './help.ts';
import { fieldName, plainSymbol } from './sheet-words.ts';
import { shownBounds, shownField } from './shown.ts';
import { words } from './words.ts';
import type { World } from './world.ts';

/** Units named in the help: the usual ones first, not the whole menu. */
const fewUnits = 5;

const unitsText = (field: Field): string => {
  if (field.type === 'choice') return '';
  const usual = [defaultUnit(field.kind, 'metric'), defaultUnit(field.kind, 'us')];
  const ids = [...new Set([...usual, ...unitsOf(field.kind).map(({ id }) => id)])].filter((id) => id !== '');
  return ids.length === 0 ? '' : words.say('sheet.in', { units: ids.slice(0, fewUnits).join(', ') });
};

const about = (field: Field, name: string, locale: string): string => {
  const assumed = field.type === 'list' ? undefined : field.assumed;
  const wishes = { byKind: {} };
  return [
    name,
    unitsText(field),
    shownBounds(field, wishes, locale),
    field.type === 'list' ? words.say('sheet.several') : '',
    assumed === undefined
      ? ''
      : words.say('sheet.assumed.value', { value: shownField(assumed, field, wishes, locale) }),
  ]
    .filter((part) => part !== '')
    .join('; ');
};

/** Everything that a reader needs to use one sheet: inputs with units, formula, limits, sources. */
export const sheetHelp = ({ sheet, text, cases }: SheetEntry, world: World): string => {
  const { title, about: purpose, inputs, outputs, notes } = text.en;
  const rows = (fields: Readonly<Record<string, Field>>, names: Readonly<Record<string, string>>) =>
    inColumns(
      Object.entries(fields).map(
        ([name, field]) =>
          [`${name}  ${plainSymbol(field)}`, about(field, fieldName(name, names), world.locale)] as const,
      ),
      world.columns,
    );
  const evidence =
    cases.length === 0 ? words.say('sheet.unverified') : words.say('sheet.cases', { count: cases.length });
  const sources = sheet.sources.map(
    ({ title: source, edition, place, mark }) =>
      `  ${[source, edition, place].filter((part) => part !== undefined).join(', ')} (${mark})`,
  );
  return [
    `${title}  ${sheet.id}, ${evidence}\n${inColumns([['', purpose]], world.columns)}`,
    `${words.say('sheet.inputs')}\n${rows(sheet.inputs, inputs)}`,
    `${words.say('sheet.outputs')}\n${rows(sheet.outputs, outputs)}`,
    `${words.say('sheet.formula')}\n${sheet.formula.map((line) => `  ${line}`).join('\n')}`,
    ...(sheet.limits.length === 0
      ? []
      : [
          `${words.say('sheet.limits')}\n${inColumns(
            sheet.limits.map(({ code }) => [code, notes[code] ?? ''] as const),
            world.columns,
          )}`,
        ]),
    `${words.say('sheet.sources', { count: sources.length })}\n${sources.join('\n')}`,
  ]
    .join('\n\n')
    .concat('\n');
};
