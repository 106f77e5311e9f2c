import { heatUpTimeSheet } from '../../../sheets/heat/heat-up-time.ts';
import { lossPerKelvinSheet } from '../../../sheets/heat/loss-per-kelvin.ts';
import { airTemperature } from '../air/site-air.ts';
import type { Calculation } from '../calculation.ts';
import type { Known } from '../known.ts';
import type { Answer } from '../need.ts';
import { bathLoss } from './bath-load.ts';
import { coldWater } from './bath-water.ts';
import { heatersOfZone, zonePower } from './heaters-of.ts';
import type { ZoneAt } from './zones-of.ts';

/** Heat that a bath loses for each kelvin over the room, from what it loses when warm. */
const lossPerKelvin = (c: Calculation, at: ZoneAt, end: Known | undefined): Known | undefined => {
  const loss = bathLoss(c, at)?.total;
  const room = airTemperature(c);
  if ((end?.value ?? 0) - room.value < 1) return undefined;
  return c.run(lossPerKelvinSheet, { loss, bath: end, room })?.heatTransfer;
};

/** Volume that is warmed: that of the zone, else what its heater names. */
export const bathVolume = (c: Calculation, { path, zone }: ZoneAt): Known | undefined => {
  const own = c.number(`${path}/tank`, 'volume');
  if (own !== undefined) return own;
  const heater = heatersOfZone(c.book, zone.tag).find((each) => each.heater.tank !== undefined);
  return c.needed(heater === undefined ? `${path}/tank` : `${heater.path}/tank`, 'volume');
};

/** Filling with cold water and warming it up, bottles standing still. */
export const heatUp = (c: Calculation, at: ZoneAt) =>
  c.once(`heatUp ${at.path}`, (c) => {
    const end = c.needed(`${at.path}/temperature`, 'temperature');
    const loss = lossPerKelvin(c, at, end);
    const metal = c.number(`${at.path}/metal`, 'mass');
    if (metal === undefined) c.assume(`${at.path}/metal`);
    return c.run(heatUpTimeSheet, {
      volume: bathVolume(c, at),
      start: coldWater(c),
      end,
      ...(metal === undefined ? {} : { metalMass: metal }),
      ...(loss === undefined ? {} : { loss }),
      ambient: airTemperature(c),
      power: zonePower(c, at.zone.tag),
    });
  });

export const heatUpAnswer = (c: Calculation, at: ZoneAt): Answer => {
  const warmed = heatUp(c, at);
  const end = c.number(`${at.path}/temperature`, 'temperature');
  return {
    demand: c.needed('/agreement/heatUp', 'time'),
    have: warmed?.time,
    // the losses eat up all of it before
    ...(warmed !== undefined && end !== undefined && warmed.reached.value < end.value
      ? { verdict: 'short' as const }
      : {}),
  };
};
