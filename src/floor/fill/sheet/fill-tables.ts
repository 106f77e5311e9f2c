import type { UnitSystem } from '../../../quantity/default-unit.ts';
import { findUnit } from '../../../quantity/unit-lookup.ts';
import type { Table, TableCell, TableColumn } from '../../../table/table.ts';
import type { SheetWords } from '../../questions/sheet-words.ts';
import type { MeasuredSample, WeighedLot, WeighedTrial } from '../weighed.ts';
import { type FillColumn, lotColumns, packageColumns, sampleColumns, trialColumns } from './columns.ts';

export interface FillTableOptions {
  readonly words: SheetWords;
  /** Units of the headings. */
  readonly system?: UnitSystem;
}

const headingOf = (
  { field, form, width }: FillColumn,
  { words, system = 'metric' }: FillTableOptions,
): TableColumn => {
  const name = words.say(`fillSheet.column.${field}`);
  if (form.is !== 'quantity') return { heading: name, width };
  const unit = form.units[system === 'us' ? 1 : 0];
  return { heading: `${name} (${findUnit(form.kind, unit)?.label ?? unit})`, width };
};

const cellOf = ({ field, form }: FillColumn, value: unknown, { words }: FillTableOptions): TableCell => {
  const choices =
    form.is === 'choice'
      ? form.of.map((one) => words.say(`fillSheet.${field}.${one}`))
      : form.is === 'flag'
        ? [words.say('fillSheet.yes'), words.say('fillSheet.no')]
        : undefined;
  const text =
    value === undefined
      ? ''
      : form.is === 'choice'
        ? words.say(`fillSheet.${field}.${String(value)}`)
        : form.is === 'flag'
          ? words.say(value === true ? 'fillSheet.yes' : 'fillSheet.no')
          : String(value);
  return { text, open: true, ...(choices === undefined ? {} : { choices }) };
};

const tableOf = (
  name: 'trials' | 'samples' | 'lot',
  columns: readonly FillColumn[],
  rows: readonly Readonly<Record<string, unknown>>[],
  options: FillTableOptions,
): Table => ({
  name: options.words.say(`fillSheet.${name}`),
  lead: [options.words.say(`fillSheet.lead.${name}`)],
  columns: columns.map((column) => headingOf(column, options)),
  rows: rows.map((row) => columns.map((column) => cellOf(column, row[column.field], options))),
});

/** A row that waits for its bottle. */
export type OpenTrial = Pick<WeighedTrial, 'floor' | 'lane' | 'preset' | 'format' | 'row'>;

/** Trials as a sheet, one bottle a row; values stay as they were typed, with their unit. Read by `readTrialTable`. */
export const trialTable = (trials: readonly (WeighedTrial | OpenTrial)[], options: FillTableOptions): Table =>
  tableOf('trials', trialColumns, trials as readonly Readonly<Record<string, unknown>>[], options);

/** The customer's bottles as a sheet. Read by `readSampleTable`. */
export const sampleTable = (
  samples: readonly Pick<MeasuredSample, 'format' | 'bottle'>[],
  options: FillTableOptions,
): Table =>
  tableOf('samples', sampleColumns, samples as readonly Readonly<Record<string, unknown>>[], options);

/** A lot as a sheet; what holds for all of it stands in the first row. Read by `readLotTable`. */
export const lotTable = (lot: WeighedLot, options: FillTableOptions): Table => {
  const { packages, ...whole } = lot;
  const columns = [...packageColumns, ...lotColumns];
  const rows = packages.map((one, i) => (i === 0 ? { ...whole, ...one } : { ...one }));
  return tableOf('lot', columns, rows, options);
};
