import { type Patch, pointerOf, stepsOf, valueAt } from '../../book/index.ts';
import { placeAt } from '../book-page/place-at.ts';
import { referencesTo } from '../book-page/references.ts';

/**
 * The changes that one typed value means. A tag takes along whatever refers to it, and a quantity that was one
 * text becomes one with its standing as soon as somebody says how it is known.
 *
 * Symbols  value  what is to stand at the path; undefined takes it away
 * Cost     O(size of the book) for a tag, else O(length of the path)
 */
export const typedPatches = (book: unknown, path: string, value: unknown): readonly Patch[] => {
  const steps = stepsOf(path);
  const above = pointerOf(steps.slice(0, -1));
  const place = placeAt(book, path);
  const before = valueAt(book, path);
  if (place?.form.is === 'text' && place.form.tag !== undefined && 'names' in place.form.tag) {
    const references = typeof before === 'string' ? referencesTo(book, new Set([before])) : [];
    if (value === undefined || value === before) return [{ path, value }];
    return [{ path, value }, ...references.map((each) => ({ path: each, value }))];
  }
  if (place === undefined && placeAt(book, above)?.form.is === 'quantity') {
    const whole = valueAt(book, above);
    const known = typeof whole === 'object' && whole !== null ? whole : { value: whole };
    const key = steps.at(-1) ?? '';
    const { [key]: _, ...rest } = known as Record<string, unknown>;
    const next = value === undefined ? rest : { ...known, [key]: value };
    // of a quantity of which nothing is said but its text, only the text is written
    const bare = Object.keys(next).length === 1 && typeof rest.value === 'string';
    return [{ path: above, value: bare ? rest.value : next }];
  }
  return [{ path, value }];
};
