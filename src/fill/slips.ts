export type { Entered, EnteredBottle, SlipGround } from './slips/entered-bottle.ts';
export { likelySlips, slipsAmong } from './slips/likely-slips.ts';
export type { Slip, SlipCode, SlipField } from './slips/slip.ts';
