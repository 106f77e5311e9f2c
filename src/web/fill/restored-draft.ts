import type { RecordedTrial } from '../../record/trials.ts';
import type { WeighDraft, WeighField } from './weigh-draft.ts';

const fields = ['gross', 'tare', 'volume', 'level', 'time', 'temperature', 'pressure'] as const;

/** The number of a recorded text, without its unit where that stands beside the field. */
const bareText = (text: string | undefined, unit: string): string =>
  text === undefined ? '' : text.endsWith(` ${unit}`) ? text.slice(0, -unit.length - 1) : text;

/** The fields as they stood when a bottle was written down, so that only the slip is mended. */
export const restoredDraft = (
  draft: WeighDraft,
  trial: RecordedTrial,
  unitOf: (field: WeighField) => string,
): WeighDraft => ({
  ...draft,
  lane: trial.lane,
  measure: trial.gross !== undefined ? 'weight' : trial.volume !== undefined ? 'volume' : 'level',
  throttled: trial.throttled === true,
  afterStop: trial.afterStop === true,
  texts: {
    ...draft.texts,
    ...Object.fromEntries(fields.map((field) => [field, bareText(trial[field], unitOf(field))])),
    preset: String(trial.preset),
    lanesOpen: trial.lanesOpen === undefined ? '' : String(trial.lanesOpen),
  },
});
