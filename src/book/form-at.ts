import { bookForm, type Form, formFor } from './form.ts';
import { pointerOf } from './pointer.ts';
import { valueAt } from './value-at.ts';

/** The form at a place of these data: a choice stays a choice, whatever the data chose. */
export const formAt = (data: unknown, steps: readonly (string | number)[]): Form | undefined => {
  let form: Form | undefined = bookForm;
  let value = data;
  for (const step of steps) {
    form = form === undefined ? undefined : formFor(form, value);
    if (form?.is === 'part') form = form.fields.get(String(step));
    else if (form?.is === 'list') form = form.of;
    else if (form?.is === 'row') form = form.of[Number(step)];
    else return undefined;
    value = valueAt(value, pointerOf([step]));
  }
  return form;
};
