import { atmosphericPressureSheet } from '../../../sheets/water/atmospheric-pressure.ts';
import type { Calculation } from '../calculation.ts';
import type { Known } from '../known.ts';

/** Where nothing is said of a room: what most are kept at, common practice. */
const usualRoom = 293.15;

/** Atmosphere on the floor, by the barometer or by its altitude. */
export const atmosphereHere = (c: Calculation): Known | undefined =>
  c.once('atmosphere', (c) => {
    const read = c.number(`${c.floorPath}/room/pressure`, 'absolutePressure');
    if (read !== undefined) return read;
    const altitude = c.numberOr(`${c.floorPath}/room/altitude`, 'length', 0);
    return c.run(atmosphericPressureSheet, { altitude })?.pressure;
  });

/** Temperature of the air in pipes and cylinders: that of the room. */
export const airTemperature = (c: Calculation): Known =>
  c.numberOr(`${c.floorPath}/room/ambient`, 'temperature', usualRoom);
