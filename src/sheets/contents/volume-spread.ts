import { sampleSpreadSheet } from './sample-spread.ts';

/** Mean, spread and reach of measured volumes. */
export const volumeSpreadSheet = sampleSpreadSheet('contents/volume-spread', 'volume');
