import { humidityRatio } from '../air/humid-air.ts';
import { dewPointOverWater, saturationOverWater } from '../air/saturation.ts';
import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { atmospheres, humidities } from './bounds.ts';
import { always } from './caution.ts';

const roomAir = { least: 273.16, most: 333.15 } as const;
/** Gas constants of dry air and of water vapour, J/(kg K). */
const dryAir = 287.055;
const vapour = 461.52;

/**
 * Dry air that carries a moisture away.
 *
 * Method   m = W/(w_r - w_s)
 * Symbols  W    moisture  scalar  kg/s
 *          w_r  room      scalar  kg/kg  humidity ratio to be held
 *          w_s  supply    scalar  kg/kg  < w_r
 * Returns  kg/s
 * Assumes  the room's air is mixed; nothing condenses in it
 * Cost     O(1)
 * Source   mass balance of the water
 */
export const dryingAir = (moisture: number, room: number, supply: number): number =>
  moisture / (room - supply);

interface RoomMoistureInputs {
  readonly moisture: number;
  readonly room: number;
  readonly roomHumidity: number;
  readonly supply: number;
  readonly supplyHumidity: number;
  readonly atmosphere: number;
}

const ratios = (i: RoomMoistureInputs) => ({
  room: humidityRatio(i.roomHumidity * saturationOverWater(i.room), i.atmosphere),
  supply: humidityRatio(i.supplyHumidity * saturationOverWater(i.supply), i.atmosphere),
});

export const roomMoistureSheet = defineSheet({
  id: 'heat/room-moisture',
  version: 1,
  inputs: {
    moisture: numberField('massFlow', 'W', { least: 0, most: 10 }),
    room: numberField('temperature', 'T_r', roomAir),
    roomHumidity: numberField('relativeHumidity', '\\varphi_r', { ...humidities, assumed: 0.6 }),
    supply: numberField('temperature', 'T_s', { least: 243.15, most: 333.15 }),
    supplyHumidity: numberField('relativeHumidity', '\\varphi_s', humidities),
    atmosphere: numberField('absolutePressure', 'p', atmospheres),
  },
  outputs: {
    dryAir: numberField('massFlow', '\\dot m'),
    airFlow: numberField('actualAirFlow', 'q'),
    roomRatio: numberField('humidityRatio', 'w_r'),
    supplyRatio: numberField('humidityRatio', 'w_s'),
    dewPoint: numberField('temperature', 'T_d'),
  },
  formula: [
    'w = \\frac{0.622\\, \\varphi e_s(T)}{p - \\varphi e_s(T)}, \\quad \\dot m = \\frac{W}{w_r - w_s}, \\quad T_d = e_s^{-1}(\\varphi_r e_s(T_r))',
    'q = \\dot m \\frac{(R_a + w_s R_v) T_s}{p}',
  ],
  limits: [
    always('ROOM_MIXED'),
    { code: 'ROOM_SUMMER', broken: (_, { roomRatio, supplyRatio }) => roomRatio - supplyRatio < 0.002 },
    { code: 'ROOM_DAMP', broken: ({ roomHumidity }) => roomHumidity > 0.7 },
  ],
  sources: [
    { title: 'ASHRAE Handbook, Fundamentals', edition: '2017', place: 'chapter 1', mark: 'read' },
    { title: 'mass balance of the water', place: 'derived', mark: 'computed' },
  ],
  check: (i) => {
    const { room, supply } = ratios(i);
    return room - supply > 1e-6
      ? []
      : [{ code: 'ROOM_AIR_NO_DRIER', path: 'supplyHumidity', given: i.supplyHumidity }];
  },
  compute: (i: RoomMoistureInputs) => {
    const { room, supply } = ratios(i);
    const air = dryingAir(i.moisture, room, supply);
    return {
      dryAir: air,
      airFlow: (air * (dryAir + supply * vapour) * i.supply) / i.atmosphere,
      roomRatio: room,
      supplyRatio: supply,
      dewPoint: dewPointOverWater(i.roomHumidity * saturationOverWater(i.room)),
    };
  },
});
