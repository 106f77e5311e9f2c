import type { SettingProblemCode } from './problems.ts';

/** What happened and what to do, by language. */
export const settingProblemText: { readonly en: Readonly<Record<SettingProblemCode, string>> } = {
  en: {
    SETTING_UNKNOWN:
      'The register has no setting "{given}". The book may have changed since: look whether the thing has another tag now.',
    SETTING_FLOOR_UNKNOWN: 'The book has no floor {given}. Known: {allowed}.',
    SETTING_NO_HEADER: 'This is no sheet of settings: the row of headings was not found.',
    SETTING_NO_ID: 'The row has no id, so nobody can tell what "{given}" is set on.',
    SETTING_TWICE: 'The same id has values in the rows {rows}. Keep one of them.',
    SETTING_TORN:
      '"{given}" stands beside the id of another setting: cells were moved without the rest of their row.',
    SETTING_NO_NAME: 'Nobody says who set it. Write a name into the row.',
  },
};
