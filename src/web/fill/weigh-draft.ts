import type { Kind } from '../../quantity/index.ts';

/** What is typed anew for a bottle, and what holds for many. */
export const weighFields = [
  'gross',
  'tare',
  'volume',
  'level',
  'preset',
  'time',
  'temperature',
  'pressure',
] as const;
export type WeighField = (typeof weighFields)[number];

export const keptFields = [
  'lanesOpen',
  'instrument',
  'resolution',
  'calibrated',
  'conditions',
  'by',
] as const;
export type KeptField = (typeof keptFields)[number];

/** How the contents of a bottle are found. */
export const measures = ['weight', 'volume', 'level'] as const;
export type Measure = (typeof measures)[number];

/** What a balance shows. */
export const massUnits = ['kg', 'g', 'lb', 'oz'] as const;

export const kindOf: Readonly<Record<Exclude<WeighField, 'preset'>, Kind>> = {
  gross: 'mass',
  tare: 'mass',
  volume: 'volume',
  level: 'length',
  time: 'time',
  temperature: 'temperature',
  pressure: 'gaugePressure',
};

export interface WeighDraft {
  readonly lane: string;
  /** Each as it is typed; a bare number has the unit beside it. */
  readonly texts: Readonly<Record<WeighField | KeptField, string>>;
  readonly measure: Measure;
  readonly massUnit: string;
  readonly throttled: boolean;
  readonly afterStop: boolean;
  /** Number of the row of bottles, and the lanes whose bottles of it are written down. */
  readonly row: { readonly number: number; readonly lanes: readonly string[] };
}

const noTexts: WeighDraft['texts'] = {
  gross: '',
  tare: '',
  volume: '',
  level: '',
  preset: '',
  time: '',
  temperature: '',
  pressure: '',
  lanesOpen: '',
  instrument: '',
  resolution: '',
  calibrated: '',
  conditions: '',
  by: '',
};

export const firstDraft = (lane: string, massUnit: string): WeighDraft => ({
  lane,
  texts: noTexts,
  measure: 'weight',
  massUnit,
  throttled: false,
  afterStop: false,
  row: { number: 1, lanes: [] },
});

/** The fields of one bottle, by how its contents are found. */
export const fieldsFor = (measure: Measure): readonly WeighField[] =>
  measure === 'weight' ? ['gross', 'tare', 'preset', 'time'] : [measure, 'preset', 'time'];

/** The lane whose bottle comes next: the one behind it, from the last the first. */
export const laneAfter = (lanes: readonly string[], lane: string): string =>
  lanes[(lanes.indexOf(lane) + 1) % lanes.length] ?? lane;

/** The row that a bottle of a lane belongs to: a lane that has its bottle, or one before the last, begins another. */
export const rowWith = (
  row: WeighDraft['row'],
  lanes: readonly string[],
  lane: string,
): WeighDraft['row'] => {
  const last = row.lanes.at(-1);
  const goesOn = last === undefined || lanes.indexOf(lane) > lanes.indexOf(last);
  return goesOn
    ? { number: row.number, lanes: [...row.lanes, lane] }
    : { number: row.number + 1, lanes: [lane] };
};
