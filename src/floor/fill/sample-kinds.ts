import type { BottleSample } from '../../fill/bottle-sample.ts';
import type { Kind } from '../../quantity/kinds.ts';

/** What each measure of one of the customer's bottles is. */
export const sampleKinds = {
  mass: 'mass',
  brimfulMass: 'mass',
  levelMass: 'mass',
  temperature: 'temperature',
  height: 'length',
  bore: 'length',
  finish: 'length',
  body: 'length',
  lean: 'length',
  closureMass: 'mass',
  closureHeight: 'length',
} as const satisfies Readonly<Record<keyof BottleSample, Kind>>;
