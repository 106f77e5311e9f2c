import { choiceField, numberField } from '../fields.ts';
import { distances } from './bounds.ts';

/** Editions of ISO 13855 by which a distance is worked out; it is asked for, so that it is stored with the figure. */
export const editions = ['2010', '2024'] as const;
export type Edition = (typeof editions)[number];

export const editionField = choiceField<Edition>('\\text{edition}', editions);
/** Z of the edition of 2024: whatever the risk assessment adds. */
export const addedDistance = numberField('length', 'Z', { ...distances, assumed: 0 });

export const editionLimits = [
  { code: 'DISTANCE_2010', broken: ({ edition }: { readonly edition: Edition }) => edition === '2010' },
  {
    code: 'DISTANCE_2024_SECOND_HAND',
    broken: ({ edition }: { readonly edition: Edition }) => edition === '2024',
  },
] as const;

export const editionWords = { '2010': 'ISO 13855:2010', '2024': 'ISO 13855:2024' } as const;
