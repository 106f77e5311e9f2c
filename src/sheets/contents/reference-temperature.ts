import type { Problem } from '../../quantity/problem.ts';
import { choiceField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { euDirective, ukRegulations } from './rule-sources.ts';

export const contentsRules = [
  'NIST Handbook 133',
  'OIML R 87',
  'EU average system',
  'UK average system',
] as const;
export type ContentsRule = (typeof contentsRules)[number];

export const contentsProducts = ['liquid', 'refrigerated', 'frozen', 'beer', 'spirits'] as const;
/** How a rule sorts products; `liquid` is all that is none of the others. */
export type ContentsProduct = (typeof contentsProducts)[number];

const celsius = (degrees: number): number => 273.15 + degrees;
const fahrenheit = (degrees: number): number => ((degrees + 459.67) * 5) / 9;

/** What each rule sets; absent where it sets none. */
const temperatures: Readonly<Record<ContentsRule, Readonly<Partial<Record<ContentsProduct, number>>>>> = {
  // recalled: reference temperatures for liquids, chapter 3
  'NIST Handbook 133': {
    liquid: fahrenheit(68),
    refrigerated: fahrenheit(40),
    frozen: fahrenheit(0),
    beer: fahrenheit(39.1),
    spirits: fahrenheit(60),
  },
  // recalled; frozen goods are not stated by volume
  'OIML R 87': {
    liquid: celsius(20),
    refrigerated: celsius(20),
    beer: celsius(20),
    spirits: celsius(20),
  },
  'EU average system': {
    liquid: celsius(20),
    refrigerated: celsius(20),
    beer: celsius(20),
    spirits: celsius(20),
  },
  'UK average system': {
    liquid: celsius(20),
    refrigerated: celsius(20),
    beer: celsius(20),
    spirits: celsius(20),
  },
};

interface ReferenceTemperatureInputs {
  readonly rule: ContentsRule;
  readonly product: ContentsProduct;
}

/**
 * Temperature at which a rule judges the contents of a product.
 *
 * Method   table
 * Returns  K; undefined where the rule sets none
 * Cost     O(1)
 * Source   the rule
 */
export const referenceTemperature = (rule: ContentsRule, product: ContentsProduct): number | undefined =>
  temperatures[rule][product];

const notSet = ({ rule, product }: ReferenceTemperatureInputs): readonly Problem[] =>
  referenceTemperature(rule, product) === undefined
    ? [{ code: 'REFERENCE_NOT_SET', path: 'product', given: product, parts: { rule } }]
    : [];

export const referenceTemperatureSheet = defineSheet({
  id: 'contents/reference-temperature',
  version: 1,
  inputs: {
    rule: choiceField<ContentsRule>('\\text{rule}', contentsRules),
    product: choiceField<ContentsProduct>('\\text{product}', contentsProducts, 'liquid'),
  },
  outputs: { reference: numberField('temperature', 'T_r') },
  formula: ['T_r = T_r(\\text{rule}, \\text{product})'],
  limits: [
    {
      code: 'REFERENCE_MEMORY',
      broken: ({ rule }) => rule === 'NIST Handbook 133' || rule === 'OIML R 87',
    },
  ],
  sources: [
    euDirective,
    ukRegulations,
    { title: 'NIST Handbook 133', place: 'chapter 3, reference temperatures, not read', mark: 'memory' },
    { title: 'OIML R 87', place: 'not read', mark: 'memory' },
  ],
  check: notSet,
  compute: ({ rule, product }: ReferenceTemperatureInputs) => ({
    reference: referenceTemperature(rule, product)!,
  }),
});
