import { choiceField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { currents, faultCurrents, lengths, powerFactors, resistancesPerLength, voltages } from './bounds.ts';
import { always, caution } from './caution.ts';
import { effectOfVoltage } from './sources.ts';
import { lineDrop } from './voltage-drop.ts';

export type StartMethod = 'direct' | 'star-delta' | 'autotransformer' | 'soft-starter';

/**
 * Share of the direct starting current and torque that a way of starting leaves on the line.
 *
 * Method   direct 1, 1; star-delta 1/3, 1/3; autotransformer of tap a: a^2, a^2; soft starter at voltage v: v, v^2
 * Symbols  ratio  scalar  tap or voltage, 0 to 1; used by the last two only
 * Returns  share of the line current, share of the torque
 * Cost     O(1)
 * Source   star-delta: public text, read; autotransformer and soft starter: memory, derived from torque ~ U^2
 */
export const startShares = (
  method: StartMethod,
  ratio: number,
): { readonly current: number; readonly torque: number } => {
  switch (method) {
    case 'direct':
      return { current: 1, torque: 1 };
    case 'star-delta':
      return { current: 1 / 3, torque: 1 / 3 };
    case 'autotransformer':
      return { current: ratio ** 2, torque: ratio ** 2 };
    case 'soft-starter':
      return { current: ratio, torque: ratio ** 2 };
  }
};

interface MotorStartInputs {
  readonly lockedRotor: number;
  readonly method: StartMethod;
  readonly ratio: number;
  readonly voltage: number;
  readonly length: number;
  readonly resistance: number;
  readonly reactance: number;
  readonly powerFactor: number;
  readonly faultCurrent: number;
}

export const motorStartSheet = defineSheet({
  id: 'power/motor-start',
  version: 1,
  inputs: {
    lockedRotor: numberField('current', 'I_{LR}', currents),
    method: choiceField<StartMethod>('\\text{method}', [
      'direct',
      'star-delta',
      'autotransformer',
      'soft-starter',
    ]),
    ratio: numberField('ratio', 'a', { least: 0.3, most: 1, assumed: 1 }),
    voltage: numberField('voltage', 'U', voltages),
    length: numberField('length', 'L', lengths),
    resistance: numberField('resistancePerLength', 'r', resistancesPerLength),
    reactance: numberField('resistancePerLength', 'x', resistancesPerLength),
    powerFactor: numberField('ratio', '\\cos\\varphi_s', { ...powerFactors, assumed: 0.3 }),
    faultCurrent: numberField('current', 'I_k', faultCurrents),
  },
  outputs: {
    current: numberField('current', 'I_s'),
    torque: numberField('ratio', 'T_s / T_{s,N}'),
    drop: numberField('voltage', '\\Delta U'),
    dropShare: numberField('ratio', '\\Delta U / U'),
    dip: numberField('ratio', 'd'),
  },
  formula: [
    'I_s = c\\, I_{LR}, \\quad c = 1,\\ \\tfrac{1}{3},\\ a^2 \\text{ or } a',
    '\\Delta U = \\sqrt{3}\\, I_s L (r \\cos\\varphi_s + x \\sin\\varphi_s), \\quad d = \\frac{I_s}{I_s + I_k}',
    '\\frac{T_s}{T_{s,N}} = t \\left( 1 - \\frac{\\Delta U}{U} \\right)^2, \\quad t = 1,\\ \\tfrac{1}{3},\\ a^2',
  ],
  limits: [
    caution,
    { code: 'START_WEAK', broken: (_, { torque }) => torque < 0.5 },
    { code: 'START_DROP', broken: (_, { dropShare }) => dropShare > 0.1 },
    {
      code: 'START_SHARES_FROM_MEMORY',
      broken: ({ method }) => method === 'autotransformer' || method === 'soft-starter',
    },
    always('START_POWER_FACTOR'),
    always('START_ASK_UTILITY'),
  ],
  sources: [effectOfVoltage],
  check: (i) => {
    const drop = startDrop(i);
    return drop >= i.voltage
      ? [{ code: 'DROP_COLLAPSE', path: 'lockedRotor', given: i.lockedRotor, allowed: `< ${i.voltage} V` }]
      : [];
  },
  compute: (i: MotorStartInputs) => {
    const { current: share, torque } = startShares(i.method, i.ratio);
    const current = share * i.lockedRotor;
    const drop = startDrop(i);
    return {
      current,
      torque: torque * (1 - drop / i.voltage) ** 2,
      drop,
      dropShare: drop / i.voltage,
      dip: current / (current + i.faultCurrent),
    };
  },
});

const startDrop = (i: MotorStartInputs): number =>
  lineDrop(
    startShares(i.method, i.ratio).current * i.lockedRotor,
    i.length,
    i.resistance,
    i.reactance,
    i.powerFactor,
    'three-phase',
  );
