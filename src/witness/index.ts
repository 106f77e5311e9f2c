export { type LeftOut, mediaWanted, mostMediaOfMail, type SaidOfMedia } from './choose-media.ts';
export { makeWitnessFile, shownDigest, type WitnessFile, type WitnessInput } from './witness-file.ts';
