import { choiceField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { atmosphericPressure } from '../water/atmospheric-pressure.ts';
import { actualFlows, humiditiesFromDry, normalFlows } from './bounds.ts';
import { dryDensity } from './dry-air.ts';
import { type Counting, countings, referenceDryDensity } from './reference-states.ts';
import { saturationPressure } from './saturation.ts';
import { ashraeAtmosphere, freeAirArticle, idealGas } from './sources.ts';

/**
 * Volume that a compressor must take in to deliver a mass of dry air.
 *
 * Method   q = m R T/(p_a - phi e_s(T))
 * Symbols  m    dryMassFlow       scalar  kg/s
 *          T    temperature       scalar  K            of the intake
 *          phi  relativeHumidity  scalar  1            of the intake
 *          p_a  atmosphere        scalar  Pa absolute  local
 * Returns  m3/s at the state of the intake: a piston or screw takes in nearly the same volume everywhere, so it is
 *          compared with the free air delivery of the catalogue as a volume
 * Cost     O(1)
 * Source   ideal gas law; free air delivery as ISO 1217 states it (100 kPa, 20 degC, dry; read second hand)
 */
export const intakeVolumeFlow = (
  dryMassFlow: number,
  temperature: number,
  relativeHumidity: number,
  atmosphere: number,
): number =>
  dryMassFlow / dryDensity(atmosphere, relativeHumidity * saturationPressure(temperature), temperature);

interface CompressorCapacityInputs {
  readonly demand: number;
  readonly counting: Counting;
  readonly altitude: number;
  readonly temperature: number;
  readonly relativeHumidity: number;
  readonly delivery: number;
  readonly leak: number;
  readonly growth: number;
  readonly purge: number;
  readonly duty: number;
}

export const compressorCapacitySheet = defineSheet({
  id: 'air/compressor-capacity',
  version: 1,
  inputs: {
    demand: numberField('normalAirFlow', 'q_n', normalFlows),
    counting: choiceField<Counting>('\\text{humidity of } q_n', countings, 'humidity left out'),
    altitude: numberField('length', 'z', { least: -500, most: 5000 }),
    temperature: numberField('temperature', 'T_1', { least: 233.15, most: 333.15 }),
    relativeHumidity: numberField('relativeHumidity', '\\varphi', humiditiesFromDry),
    delivery: numberField('actualAirFlow', 'q_c', { ...actualFlows, least: 1e-7 }),
    // habits, memory: 0.10 leak, 0.10 to 0.25 growth, 0.15 to 0.20 purge of a heatless desiccant dryer, 0.7 piston
    leak: numberField('ratio', 'k_l', { least: 0, most: 5, assumed: 0.1 }),
    growth: numberField('ratio', 'k_g', { least: 0, most: 5, assumed: 0.1 }),
    purge: numberField('ratio', 'k_p', { least: 0, most: 0.9, assumed: 0 }),
    duty: numberField('ratio', 'd', { least: 0.05, most: 1, assumed: 0.7 }),
  },
  outputs: {
    atmosphere: numberField('absolutePressure', 'p_a'),
    dryMassFlow: numberField('massFlow', '\\dot m'),
    freeAirNeeded: numberField('actualAirFlow', 'q_1'),
    installedNeeded: numberField('actualAirFlow', 'q_i'),
    capacity: numberField('normalAirFlow', 'q_{n,c}'),
    loadShare: numberField('ratio', 'x'),
  },
  formula: [
    'p_a = 101325 \\left( 1 - 2.25577 \\times 10^{-5} z \\right)^{5.25588}',
    '\\dot m = \\rho_n q_n, \\quad q_1 = \\frac{\\dot m R T_1}{p_a - \\varphi e_s(T_1)}',
    'q_i = q_1 \\frac{(1 + k_l)(1 + k_g)}{(1 - k_p)\\, d}',
    'x = \\frac{q_1 (1 + k_l)}{(1 - k_p)\\, q_c}, \\quad q_{n,c} = q_n \\frac{q_c}{q_1}',
  ],
  limits: [
    { code: 'COMPRESSOR_OVERLOADED', broken: (_, { loadShare }) => loadShare > 1 },
    {
      code: 'COMPRESSOR_NO_RESERVE',
      broken: ({ delivery }, { installedNeeded, loadShare }) => loadShare <= 1 && delivery < installedNeeded,
    },
    { code: 'COMPRESSOR_ALTITUDE', broken: ({ altitude }) => altitude > 1000 },
    { code: 'COMPRESSOR_ALLOWANCES', broken: () => true },
    { code: 'AIR_REFERENCE', broken: () => true },
    { code: 'AIR_REFERENCE_HUMID', broken: ({ counting }) => counting === 'humidity counted' },
    { code: 'CAUTION_COMPRESSED_AIR', broken: () => true },
  ],
  sources: [idealGas, freeAirArticle, ashraeAtmosphere],
  compute: (i: CompressorCapacityInputs) => {
    const atmosphere = atmosphericPressure(i.altitude);
    const density = referenceDryDensity('ANR', i.counting);
    // volume at the intake of a cubic metre of normal air; finite where nothing is asked
    const volume = intakeVolumeFlow(density, i.temperature, i.relativeHumidity, atmosphere);
    const freeAirNeeded = i.demand * volume;
    const needed = (freeAirNeeded * (1 + i.leak)) / (1 - i.purge);
    return {
      atmosphere,
      dryMassFlow: i.demand * density,
      freeAirNeeded,
      installedNeeded: (needed * (1 + i.growth)) / i.duty,
      capacity: i.delivery / volume,
      loadShare: needed / i.delivery,
    };
  },
});
