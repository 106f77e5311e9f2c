export { type LeftOut, mostMediaOfMail } from './choose-media.ts';
export { makeWitnessFile, type WitnessFile, type WitnessInput } from './witness-file.ts';
