import { bookForm, type Form, formFor } from './form.ts';
import { pointerOf, stepsOf } from './pointer.ts';
import { valueAt } from './value-at.ts';

/** What the schema has at a place of this book, for the kinds that the book chose on the way. */
export interface Place {
  readonly form: Form;
  /** Key of the catalogue under which the schema says what belongs here. */
  readonly help: string;
  /** The part that holds the place cannot be without it. */
  readonly must: boolean;
}

const stepInto = (place: Place, step: string, value: unknown): Place | undefined => {
  const chosen = formFor(place.form, value);
  const kind =
    place.form.is === 'choice' && typeof value === 'object' && value !== null
      ? (value as Record<string, unknown>)[place.form.by]
      : undefined;
  const at = typeof kind === 'string' ? `${place.help}:${kind}` : place.help;
  switch (chosen?.is) {
    case 'part': {
      const form = chosen.fields.get(step);
      return form && { form, help: `${at}/${step}`, must: chosen.must.includes(step) };
    }
    case 'list':
      return { form: chosen.of, help: `${at}/-`, must: false };
    case 'row': {
      const form = chosen.of[Number(step)];
      return form && { form, help: `${at}/${step}`, must: true };
    }
    default:
      return undefined;
  }
};

/**
 * What may stand at a place of a book.
 *
 * Symbols  path  JSON Pointer by index; a list has a place behind its last member, `-`
 * Cost     O(length of the path)
 */
export const placeAt = (book: unknown, path: string): Place | undefined => {
  let place: Place | undefined = { form: bookForm, help: 'help.', must: true };
  let value = book;
  for (const step of stepsOf(path)) {
    place = place && stepInto(place, step, value);
    value = valueAt(value, pointerOf([step]));
  }
  return place;
};
