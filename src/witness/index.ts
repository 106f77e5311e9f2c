export { type LeftOut, mostMediaOfMail } from './choose-media.ts';
export { makeWitnessFile, shownDigest, type WitnessFile, type WitnessInput } from './witness-file.ts';
