import { choiceField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { waterLimits } from './purity-classes.ts';
import { foodGuideline, iso8573 } from './sources.ts';

export type Contact = 'none' | 'indirect' | 'direct';
export type GuidelineEdition = 'older' | 'newer';
export type DryerKind = 'refrigerated' | 'desiccant or membrane';
export type AskedWater = '-' | '1' | '2' | '3' | '4' | '5' | '6';

/** Class of water that the food guideline asks, by edition: 2:2:1 and 2:4:2 in the older, 1:2:1 for both in the newer. */
const contactClass: Readonly<Record<GuidelineEdition, Readonly<Record<Contact, AskedWater>>>> = {
  older: { none: '-', indirect: '4', direct: '2' },
  newer: { none: '-', indirect: '2', direct: '2' },
};

const limitOf = (waterClass: AskedWater): number =>
  waterClass === '-' ? Number.POSITIVE_INFINITY : waterLimits[Number(waterClass) - 1]! + 273.15;

interface DryerChoiceInputs {
  readonly coldest: number;
  readonly margin: number;
  readonly waterClass: AskedWater;
  readonly contact: Contact;
  readonly edition: GuidelineEdition;
  readonly refrigeratedDewPoint: number;
}

/**
 * Pressure dew point that route, class and contact ask for together.
 *
 * Method   T_d = min(T_c - dT, limit of the class asked, limit of the class that contact with product asks)
 * Symbols  T_c  coldest  scalar  K  coldest wall after the dryer
 *          dT   margin   scalar  K
 * Returns  temperature, K
 * Cost     O(1)
 * Source   ISO 8573-1:2010, table of classes; food trade guideline, two editions, second hand
 */
export const neededDewPoint = (
  coldest: number,
  margin: number,
  waterClass: AskedWater,
  contact: Contact,
  edition: GuidelineEdition,
): number => Math.min(coldest - margin, limitOf(waterClass), limitOf(contactClass[edition][contact]));

export const dryerChoiceSheet = defineSheet({
  id: 'air/dryer-choice',
  version: 1,
  inputs: {
    coldest: numberField('temperature', 'T_c', { least: 203.15, most: 343.15 }),
    margin: numberField('temperatureDifference', '\\Delta T', { least: 0, most: 50, assumed: 5 }),
    waterClass: choiceField<AskedWater>('\\text{class}', ['-', '1', '2', '3', '4', '5', '6'], '-'),
    contact: choiceField<Contact>('\\text{contact}', ['none', 'indirect', 'direct']),
    edition: choiceField<GuidelineEdition>('\\text{edition}', ['newer', 'older'], 'newer'),
    // +2 to +3 degC is the floor of the principle; a military hospital guide prints 1.7 to 3.9 degC
    refrigeratedDewPoint: numberField('temperature', 'T_r', { least: 273.16, most: 293.15, assumed: 276.15 }),
  },
  outputs: {
    neededDewPoint: numberField('temperature', 'T_d'),
    routeMargin: numberField('temperatureDifference', '\\Delta T_r'),
    dryer: choiceField<DryerKind>('\\text{dryer}', ['refrigerated', 'desiccant or membrane']),
  },
  formula: [
    'T_d = \\min \\left( T_c - \\Delta T,\\ T_{\\text{class}},\\ T_{\\text{contact}} \\right)',
    '\\text{refrigerated if } T_d \\ge T_r, \\quad \\Delta T_r = T_c - T_r',
  ],
  limits: [
    {
      code: 'DRYER_ROUTE_COLD',
      broken: ({ coldest, margin, refrigeratedDewPoint }) => coldest - margin < refrigeratedDewPoint - 1e-9,
    },
    {
      code: 'DRYER_CLASS_DRY',
      broken: ({ waterClass, refrigeratedDewPoint }) => limitOf(waterClass) < refrigeratedDewPoint - 1e-9,
    },
    {
      code: 'DRYER_CONTACT',
      broken: ({ contact, edition, refrigeratedDewPoint }) =>
        limitOf(contactClass[edition][contact]) < refrigeratedDewPoint - 1e-9,
    },
    { code: 'CONTACT_EDITIONS', broken: ({ contact }) => contact !== 'none' },
    { code: 'DRYER_MARGIN_HABIT', broken: () => true },
  ],
  sources: [iso8573, foodGuideline],
  compute: (i: DryerChoiceInputs) => {
    const needed = neededDewPoint(i.coldest, i.margin, i.waterClass, i.contact, i.edition);
    return {
      neededDewPoint: needed,
      routeMargin: i.coldest - i.refrigeratedDewPoint,
      dryer: (needed >= i.refrigeratedDewPoint - 1e-9
        ? 'refrigerated'
        : 'desiccant or membrane') as DryerKind,
    };
  },
});
