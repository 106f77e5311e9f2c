import { type Book, valueAt } from '../../book/index.ts';
import type { FloorAssessment } from '../../floor/assessment.ts';
import { stationOf } from '../../floor/station-of.ts';
import type { AnyFinding } from '../../floor/utilities/utility-finding.ts';
import { runSheet } from '../../sheets/frame.ts';
import { countPresetSheet } from '../../sheets/water/count-preset.ts';
import { placeFigure } from '../place-figure.ts';
import type { SettingBound, SettingRange, SettingRow } from './setting-row.ts';

/** What a finding asks, as a bound. */
const demanded = (finding: AnyFinding | undefined, floor: FloorAssessment): SettingBound | undefined => {
  if (finding?.demand.value === undefined) return undefined;
  const { value, path, working } = finding.demand;
  const made = working === undefined ? undefined : floor.workings[working];
  return {
    value,
    ...(path === undefined ? {} : { path }),
    ...(made === undefined ? {} : { working: made }),
  };
};

const least = (bound: SettingBound | undefined): SettingRange =>
  bound === undefined ? {} : { least: bound };

/** The highest that the rule set allows, from the sheet behind the finding of the relay. */
const highestOverload = (finding: AnyFinding | undefined, floor: FloorAssessment): SettingRange => {
  const working = finding?.demand.working === undefined ? undefined : floor.workings[finding.demand.working];
  const highest = working?.outputs.highest;
  return working === undefined || typeof highest !== 'number' ? {} : { most: { value: highest, working } };
};

/** The count at which a lane comes nearest to the level on this floor: fewer leave the bottle short. */
const countForLevel = (row: SettingRow, book: Book, floor: FloorAssessment): SettingRange => {
  const fill = stationOf(book, 'fill');
  const at = fill?.station.lanes?.findIndex(({ tag }) => tag === row.on) ?? -1;
  const figures = floor.lanes.find(({ lane }) => lane === row.on);
  const format = (book.line?.formats ?? []).findIndex(({ tag }) => tag === row.format);
  if (fill === undefined || at < 0 || figures === undefined || floor.format !== row.format) return {};
  const path = `${fill.path}/lanes/${at}`;
  const target = placeFigure(book, `/line/formats/${format}/level`, 'volume').value;
  const pulseDensity = placeFigure(book, `${path}/pulses`, 'pulseDensity').value;
  if (target === undefined || pulseDensity === undefined) return {};
  const phase = valueAt(book, `${path}/meter/phase`) ?? 'free-running';
  const inputs = { target, afterRun: figures.afterRun, pulseDensity, phase: String(phase) };
  const made = runSheet(countPresetSheet, inputs);
  if (!made.ok) return {};
  const { outputs, notes } = made.value;
  const { id: sheet, version } = countPresetSheet;
  const places: Readonly<Record<string, string>> = {
    target: `/line/formats/${format}/level`,
    pulseDensity: `${path}/pulses`,
  };
  const from = Object.fromEntries(Object.entries(places).map(([name, place]) => [name, { path: place }]));
  const working = { sheet, version, inputs, outputs: { ...outputs }, notes, from };
  return least({ value: outputs.pulses, working });
};

const zoneOf = ({ sort, on }: SettingRow, book: Book): string | undefined =>
  sort === 'heater' ? book.line?.heaters?.find(({ tag }) => tag === on)?.zone : on;

/** What the sheets allow on a floor, where one exists. */
const bySheet = (row: SettingRow, book: Book, floor: FloorAssessment): SettingRange => {
  const of = (question: string): AnyFinding | undefined =>
    floor.utilities.findings.find(({ id }) => id === `${question} ${zoneOf(row, book) ?? ''}`);
  switch (row.sort) {
    case 'preset':
      return countForLevel(row, book, floor);
    case 'overload':
      return highestOverload(of('overloadRange'), floor);
    case 'heater':
    case 'temperature':
      return least(demanded(of('washTemperature'), floor));
    case 'concentration':
      return least(demanded(of('washConcentration'), floor));
    default:
      return {};
  }
};

const stricter = (
  one: SettingBound | undefined,
  other: SettingBound | undefined,
  isStricter: (a: number, b: number) => boolean,
): SettingBound | undefined => {
  if (one === undefined || other === undefined) return one ?? other;
  return isStricter(other.value, one.value) ? other : one;
};

/** The allowed range of a setting on a floor: what the book says and what a sheet gives, whichever is stricter. */
export const rangeOnFloor = (
  row: SettingRow,
  book: Book,
  floor: FloorAssessment | undefined,
): SettingRange => {
  const sheet = floor === undefined ? {} : bySheet(row, book, floor);
  const lowest = stricter(row.range.least, sheet.least, (a, b) => a > b);
  const highest = stricter(row.range.most, sheet.most, (a, b) => a < b);
  return {
    ...(lowest === undefined ? {} : { least: lowest }),
    ...(highest === undefined ? {} : { most: highest }),
  };
};
