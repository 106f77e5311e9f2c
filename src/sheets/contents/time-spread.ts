import { sampleSpreadSheet } from './sample-spread.ts';

/** Mean, spread and reach of measured times. */
export const timeSpreadSheet = sampleSpreadSheet('contents/time-spread', 'time');
