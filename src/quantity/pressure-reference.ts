import { type Si, si } from './kinds.ts';

type Gauge = Si<'gaugePressure'>;
type Absolute = Si<'absolutePressure'>;
type Difference = Si<'pressureDifference'>;

/** Absolute pressure of a gauge reading: p = pg + pa, pa the local atmosphere, which is not always 1.013 bar. */
export const gaugeToAbsolute = (gauge: Gauge, ambient: Absolute): Absolute =>
  si('absolutePressure', gauge + ambient);

/** Gauge reading of an absolute pressure at the local atmosphere. */
export const absoluteToGauge = (absolute: Absolute, ambient: Absolute): Gauge =>
  si('gaugePressure', absolute - ambient);

/** High less low, of two pressures of one reference. */
export const pressureDifference = <P extends Gauge | Absolute>(high: P, low: NoInfer<P>): Difference =>
  si('pressureDifference', high - low);
