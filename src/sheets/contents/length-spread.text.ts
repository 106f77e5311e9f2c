import { sampleSpreadText } from './sample-spread.text.ts';

export const lengthSpreadText = sampleSpreadText('Spread of lengths');
