export {
  compareSettings,
  isSameSetting,
  type SettingChange,
  type SettingComparison,
} from './compare-settings.ts';
export { floorOfMoment } from './floor-of-moment.ts';
export { findingMover, type MovedFinding, movedFindings } from './moved-findings.ts';
export { bypassLacks, leftBeyond, type SettingLack } from './open-lacks.ts';
export { settingProblemText } from './problems.text.ts';
export {
  readSettingTable,
  type SettingNotUnderstood,
  type SettingsRead,
  type TakenSetting,
} from './read-setting-table.ts';
export { type RegisterRow, type SettingAt, type SettingRegister, settingRegister } from './register.ts';
export { findSettingColumns } from './setting-columns.ts';
export { settingName, settingNames } from './setting-names.ts';
export { type SettingBound, type SettingRange, type SettingRow, settingSorts } from './setting-row.ts';
export { settingTable } from './setting-table.ts';
export { type SettingWords, settingWords } from './setting-words.ts';
export { settingsText } from './settings.text.ts';
export { settingsOfBook } from './settings-of-book.ts';
export { type TouchedCheck, touchedChecks } from './touched-checks.ts';
