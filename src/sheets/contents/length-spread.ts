import { sampleSpreadSheet } from './sample-spread.ts';

/** Mean, spread and reach of measured lengths. */
export const lengthSpreadSheet = sampleSpreadSheet('contents/length-spread', 'length');
