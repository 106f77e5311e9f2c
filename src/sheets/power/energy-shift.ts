import { listField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { listLengths } from '../list-lengths.ts';
import { powers } from './bounds.ts';
import { always, caution } from './caution.ts';

interface EnergyShiftInputs {
  readonly hours: number;
  readonly motorPower: readonly number[];
  readonly loadFactor: readonly number[];
  readonly efficiency: readonly number[];
  readonly motorDuty: readonly number[];
  readonly heaterPower: readonly number[];
  readonly heaterDuty: readonly number[];
  readonly standby: number;
}

/**
 * Electrical energy that motors and heaters draw in a time.
 *
 * Method   E = t (sum(P LF/eta d) + sum(P_h d_h) + P_s)
 * Symbols  t   hours        scalar  s
 *          P   motorPower   [n]     W on the plate;  LF  loadFactor  [n]  ratio;  eta  efficiency  [n]
 *          d   motorDuty    [n]     share of the time;  P_h, d_h of the heaters  [m];  P_s  standby  scalar  W
 * Returns  J of the motors, J of the heaters
 * Cost     O(n + m)
 * Source   definition
 */
export const shiftEnergy = (
  i: Omit<EnergyShiftInputs, 'standby'>,
): { readonly motors: number; readonly heaters: number } => ({
  motors:
    i.hours *
    i.motorPower.reduce(
      (sum, power, k) => sum + ((power * i.loadFactor[k]!) / i.efficiency[k]!) * i.motorDuty[k]!,
      0,
    ),
  heaters: i.hours * i.heaterPower.reduce((sum, power, k) => sum + power * i.heaterDuty[k]!, 0),
});

export const energyShiftSheet = defineSheet({
  id: 'power/energy-shift',
  version: 1,
  inputs: {
    hours: numberField('time', 't', { least: 0, most: 3.2e7 }),
    motorPower: listField('power', 'P_i', { ...powers, fewest: 0 }),
    loadFactor: listField('ratio', 'LF_i', { least: 0, most: 2, fewest: 0 }),
    efficiency: listField('ratio', '\\eta_i', { least: 0.05, most: 1, fewest: 0 }),
    motorDuty: listField('ratio', 'd_i', { least: 0, most: 1, fewest: 0 }),
    heaterPower: listField('power', 'P_{h,j}', { ...powers, fewest: 0 }),
    heaterDuty: listField('ratio', 'd_{h,j}', { least: 0, most: 1, fewest: 0 }),
    standby: numberField('power', 'P_s', { ...powers, assumed: 0 }),
  },
  outputs: {
    motors: numberField('energy', 'E_m'),
    heaters: numberField('energy', 'E_h'),
    energy: numberField('energy', 'E'),
    together: numberField('power', 'P_{\\max}'),
  },
  formula: [
    'E_m = t \\sum_i \\frac{P_i\\, LF_i}{\\eta_i} d_i, \\quad E_h = t \\sum_j P_{h,j}\\, d_{h,j}, \\quad E = E_m + E_h + t P_s',
    'P_{\\max} = \\sum_i \\frac{P_i\\, LF_i}{\\eta_i} + \\sum_j P_{h,j} + P_s',
  ],
  limits: [caution, always('ENERGY_NOT_DEMAND')],
  sources: [
    { title: 'definition of energy from power, load factor and duty', place: 'derived', mark: 'computed' },
  ],
  check: ({ motorPower, loadFactor, efficiency, motorDuty, heaterPower, heaterDuty }) => [
    ...listLengths({ motorPower, loadFactor, efficiency, motorDuty }),
    ...listLengths({ heaterPower, heaterDuty }),
  ],
  compute: (i: EnergyShiftInputs) => {
    const { motors, heaters } = shiftEnergy(i);
    const drawn = shiftEnergy({
      ...i,
      hours: 1,
      motorDuty: i.motorDuty.map(() => 1),
      heaterDuty: i.heaterDuty.map(() => 1),
    });
    return {
      motors,
      heaters,
      energy: motors + heaters + i.hours * i.standby,
      together: drawn.motors + drawn.heaters + i.standby,
    };
  },
});
