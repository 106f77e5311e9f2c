import type { CheckSort } from './check.ts';

const minute = 60;

/**
 * s of work that a check takes where the book says none: to set up, read as often as the check wants, write down and sign.
 * Common practice of small lines; none of it is published, so each is shown as assumed.
 */
const usual: Readonly<Record<CheckSort, number>> = {
  crateReceipt: 20 * minute,
  crateOpened: 45 * minute,
  placed: 60 * minute,
  bond: 15 * minute,
  insulation: 20 * minute,
  overload: 5 * minute,
  voltage: 15 * minute,
  rotation: 10 * minute,
  current: 10 * minute,
  states: 5 * minute,
  regulator: 10 * minute,
  flush: 30 * minute,
  counter: 5 * minute,
  pulses: 20 * minute,
  utility: 20 * minute,
  effect: 5 * minute,
  noEffects: 5 * minute,
  release: 5 * minute,
  reset: 5 * minute,
  powerLoss: 30 * minute,
  airLoss: 30 * minute,
  stopTime: 60 * minute,
  interlock: 10 * minute,
  holdRule: 20 * minute,
  capChute: 20 * minute,
  washTemperature: 60 * minute,
  washConcentration: 45 * minute,
  washPressure: 20 * minute,
  washContact: 30 * minute,
  carryOver: 30 * minute,
  rinseResidue: 30 * minute,
  drainAcidity: 15 * minute,
  fillLevel: 30 * minute,
  contents: 120 * minute,
  perBottle: 30 * minute,
  closing: 30 * minute,
  leak: 30 * minute,
  applicationTorque: 20 * minute,
  removalTorque: 45 * minute,
  glassBreakage: 45 * minute,
  lineClearance: 30 * minute,
  count: 30 * minute,
  cycleTime: 20 * minute,
  rate: 60 * minute,
  efficiency: 5 * minute,
  noise: 30 * minute,
  program: 30 * minute,
  documents: 60 * minute,
  spares: 45 * minute,
  asBuilt: 60 * minute,
  training: 240 * minute,
  warranty: 15 * minute,
  crateClosed: 30 * minute,
  own: 30 * minute,
};

/** s of work that a check usually takes. */
export const usualDuration = (sort: CheckSort): number => usual[sort];

/** s until a laboratory, or a part on order, answers where nobody said a day. Common practice. */
export const usualLate = { laboratory: 5 * 86_400, supplier: 28 * 86_400 } as const;
