import { bookForm, type Form } from './form.ts';
import { placeInList, stepsOf } from './pointer.ts';

const inside = (form: Form, step: string): readonly Form[] => {
  switch (form.is) {
    case 'part': {
      const field = form.fields.get(step);
      return field === undefined ? [] : [field];
    }
    case 'list':
      return placeInList(step) === undefined && step !== '-' ? [] : [form.of];
    case 'row': {
      const index = placeInList(step);
      const field = index === undefined ? undefined : form.of[index];
      return field === undefined ? [] : [field];
    }
    case 'choice':
      return [...form.options.values()].flatMap((option) => inside(option, step));
    case 'either':
      return form.of.flatMap((option) => inside(option, step));
    default:
      return [];
  }
};

/**
 * What the schema has at a place, whatever the book holds there: several where stations, sources or run
 * pieces of different kinds have the field.
 *
 * Symbols  path  JSON Pointer by index
 * Cost     O(length of the path)
 */
export const fieldsAt = (path: string): readonly Form[] => {
  let forms: readonly Form[] = [bookForm];
  for (const step of stepsOf(path)) forms = forms.flatMap((form) => inside(form, step));
  return forms;
};

/** What the schema has at a place; the first where kinds differ, and every word where each kind has its own. */
export const fieldAt = (path: string): Form | undefined => {
  const forms = fieldsAt(path);
  const words = forms.flatMap((form) => (form.is === 'word' ? form.words : []));
  return forms.length > 1 && forms.every(({ is }) => is === 'word')
    ? { is: 'word', words: [...new Set(words)] }
    : forms[0];
};
