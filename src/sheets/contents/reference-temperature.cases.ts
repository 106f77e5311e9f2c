import type { SheetCase } from '../sheet-case.ts';
import { euDirective, ukRegulations } from './rule-sources.ts';

const exact = { absolute: 0.005, reason: 'degrees Fahrenheit to a hundredth of a kelvin' } as const;
const handbook = { title: 'NIST Handbook 133', place: 'chapter 3, not read', mark: 'memory' } as const;

export const referenceTemperatureCases: readonly SheetCase[] = [
  {
    name: 'Directive 76/211/EEC: 20 degC whatever the temperature of packing or checking',
    source: { ...euDirective, place: 'Annex II 1.2' },
    inputs: { rule: 'EU average system', product: 'liquid' },
    outputs: { reference: 293.15 },
    tolerance: exact,
  },
  {
    name: 'SI 2006/659: 20 degC whatever the temperature of packing or checking',
    source: { ...ukRegulations, place: 'schedule 2, 1.2; read in those of Northern Ireland, SR 2011/331' },
    inputs: { rule: 'UK average system', product: 'refrigerated' },
    outputs: { reference: 293.15 },
    tolerance: exact,
  },
  ...(
    [
      ['liquid', 20],
      ['refrigerated', 4.44],
      ['frozen', -17.78],
      ['beer', 3.94],
      ['spirits', 15.56],
    ] as const
  ).map(
    ([product, degrees]): SheetCase => ({
      name: `Handbook 133, ${product}: ${degrees} degC`,
      source: handbook,
      inputs: { rule: 'NIST Handbook 133', product },
      outputs: { reference: 273.15 + degrees },
      tolerance: exact,
      notes: ['REFERENCE_MEMORY'],
    }),
  ),
];
