import { sampleSpreadText } from './sample-spread.text.ts';

export const timeSpreadText = sampleSpreadText('Spread of times');
