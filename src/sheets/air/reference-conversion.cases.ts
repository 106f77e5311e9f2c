import type { SheetCase } from '../sheet-case.ts';
import { script } from './sources.ts';

export const referenceConversionCases: readonly SheetCase[] = [
  {
    name: '100 L/min at 1 bar, 20 degC are 91.96 L/min at 0 degC, 1.01325 bar',
    source: script,
    inputs: { flow: 0.1 / 60, from: 'ANR', to: 'DIN 1343' },
    outputs: { flow: 0.09196 / 60 },
    tolerance: { relative: 5e-4, reason: 'as the reference states it' },
    notes: ['REFERENCE_ANR_DISAGREES'],
  },
  {
    name: 'with 65 % humidity counted they are 90.56 L/min',
    source: script,
    inputs: { flow: 0.1 / 60, from: 'ANR', to: 'DIN 1343', counting: 'humidity counted' },
    outputs: { flow: 0.09056 / 60 },
    tolerance: { relative: 5e-4, reason: 'as the reference states it' },
  },
  ...(
    [
      ['ANR', 1.1703],
      ['FAD', 1.1884],
      ['CAGI', 1.188],
      ['DIN 1343', 1.2923],
      ['15 degC', 1.225],
      ['60 degF', 1.2226],
      ['14.7 psia 68 degF', 1.194],
    ] as const
  ).map(([from, density]) => ({
    name: `a cubic metre at ${from} holds ${density} kg of dry air`,
    source: script,
    inputs: { flow: 1, from, to: 'FAD', counting: 'humidity counted' },
    outputs: { dryMassFlow: density },
    tolerance:
      from === '14.7 psia 68 degF'
        ? { relative: 1e-2, reason: 'the source prints the moist air, 0.9 % heavier than the dry air in it' }
        : { relative: 1e-4, reason: 'four printed digits' },
  })),
  ...(
    [
      ['CAGI', 'DIN 1343', 1.562],
      ['CAGI', 'FAD', 1.699],
      ['60 degF', 'DIN 1343', 1.607],
    ] as const
  ).map(([from, to, cubicMetres]) => ({
    name: `1 scfm (${from}) is ${cubicMetres} m3/h at ${to}`,
    source: script,
    inputs: { flow: 0.0004719474432, from, to },
    outputs: { flow: cubicMetres / 3600 },
    tolerance: { relative: 4e-4, reason: 'four printed digits' },
    notes: ['REFERENCE_SCFM_MIXED'],
  })),
];
