import {
  referenceWeightDensity,
  usualAirDensity,
  volumeByWeighing,
} from '../../sheets/contents/volume-by-weighing.ts';
import { weighingContributions } from '../../sheets/contents/weighing-uncertainty.ts';
import type { TypedNumber } from './typed-number.ts';

/** A mass or a temperature that was not read but taken from elsewhere. */
export interface Balance {
  readonly gross: TypedNumber;
  /** The empty bottle, kg, with its standard deviation where it is not its own. */
  readonly tare: { readonly value: number; readonly deviation?: number };
  /** Division of the balance, kg. */
  readonly division: number;
  /** K */
  readonly temperature: number;
  /** Half width of it, K. */
  readonly temperatureWidth: number;
  readonly densityAt: (temperature: number) => number | undefined;
}

export interface BottleVolume {
  /** m3 at the temperature of the bottle. */
  readonly volume: number;
  /** Standard uncertainty, m3. */
  readonly deviation: number;
  /** The part of it that the calibration of the balance has in all bottles alike, m3. */
  readonly calibration: number;
  /** kg */
  readonly net: number;
  /** kg/m3 */
  readonly density: number;
}

/** Air in a room may be as much thinner or denser, kg/m3: a storey of altitude, a warm day. */
const airWidth = 0.035;
/** A balance in use is trusted to one division either way. */
const calibrationShare = 1 / Math.sqrt(3);

/** What a bottle holds by its weighing, buoyancy and temperature counted; undefined where the density is not known. */
export const bottleVolume = ({
  gross,
  tare,
  division,
  temperature,
  temperatureWidth,
  densityAt,
}: Balance): BottleVolume | undefined => {
  const density = densityAt(temperature);
  const warmer = densityAt(temperature + 1) ?? densityAt(temperature - 1);
  if (density === undefined) return undefined;
  const net = gross.value - tare.value;
  const weighed = {
    mass: net,
    density,
    expansion: warmer === undefined ? 0 : Math.abs(warmer - density) / density,
    airDensity: usualAirDensity,
    weightDensity: referenceWeightDensity,
  };
  const stated = gross.deviation !== undefined;
  const parts = weighingContributions(weighed, {
    // whoever says how far a weighing may be off has counted the balance in
    calibration: stated ? 0 : calibrationShare * division,
    division: stated ? 0 : division,
    repeatability: Math.hypot(gross.deviation ?? 0, tare.deviation ?? 0),
    loss: 0,
    temperature: temperatureWidth,
    air: airWidth,
    density: 0,
  });
  return {
    volume: volumeByWeighing(net, density, usualAirDensity, referenceWeightDensity),
    deviation: Math.hypot(...Object.values(parts)),
    calibration: parts.calibration,
    net,
    density,
  };
};
