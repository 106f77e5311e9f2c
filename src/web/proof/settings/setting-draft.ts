import type { SettingMoment } from '../../../record/setting-moments.ts';
import type { RecordDraft } from '../../commands/add-record.ts';
import type { Page } from '../../state/page.ts';

export interface SaidSetting {
  readonly setting: string;
  readonly floor: string;
  readonly moment: SettingMoment;
  readonly value: string;
  readonly by: string;
  readonly why?: string | undefined;
  readonly remark?: string | undefined;
  readonly evidence?: readonly string[];
  /** What was read before at the same moment: the new one takes its place, whatever the clocks say. */
  readonly instead?: string | undefined;
}

const said = (key: string, text: string | undefined): Readonly<Record<string, string>> =>
  text === undefined || text.trim() === '' ? {} : { [key]: text.trim() };

/** The record of one setting at one moment. */
export const settingDraft = (
  page: Pick<Page, 'newId' | 'now'>,
  { setting, floor, moment, value, by, why, remark, evidence = [], instead }: SaidSetting,
): RecordDraft => ({
  id: page.newId(),
  kind: 'setting',
  version: 1,
  at: page.now(),
  ...(instead === undefined ? {} : { supersedes: instead }),
  body: {
    setting,
    floor,
    moment,
    value,
    by: by.trim(),
    ...said('why', why),
    ...said('remark', remark),
    ...(evidence.length === 0 ? {} : { evidence }),
  },
});
