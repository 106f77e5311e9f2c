import * as z from 'zod';

/** What a tag can stand on. */
export type Thing =
  | 'product'
  | 'format'
  | 'change part'
  | 'station'
  | 'zone'
  | 'lane'
  | 'hold rule'
  | 'stop cause'
  | 'drive'
  | 'heater'
  | 'load'
  | 'cylinder'
  | 'air drop'
  | 'blow-off'
  | 'device'
  | 'stop device'
  | 'interlock'
  | 'tie-in'
  | 'section'
  | 'split'
  | 'box'
  | 'join'
  | 'crate'
  | 'setting'
  | 'spare'
  | 'person'
  | 'instrument'
  | 'check'
  | 'floor'
  | 'run piece'
  | 'route piece'
  | 'wait'
  | 'afterwards';

/** Either the field that gives a thing its tag, or a field that refers to the tag of another. */
export type TagMeta =
  | { readonly names: Thing }
  | { readonly refersTo: readonly Thing[] | 'any'; readonly order?: 'after' };

export const tagFields = z.registry<TagMeta>();

const text = z.string().min(1).max(300);

/** The tag of a thing: short, stable, one name space for the whole book. */
export const tag = (thing: Thing): typeof text => {
  const field = text.describe(`Tag of this ${thing}: short and stable, used once in the whole book.`);
  tagFields.add(field, { names: thing });
  return field;
};

/** A field that refers to a thing by its tag. */
export const refersTo = (things: readonly Thing[] | 'any', description: string): typeof text => {
  const field = text.describe(description);
  tagFields.add(field, { refersTo: things });
  return field;
};

/** As `refersTo`, for a field that says what comes before: such references must not run in a circle. */
export const comesAfter = (thing: Thing, description: string): typeof text => {
  const field = text.describe(description);
  tagFields.add(field, { refersTo: [thing], order: 'after' });
  return field;
};
