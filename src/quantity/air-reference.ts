import { atmosphere, bar, psi } from './constants.ts';
import { asPair, exact, product, quotient, type Ratio } from './ratio.ts';

/**
 * A state at which a free-air volume is stated. `N` and `s` before a unit do not say which, so every
 * normal-air unit carries one of these in its name.
 */
export interface AirReference {
  readonly id: 'ANR' | 'DIN 1343' | 'FAD' | 'CAGI' | '15 degC' | '14.7 psia 68 degF' | '60 degF';
  /** Pa absolute. */
  readonly pressure: number;
  /** K */
  readonly temperature: number;
  /** Share of saturation, for those who book dry air; see `keptRatio`. */
  readonly relativeHumidity: number;
  /** Source of the state. */
  readonly source: string;
  /** Normal volumes are kept at 100 kPa, 20 degC: a volume at this state times this is the kept volume. */
  readonly keptRatio: Ratio;
}

const number = (ratio: Ratio): number => {
  const [times, over] = asPair(ratio);
  return times / over;
};

const keptPressure = bar;
const keptTemperature = exact('293.15');
const fahrenheit = (degrees: string): Ratio => quotient(product(exact(degrees), exact('5')), exact('9'));

const reference = (
  id: AirReference['id'],
  pressure: Ratio,
  temperature: Ratio,
  relativeHumidity: number,
  source: string,
): AirReference => ({
  id,
  pressure: number(pressure),
  temperature: number(temperature),
  relativeHumidity,
  source,
  // Ideal gas, humidity left out of the ratio, as pneumatics does: ANR is counted as 1 bar, 20 degC (1.5 % from
  // dry air). Who sizes a compressor in a wet place books dry air with `relativeHumidity`.
  keptRatio: quotient(product(pressure, keptTemperature), keptPressure, temperature),
});

/** Reference states of normal air. The first is the one in which normal air volumes and flows are kept. */
export const airReferences: readonly AirReference[] = [
  reference('ANR', keptPressure, keptTemperature, 0.65, 'ISO 8778:1990, memory'),
  reference('FAD', keptPressure, keptTemperature, 0, 'ISO 1217, memory'),
  reference('DIN 1343', atmosphere, exact('273.15'), 0, 'DIN 1343, memory'),
  reference('CAGI', product(exact('14.5'), psi), fahrenheit('527.67'), 0, 'CAGI handbook, memory'),
  reference('15 degC', atmosphere, exact('288.15'), 0, 'ISO 2533 and ISO 13443, memory'),
  reference(
    '14.7 psia 68 degF',
    product(exact('14.7'), psi),
    fahrenheit('527.67'),
    0.36,
    'older US pneumatics, memory',
  ),
  reference('60 degF', product(exact('14.696'), psi), fahrenheit('519.67'), 0, 'US gas trade, memory'),
];
