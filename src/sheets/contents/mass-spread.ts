import { sampleSpreadSheet } from './sample-spread.ts';

/** Mean, spread and reach of measured masses. */
export const massSpreadSheet = sampleSpreadSheet('contents/mass-spread', 'mass');
