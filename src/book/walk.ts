import { bookForm, type Form, formFor } from './form.ts';

type Steps = readonly (string | number)[];

/** What a walk tells at each place. The steps are those of the walk itself: copy them to keep them. */
export interface Visitor {
  readonly part?: (
    value: Readonly<Record<string, unknown>>,
    form: Form & { is: 'part' },
    steps: Steps,
  ) => void;
  readonly leaf?: (value: unknown, form: Form, steps: Steps, owner: string | undefined) => void;
}

const isPart = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/**
 * Walks over a book as far as it has the right form, and passes over what has not: wrong forms are told elsewhere.
 *
 * Symbols  data  what may be a book;  visitor  told of each part and each leaf, in the order of the schema's data
 * Cost     O(size of the book)
 */
export const walk = (data: unknown, visitor: Visitor): void => {
  const steps: (string | number)[] = [];
  const into = (step: string | number, value: unknown, form: Form, owner: string | undefined): void => {
    steps.push(step);
    at(value, form, owner);
    steps.pop();
  };
  const at = (value: unknown, either: Form, owner: string | undefined): void => {
    const form = formFor(either, value);
    if (form === undefined) return;
    if (form.is === 'part') {
      if (!isPart(value)) return;
      const own = Object.hasOwn(value, 'tag') && typeof value.tag === 'string' ? value.tag : owner;
      visitor.part?.(value, form, steps);
      for (const key of Object.keys(value)) {
        const field = form.fields.get(key);
        if (field !== undefined) into(key, value[key], field, own);
      }
    } else if (form.is === 'list' || form.is === 'row') {
      if (!Array.isArray(value)) return;
      for (const [index, each] of value.entries()) {
        const of = form.is === 'list' ? form.of : form.of[index];
        if (of !== undefined) into(index, each, of, owner);
      }
    } else visitor.leaf?.(value, form, steps, owner);
  };
  at(data, bookForm, undefined);
};
