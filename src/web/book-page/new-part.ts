import type { Form } from '../../book/form.ts';
import { type TagPlace, tagsOf, valueAt } from '../../book/index.ts';
import type { Thing } from '../../book/schema/tag.ts';
import { freeTag, newTag, stationTags, takenTags } from './new-tag.ts';

/** A new thing, or what the book must have before there can be one. */
export type NewPart = { readonly value: unknown } | { readonly needs: Thing };

interface Making {
  readonly book: unknown;
  readonly named: readonly TagPlace[];
  readonly taken: Set<string>;
  /** Tag of the last thing of the list. */
  readonly last: string | undefined;
  /** Tags that the others of the list refer to, or this one already does: another is taken where there is one. */
  readonly used: Set<string>;
  readonly kind: string | undefined;
  needs?: Thing;
}

const made = (form: Form, making: Making): unknown => {
  switch (form.is) {
    case 'choice': {
      const kind = making.kind ?? [...form.options.keys()][0] ?? '';
      const option = form.options.get(kind);
      return option === undefined ? undefined : { ...(made(option, making) as object), [form.by]: kind };
    }
    case 'part':
      return Object.fromEntries(
        form.must.map((key) => [key, made(form.fields.get(key) ?? { is: 'claim' }, making)]),
      );
    case 'row':
      return form.of.map((each) => made(each, making));
    case 'list':
      return [];
    case 'word':
      return form.words[0];
    case 'number':
      return form.least ?? 0;
    case 'text': {
      const { tag } = form;
      if (tag === undefined) return form.table?.rows[0] ?? '';
      if ('names' in tag) {
        const wished = making.kind === undefined ? undefined : stationTags[making.kind];
        const own = tag.names === 'station' && wished !== undefined;
        const fresh = own ? freeTag(wished, making.taken) : newTag(tag.names, making.taken, making.last);
        making.taken.add(fresh);
        return fresh;
      }
      const things = tag.refersTo;
      const fit = making.named.filter(({ thing }) => things === 'any' || things.includes(thing));
      const chosen = fit.find(({ tag: each }) => !making.used.has(each)) ?? fit[0];
      if (chosen === undefined) {
        making.needs ??= things === 'any' ? 'station' : (things[0] ?? 'station');
        return undefined;
      }
      making.used.add(chosen.tag);
      return chosen.tag;
    }
    default:
      return undefined;
  }
};

const stationOf = (book: unknown, kind: string): string | undefined =>
  (valueAt(book, '/line/stations') as readonly { kind: string; tag: string }[] | undefined)?.find(
    (each) => each.kind === kind,
  )?.tag;

/**
 * A new member of a list with what it cannot be without: a tag of its own, references to what is there.
 *
 * Symbols  list  path of the list;  form  of its members;  kind  which of a choice
 * Returns  the member, or the thing that must be in the book before
 */
export const newPart = (book: unknown, list: string, form: Form, kind?: string): NewPart => {
  const members = valueAt(book, list);
  const others = Array.isArray(members) ? (members as readonly unknown[]) : [];
  const last = valueAt(others.at(-1), '/tag');
  const named = tagsOf(book);
  const texts = new Set(
    others.flatMap((each) =>
      typeof each === 'object' && each !== null
        ? Object.values(each).filter((value) => typeof value === 'string')
        : [],
    ),
  );
  const making: Making = {
    book,
    named,
    taken: takenTags(book),
    last: typeof last === 'string' ? last : undefined,
    used: texts,
    kind,
  };
  const value = made(form, making);
  if (making.needs !== undefined) return { needs: making.needs };
  if (list !== '/line/holdRules') return { value };
  // what a small line nearly always has: the washer waits until the bottles being filled are released
  const [holds, fill] = [stationOf(book, 'washer'), stationOf(book, 'fill')];
  return holds === undefined || fill === undefined
    ? { value }
    : { value: { ...(value as object), holds, while: fill, until: 'release' } };
};

/**
 * A copy of a part with tags of its own: what refers to a thing inside it refers to the copy of that thing.
 *
 * Symbols  value  the part;  form  of the part
 */
export const copiedPart = (book: unknown, value: unknown, form: Form): unknown => {
  const taken = takenTags(book);
  const fresh = new Map<string, string>();
  const each = (
    at: unknown,
    of: Form,
    visit: (text: string, tag: NonNullable<Text['tag']>) => string,
  ): unknown => {
    if (Array.isArray(at)) {
      const list = of.is === 'either' ? of.of.find(({ is }) => is === 'list') : of;
      return at.map((inner, index) => {
        const form = list?.is === 'list' ? list.of : list?.is === 'row' ? list.of[index] : undefined;
        return form === undefined ? inner : each(inner, form, visit);
      });
    }
    if (typeof at === 'string') {
      return of.is === 'text' && of.tag !== undefined ? visit(at, of.tag) : at;
    }
    if (typeof at !== 'object' || at === null) return at;
    const word = of.is === 'choice' ? (at as Record<string, unknown>)[of.by] : undefined;
    const part = of.is === 'choice' ? of.options.get(String(word)) : of;
    if (part?.is !== 'part') return at;
    return Object.fromEntries(
      Object.entries(at).map(([key, inner]) => {
        const field = part.fields.get(key);
        return [key, field === undefined ? inner : each(inner, field, visit)];
      }),
    );
  };
  type Text = Extract<Form, { is: 'text' }>;
  const named = each(value, form, (text, tag) => {
    if (!('names' in tag)) return text;
    const next = freeTag(text, taken);
    taken.add(next);
    fresh.set(text, next);
    return next;
  });
  return each(named, form, (text, tag) => ('refersTo' in tag ? (fresh.get(text) ?? text) : text));
};
