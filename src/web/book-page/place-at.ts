import { type Form, formFor } from '../../book/form.ts';
import type { Place } from '../../book/place-at.ts';

export { type Place, placeAt } from '../../book/place-at.ts';

export type PartForm = Extract<Form, { readonly is: 'part' }>;
export type ListForm = Extract<Form, { readonly is: 'list' }>;

/** The part or list that stands, or may stand, at a place: a choice is taken as the kind that was chosen. */
export const chosenForm = (place: Place | undefined, value: unknown): Form | undefined =>
  place && formFor(place.form, value);

/** A form that is written in one field. */
export const isLeaf = (form: Form): boolean => !['part', 'choice', 'list', 'either'].includes(form.is);

/** Whether the members of a list have more to write than fits into a row of a table. */
export const needsRoom = (form: Form): boolean => {
  if (form.is === 'choice') return true;
  if (form.is !== 'part') return false;
  const fields = [...form.fields].filter(([key]) => key !== 'note');
  return fields.length > 7 || fields.some(([, field]) => !isLeaf(field));
};
