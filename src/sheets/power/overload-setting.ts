import { choiceField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { someCurrents } from './bounds.ts';
import { caution } from './caution.ts';
import { necMotorArticle, switchgearAppendix } from './sources.ts';

export type OverloadRule = 'us' | 'iec';
export type RelayPlace = 'in-line' | 'inside-delta';
export type MotorMark = 'service-factor-1.15-or-rise-40' | 'neither';

/** Share of the line current inside a delta, 1/sqrt(3); printed as 0.58. */
const insideDelta = 1 / Math.sqrt(3);

/**
 * Highest setting of an overload relay.
 *
 * Method   US: k times the nameplate current, k = 1.25 where the plate shows a service factor of at least 1.15
 *          or a rise of at most 40 degC, else 1.15; up to 1.40 or 1.30 where the motor won't start or carry.
 *          IEC: the nameplate current. Inside a delta times 1/sqrt(3).
 * Symbols  current  scalar  A of the nameplate
 * Returns  A: what flows at rated load through the relay, highest setting, ceiling; none is rounded up
 * Cost     O(1)
 * Source   NEC 430.32(A)(1) and (C); IEC: handbook of low-voltage switchgear
 */
export const overloadSetting = (
  current: number,
  rule: OverloadRule,
  mark: MotorMark,
  place: RelayPlace,
): { readonly rated: number; readonly highest: number; readonly ceiling: number } => {
  const rated = place === 'inside-delta' ? current * insideDelta : current;
  if (rule === 'iec') return { rated, highest: rated, ceiling: rated };
  const marked = mark !== 'neither';
  return { rated, highest: rated * (marked ? 1.25 : 1.15), ceiling: rated * (marked ? 1.4 : 1.3) };
};

interface OverloadSettingInputs {
  readonly current: number;
  readonly rule: OverloadRule;
  readonly mark: MotorMark;
  readonly place: RelayPlace;
}

export const overloadSettingSheet = defineSheet({
  id: 'power/overload-setting',
  version: 1,
  inputs: {
    current: numberField('current', 'I_N', someCurrents),
    rule: choiceField<OverloadRule>('\\text{rule}', ['us', 'iec']),
    mark: choiceField<MotorMark>('\\text{mark}', ['service-factor-1.15-or-rise-40', 'neither'], 'neither'),
    place: choiceField<RelayPlace>('\\text{place}', ['in-line', 'inside-delta'], 'in-line'),
  },
  outputs: {
    rated: numberField('current', 'I_r'),
    highest: numberField('current', 'I_{\\max}'),
    ceiling: numberField('current', 'I_{\\text{ceiling}}'),
  },
  formula: [
    'I_r = I_N \\text{ in line}, \\quad I_r = I_N / \\sqrt{3} \\text{ inside a delta}',
    'I_{\\max} = k\\, I_r, \\quad k = 1.25 \\text{ or } 1.15 \\ (\\text{US}), \\quad k = 1 \\ (\\text{IEC})',
  ],
  limits: [
    caution,
    { code: 'OVERLOAD_US', broken: ({ rule }) => rule === 'us' },
    { code: 'OVERLOAD_IEC', broken: ({ rule }) => rule === 'iec' },
  ],
  sources: [necMotorArticle, switchgearAppendix],
  compute: (i: OverloadSettingInputs) => overloadSetting(i.current, i.rule, i.mark, i.place),
});
