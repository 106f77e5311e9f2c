import { currentRecords } from './current-records.ts';
import type { Envelope } from './envelope.ts';
import { byText } from './heads.ts';
import type { SettingMoment } from './setting-moments.ts';

/** What a record says of one setting at one moment, as plain data. */
export interface RecordedSetting {
  /** Id of the record: a correction names it. */
  readonly id: string;
  /** The record's own time. */
  readonly at: string;
  readonly setting: string;
  readonly floor: string;
  readonly moment: SettingMoment;
  readonly value: string;
  readonly by: string;
  readonly why?: string;
  readonly instrument?: string;
  readonly evidence?: readonly string[];
  readonly remark?: string;
}

/**
 * The settings that were recorded and count now, first to last.
 *
 * Method   the records that no other replaces, by the moment that the devices claim; of equal ones by id, so that the
 *          order of the set leaves no trace
 * Symbols  records  the set, whole by verifyRecords
 * Assumes  bodies that fit their kind; a version of the future is passed over
 */
export const settingsOf = (records: readonly Envelope[]): readonly RecordedSetting[] =>
  currentRecords(records)
    .current.filter(({ kind, version }) => kind === 'setting' && version === 1)
    .map(({ id, deviceTime, body }) => ({
      ...(body as Omit<RecordedSetting, 'id' | 'at'>),
      id,
      at: deviceTime,
    }))
    .sort((a, b) => Date.parse(a.at) - Date.parse(b.at) || byText(a.id, b.id));
