import { defaultUnit, type Kind, unitsOf } from '../quantity/index.ts';
import type { Field } from '../sheets/frame.ts';
import { shownBounds } from '../sheets/problems-as-typed.ts';
import type { SheetEntry } from '../sheets/sheet-entry.ts';
import { inColumns } from './help.ts';
import { fieldName, plainSymbol } from './sheet-words.ts';
import { shownField } from './shown.ts';
import { words } from './words.ts';
import type { World } from './world.ts';

/** Units that a shop floor types beside the usual ones. */
const also: Readonly<Partial<Record<Kind, readonly string[]>>> = {
  length: ['mm', 'in'],
  volume: ['mL', 'm3'],
  time: ['min', 'h'],
  gaugePressure: ['kPa(g)'],
  pressureDifference: ['kPa', 'mbar'],
};

const unitsText = (kind: Kind): string => {
  const usual = [defaultUnit(kind, 'metric'), defaultUnit(kind, 'us'), ...(also[kind] ?? [])];
  const known = new Set(unitsOf(kind).map(({ id }) => id));
  const ids = [...new Set(usual)].filter((id) => id !== '' && known.has(id));
  return ids.length === 0 ? words.say('sheet.number') : words.say('sheet.in', { units: ids.join(', ') });
};

const aboutInput = (field: Field, name: string, locale: string): string => {
  const wishes = { byKind: {} };
  const assumed = field.type === 'list' ? undefined : field.assumed;
  const value = assumed === undefined ? '' : shownField(assumed, field, wishes, locale);
  return [
    name,
    field.type === 'choice' ? '' : unitsText(field.kind),
    shownBounds(field, wishes, locale),
    field.type === 'list' ? words.say('sheet.several') : '',
    value === '' ? '' : words.say('sheet.assumed.value', { value }),
  ]
    .filter((part) => part !== '')
    .join('; ');
};

const aboutOutput = (field: Field, name: string): string =>
  field.type === 'list' ? `${name}; ${words.say('sheet.list.output')}` : name;

/** Everything that a reader needs to use one sheet: inputs with units, formula, limits, sources. */
export const sheetHelp = ({ sheet, text, cases }: SheetEntry, world: World): string => {
  const { title, about: purpose, inputs, outputs, notes } = text.en;
  const rows = (fields: Readonly<Record<string, Field>>, about: (field: Field, name: string) => string) =>
    inColumns(
      Object.entries(fields).map(
        ([name, field]) => [`${name}  ${plainSymbol(field)}`, about(field, name)] as const,
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
    `${words.say('sheet.inputs')}\n${rows(sheet.inputs, (field, name) => aboutInput(field, fieldName(name, inputs), world.locale))}`,
    `${words.say('sheet.outputs')}\n${rows(sheet.outputs, (field, name) => aboutOutput(field, fieldName(name, outputs)))}`,
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
