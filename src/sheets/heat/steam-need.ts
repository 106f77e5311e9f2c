import { choiceField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { atmospheres, heatFlows, steamPressures, waterTemperatures } from './bounds.ts';
import { always } from './caution.ts';
import { boilingTemperature, steamEnthalpy, waterEnthalpy, waterVolume } from './if97.ts';
import { heatBalance, if97 } from './sources.ts';

export type SteamUse = 'indirect' | 'direct';

/**
 * Heat that a kilogram of saturated steam leaves in a bath.
 *
 * Method   indirect: h_fg(p), the condensate leaves boiling;  direct: h_g(p) - h_f(T)
 * Symbols  p  pressure  scalar  Pa absolute
 *          T  bath      scalar  K, below the boiling point at p
 * Returns  J/kg
 * Assumes  dry steam; a wet one gives less
 * Cost     O(1)
 * Source   IAPWS R7-97(2012)
 */
export const steamHeat = (pressure: number, bath: number, use: SteamUse): number => {
  const boiling = boilingTemperature(pressure);
  const given = steamEnthalpy(pressure, boiling);
  return given - (use === 'direct' ? waterEnthalpy(101_325, bath) : waterEnthalpy(pressure, boiling));
};

interface SteamNeedInputs {
  readonly heat: number;
  readonly pressure: number;
  readonly atmosphere: number;
  readonly use: SteamUse;
  readonly bath: number;
}

export const steamNeedSheet = defineSheet({
  id: 'heat/steam-need',
  version: 1,
  inputs: {
    heat: numberField('heatFlow', 'P', heatFlows),
    pressure: numberField('gaugePressure', 'p_e', steamPressures),
    atmosphere: numberField('absolutePressure', 'p_a', atmospheres),
    use: choiceField<SteamUse>('\\text{use}', ['indirect', 'direct']),
    bath: numberField('temperature', 'T', waterTemperatures),
  },
  outputs: {
    steam: numberField('massFlow', '\\dot m'),
    heatGiven: numberField('specificEnergy', 'q'),
    steamTemperature: numberField('temperature', 'T_s'),
    waterAdded: numberField('volumeFlow', 'Q'),
  },
  formula: [
    'q = h_{fg}(p) \\text{ (indirect)}, \\quad q = h_g(p) - h_f(T) \\text{ (direct)}, \\quad p = p_e + p_a',
    '\\dot m = \\frac{P}{q}, \\quad Q = \\frac{\\dot m}{\\rho(T)} \\text{ (direct, else 0)}',
  ],
  limits: [
    always('CAUTION_STEAM'),
    { code: 'STEAM_DIRECT', broken: ({ use }) => use === 'direct' },
    {
      code: 'STEAM_LITTLE_HOTTER',
      broken: ({ bath, use }, { steamTemperature }) => use === 'indirect' && steamTemperature - bath < 20,
    },
    always('STEAM_WET'),
  ],
  sources: [heatBalance, if97],
  check: ({ pressure, atmosphere, bath }) => {
    const boiling = boilingTemperature(pressure + atmosphere);
    return bath < boiling
      ? []
      : [{ code: 'STEAM_NOT_HOTTER', path: 'bath', given: bath, allowed: `< ${boiling}` }];
  },
  compute: (i: SteamNeedInputs) => {
    const pressure = i.pressure + i.atmosphere;
    const heatGiven = steamHeat(pressure, i.bath, i.use);
    const steam = i.heat / heatGiven;
    return {
      steam,
      heatGiven,
      steamTemperature: boilingTemperature(pressure),
      waterAdded: i.use === 'direct' ? steam * waterVolume(101_325, i.bath) : 0,
    };
  },
});
