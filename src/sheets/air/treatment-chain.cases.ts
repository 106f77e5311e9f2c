import type { SheetCase } from '../sheet-case.ts';
import { foodGuideline, iso8573 } from './sources.ts';

const word = { absolute: 1e-9, reason: 'an answer is right or wrong' } as const;

export const treatmentChainCases: readonly SheetCase[] = [
  {
    name: 'a valve terminal asks [7:4:4]: 6:4:3 meets it',
    source: {
      title: 'manual of a valve terminal',
      edition: '1309f',
      place: 'p. 135, purity asked; public transcription',
      mark: 'read',
    },
    inputs: {
      particlesAsked: '7',
      waterAsked: '4',
      oilAsked: '4',
      compressor: 'oil-flooded',
      dryer: 'refrigerated',
      particlesGiven: '6',
      waterGiven: '4',
      oilGiven: '3',
    },
    outputs: { particles: 'met', water: 'met', oil: 'met', purity: 'met' },
    tolerance: word,
    notes: ['CHAIN_OIL_FLOODED'],
  },
  {
    name: 'direct contact asks 1:2:1: a refrigerated dryer does not meet it, whatever is not known',
    source: foodGuideline,
    inputs: {
      particlesAsked: '1',
      waterAsked: '2',
      oilAsked: '1',
      compressor: 'oil-free',
      dryer: 'refrigerated',
    },
    outputs: { particles: 'unknown', water: 'not met', oil: 'unknown', purity: 'not met' },
    tolerance: word,
    notes: ['CHAIN_OIL_FREE_INTAKE'],
  },
  {
    name: 'a hyphen is not specified and always met',
    source: iso8573,
    inputs: {
      particlesAsked: '-',
      waterAsked: '2',
      oilAsked: '-',
      dryer: 'desiccant',
      dustFilter: 'no',
      waterGiven: '2',
    },
    outputs: { particles: 'met', water: 'met', oil: 'met', purity: 'met' },
    tolerance: word,
    notes: ['CHAIN_DESICCANT_DUST'],
  },
];
