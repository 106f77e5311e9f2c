import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { atmospheres, steamPressures } from './bounds.ts';
import { always } from './caution.ts';
import { boilingTemperature, steamEnthalpy, steamVolume, waterEnthalpy } from './if97.ts';
import { if97 } from './sources.ts';

interface SaturatedSteamInputs {
  readonly pressure: number;
  readonly atmosphere: number;
}

export const saturatedSteamSheet = defineSheet({
  id: 'heat/saturated-steam',
  version: 1,
  inputs: {
    pressure: numberField('gaugePressure', 'p_e', steamPressures),
    atmosphere: numberField('absolutePressure', 'p_a', atmospheres),
  },
  outputs: {
    temperature: numberField('temperature', 'T_s'),
    liquidHeat: numberField('specificEnergy', 'h_f'),
    latentHeat: numberField('specificEnergy', 'h_{fg}'),
    vapourHeat: numberField('specificEnergy', 'h_g'),
    vapourDensity: numberField('density', '\\rho_g'),
  },
  formula: ['p = p_e + p_a, \\quad T_s = T_s(p), \\quad h_{fg} = h_g(p, T_s) - h_f(p, T_s)'],
  limits: [always('CAUTION_STEAM')],
  sources: [if97],
  compute: ({ pressure, atmosphere }: SaturatedSteamInputs) => {
    const p = pressure + atmosphere;
    const temperature = boilingTemperature(p);
    const liquidHeat = waterEnthalpy(p, temperature);
    const vapourHeat = steamEnthalpy(p, temperature);
    return {
      temperature,
      liquidHeat,
      latentHeat: vapourHeat - liquidHeat,
      vapourHeat,
      vapourDensity: 1 / steamVolume(p, temperature),
    };
  },
});
