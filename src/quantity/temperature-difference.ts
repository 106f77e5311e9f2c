import { type Si, si } from './kinds.ts';

type Temperature = Si<'temperature'>;
type Difference = Si<'temperatureDifference'>;

/** Warm less cold: 5 degC less 3 degC is 2 K. */
export const temperatureDifference = (warm: Temperature, cold: Temperature): Difference =>
  si('temperatureDifference', warm - cold);

/** A temperature raised by a difference; a negative one lowers it. */
export const raisedBy = (temperature: Temperature, difference: Difference): Temperature =>
  si('temperature', temperature + difference);
