import type { SettingMoment } from '../../record/setting-moments.ts';
import type { Bundle } from '../../text/index.ts';
import type { SettingColumn } from './setting-columns.ts';
import type { SettingSort } from './setting-row.ts';

type Words<K extends string> = Readonly<Record<K, string>>;

/** What a setting is called; `a` is the thing that it belongs to. */
const sort: Words<Exclude<SettingSort, 'own'>> = {
  preset: 'preset, {a}',
  changeOver: 'count of the change to slow, {a}',
  dwell: 'dwell timer',
  drip: 'drip timer',
  dump: 'time between two dumps, {a}',
  delay: 'delay, {a}',
  temperature: 'temperature, {a}',
  heater: 'thermostat, {a}',
  concentration: 'dosing, {a}',
  frequency: 'frequency of the inverter, {a}',
  parameters: 'parameters of the inverter, {a}',
  overload: 'overload dial, {a}',
  regulator: 'air regulator, {a}',
  supplyRegulator: 'regulator of the supply',
  cutIn: 'pressure switch of the supply, starts',
  cutOut: 'pressure switch of the supply, stops',
  airRegulator: 'air regulator of the site',
  throttleOut: 'flow control out, {a}',
  throttleBack: 'flow control back, {a}',
  sensor: 'place of the sensor, {a}',
  guide: 'guides, apart',
  changePart: 'change part fitted, {a}',
  program: 'version of the control program',
  backup: 'backup of the control program, SHA-256',
};

const moment: Words<SettingMoment> = { 'run-off': 'run-off', shipped: 'shipped', 'as left': 'as left' };

const column: Words<SettingColumn> = {
  place: 'Where',
  what: 'What',
  format: 'Bottle',
  unit: 'Unit',
  allowed: 'Allowed',
  'run-off': 'Run-off',
  shipped: 'Shipped',
  'as left': 'As left',
  why: 'Why changed',
  by: 'Who',
  remark: 'Remark',
  id: 'id',
};

const under = (prefix: string, texts: Readonly<Record<string, string>>): Readonly<Record<string, string>> =>
  Object.fromEntries(Object.entries(texts).map(([key, text]) => [`${prefix}.${key}`, text]));

/** Words of the register of settings, wherever it is shown. */
export const settingsText: Bundle = {
  en: {
    ...under('setting.sort', sort),
    ...under('setting.moment', moment),
    ...under('settingSheet.column', column),
    'setting.line': 'the line',
    'setting.for': '{what}, {format}',
    'setting.range': '{low} to {high}',
    'setting.least': '{low} or more',
    'setting.most': '{high} or less',
    'settingSheet.name': 'Settings',
    'settingSheet.lists': 'Lists',
    'settingSheet.lead':
      'Write into the light cells, each value as it stands at the machine. A number without a unit takes the unit of its row. An empty cell is better than a guess.',
    'setting.caution':
      'A record of what was set, not a judgement that it may run so. A guard, a stop, an overload relay or a pressure is set by a competent person under the local code.',
  },
};
