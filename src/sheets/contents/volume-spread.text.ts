import { sampleSpreadText } from './sample-spread.text.ts';

export const volumeSpreadText = sampleSpreadText('Spread of volumes');
