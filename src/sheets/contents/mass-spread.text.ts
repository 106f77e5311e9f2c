import { sampleSpreadText } from './sample-spread.text.ts';

export const massSpreadText = sampleSpreadText('Spread of masses');
