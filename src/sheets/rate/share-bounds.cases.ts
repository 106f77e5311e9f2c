import type { SheetCase } from '../sheet-case.ts';
import { handbook, statisticsScript } from './trial-sources.ts';

const printed = { absolute: 5e-10, reason: 'ten printed digits' };

export const shareBoundsCases: readonly SheetCase[] = [
  {
    name: 'e-Handbook 7.2.4.1: 4 defective of 20, 90 % exact, 0.071354 to 0.401029',
    source: handbook('7.2.4.1, the first listing'),
    inputs: { found: 4, looked: 20, confidence: 0.9 },
    outputs: { low: 0.071354, high: 0.401029 },
    tolerance: { absolute: 1e-5, reason: 'the root of the handbook is found to six digits, not seven' },
    notes: ['SHARE_AGREE_BOUND'],
  },
  {
    name: 'the same to its digits',
    source: statisticsScript,
    inputs: { found: 4, looked: 20, confidence: 0.9 },
    outputs: {
      low: 0.07135388431,
      high: 0.4010281173,
      least: 0.09021345531,
      most: 0.3606618801,
      scoreLow: 0.09311801658,
      scoreHigh: 0.3783766858,
    },
    tolerance: printed,
  },
  {
    name: 'e-Handbook 7.2.4.1: 26 defective of 200, score limit one-sided at 95 %, 0.09577',
    source: handbook('7.2.4.1, the one-sided limit after Wilson'),
    inputs: { found: 26, looked: 200, confidence: 0.9 },
    outputs: { share: 0.13, scoreLow: 0.09577 },
    tolerance: { absolute: 5e-6, reason: 'four printed digits' },
  },
  {
    name: '668 good of 675: over 0.9806100 at 95 %, 0.9787504 to 0.9958207 two-sided',
    source: statisticsScript,
    inputs: { found: 668, looked: 675, confidence: 0.95 },
    outputs: {
      least: 0.9806099581,
      most: 0.995123038,
      low: 0.9787504021,
      high: 0.9958206924,
      scoreLow: 0.9787500853,
      scoreHigh: 0.9949676973,
    },
    tolerance: printed,
  },
  {
    name: 'the same by score, one-sided at 95 %: over 0.9809822',
    source: statisticsScript,
    inputs: { found: 668, looked: 675, confidence: 0.9 },
    outputs: { scoreLow: 0.9809822247 },
    tolerance: printed,
  },
  {
    name: 'none bad of 300: under 0.00993608 at 95 %, the rule of three says 0.01',
    source: statisticsScript,
    inputs: { found: 0, looked: 300, confidence: 0.95 },
    outputs: { share: 0, least: 0, most: 0.009936081944, low: 0, high: 0.01222097469, scoreLow: 0 },
    tolerance: { absolute: 5e-12, reason: 'ten printed digits' },
  },
  {
    name: 'all of 675 good: over 0.99557171 at 95 %',
    source: statisticsScript,
    inputs: { found: 675, looked: 675, confidence: 0.95 },
    outputs: {
      least: 0.995571712,
      most: 1,
      low: 0.9945498994,
      high: 1,
      scoreLow: 0.9943411547,
      scoreHigh: 1,
    },
    tolerance: printed,
  },
  {
    name: '12 bad of 4 800, 99 %: 0.001030 to 0.005024',
    source: statisticsScript,
    inputs: { found: 12, looked: 4800, confidence: 0.99 },
    outputs: { low: 0.001030466414, high: 0.005023833991, most: 0.004748983871, scoreHigh: 0.005165082044 },
    tolerance: { absolute: 5e-12, reason: 'ten printed digits' },
  },
];
