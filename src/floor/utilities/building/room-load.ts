import { roomHeatSheet } from '../../../sheets/heat/room-heat.ts';
import { roomMoistureSheet } from '../../../sheets/heat/room-moisture.ts';
import { vapourTogetherSheet } from '../../../sheets/heat/vapour-together.ts';
import { motorsInputSheet } from '../../../sheets/power/motors-input.ts';
import { airTemperature, atmosphereHere } from '../air/site-air.ts';
import type { Calculation } from '../calculation.ts';
import { greatestOf } from '../greatest-of.ts';
import { bathLoss } from '../heat/bath-load.ts';
import { heatOfAll } from '../heat/heat-of-all.ts';
import { zonesOf } from '../heat/zones-of.ts';
import type { Known } from '../known.ts';

/** Motors of small machines, where nobody gave it; memory. */
const usualEfficiency = 0.8;

/** What the motors take from the supply: all of it ends as heat in the room. */
const motorInput = (c: Calculation): Known | undefined => {
  const paths = (c.book.line?.drives ?? []).map((_, i) => `/line/drives/${i}`);
  if (paths.length === 0) return { value: 0, from: { path: '/line/drives' } };
  return c.run(motorsInputSheet, {
    shaftPowers: paths.map(
      (path) => c.number(`${path}/shaftPower`, 'power') ?? c.needed(`${path}/power`, 'power'),
    ),
    efficiencies: paths.map((path) => c.numberOr(`${path}/efficiency`, 'ratio', usualEfficiency)),
    duties: paths.map((path) => c.numberOr(`${path}/duty`, 'ratio', 1)),
  })?.power;
};

const losses = (c: Calculation) =>
  zonesOf(c.book)
    .filter(({ zone }) => zone.surface !== undefined || zone.walls !== undefined)
    .flatMap((at) => {
      const loss = bathLoss(c, at);
      return loss === undefined ? [] : [loss];
    });

/** Dry heat that the line gives to the room, with the air that carries it away. */
export const roomHeat = (c: Calculation) =>
  c.once('roomHeat', (c) => {
    const dry = losses(c).flatMap(({ radiation, wallLoss }) => [radiation, wallLoss]);
    const bath = dry.length === 0 ? undefined : heatOfAll(c, dry);
    return c.run(roomHeatSheet, {
      motorInput: motorInput(c),
      ...(bath === undefined ? {} : { bath }),
    });
  });

/** Water that open baths give to the air of the room. */
export const roomMoisture = (c: Calculation): Known | undefined =>
  c.once('roomMoisture', (c) => {
    const evaporated = losses(c).map((loss) => loss.evaporated);
    if (evaporated.length === 0) return undefined;
    return evaporated.length === 1 ? evaporated[0] : c.run(vapourTogetherSheet, { flows: evaporated })?.flow;
  });

/** Air that keeps the room as dry as the book says, or at 60 %, from outside air at its most humid. */
const dryingAir = (c: Calculation): Known | undefined => {
  const moisture = roomMoisture(c);
  const humidity = c.number(`${c.floorPath}/room/relativeHumidity`, 'relativeHumidity');
  if (moisture === undefined) return undefined;
  return c.run(roomMoistureSheet, {
    moisture,
    room: airTemperature(c),
    ...(humidity === undefined ? {} : { roomHumidity: humidity }),
    supply: c.needed(`${c.floorPath}/room/outside/temperature`, 'temperature'),
    supplyHumidity: c.needed(`${c.floorPath}/room/outside/relativeHumidity`, 'relativeHumidity'),
    atmosphere: atmosphereHere(c),
  })?.airFlow;
};

/** Air that carries away both: the greater of what the heat and what the moisture asks. */
export const ventilationAir = (c: Calculation): Known | undefined => {
  const forHeat = roomHeat(c)?.airFlow;
  if (roomMoisture(c) === undefined) return forHeat;
  const forMoisture = dryingAir(c);
  return forHeat === undefined || forMoisture === undefined
    ? undefined
    : greatestOf(c, [forHeat, forMoisture]);
};
