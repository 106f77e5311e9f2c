import type { Problem } from '../quantity/problem.ts';
import { nearestWord } from './nearest-word.ts';
import { pointerOf } from './pointer.ts';
import { problemOf, shown } from './problem-of.ts';
import type { Thing } from './schema/tag.ts';
import { walk } from './walk.ts';

interface Named {
  readonly path: string;
  readonly thing: Thing;
}

interface Reference {
  readonly tag: string;
  readonly steps: readonly (string | number)[];
  readonly to: readonly Thing[] | 'any';
  /** Tag of the thing that refers, where it has one. */
  readonly by: string | undefined;
}

/**
 * Tags that stand on two things, and references to a tag that stands on nothing or on something else than can be
 * meant. Each names both ends.
 *
 * Problems BOOK_TAG_TWICE, BOOK_TAG_UNKNOWN, BOOK_TAG_UNKNOWN_NEAR, BOOK_TAG_WRONG_THING
 * Cost     O(size of the data), and O(tags) more for each unknown tag, up to 200 of them
 */
export const tagProblems = (data: unknown): readonly Problem[] => {
  const problems: Problem[] = [];
  const named = new Map<string, Named>();
  const references: Reference[] = [];
  walk(data, {
    leaf: (value, form, steps, by) => {
      if (form.is !== 'text' || form.tag === undefined || typeof value !== 'string') return;
      if ('refersTo' in form.tag) {
        references.push({ tag: value, steps: [...steps], to: form.tag.refersTo, by });
        return;
      }
      const before = named.get(value);
      if (before === undefined) named.set(value, { path: pointerOf(steps), thing: form.tag.names });
      else
        problems.push(
          problemOf('BOOK_TAG_TWICE', steps, { given: shown(value), parts: { first: before.path } }),
        );
    },
  });
  let sought = 0;
  for (const { tag, steps, to, by } of references) {
    const found = named.get(tag);
    const who = by ?? pointerOf(steps.slice(0, -1));
    const given = shown(tag);
    if (found === undefined) {
      sought += 1;
      const candidates = [...named]
        .filter(([, { thing }]) => to === 'any' || to.includes(thing))
        .map(([each]) => each);
      const nearest = sought > 200 ? undefined : nearestWord(tag, candidates);
      problems.push(
        nearest === undefined
          ? problemOf('BOOK_TAG_UNKNOWN', steps, { given, parts: { by: who } })
          : problemOf('BOOK_TAG_UNKNOWN_NEAR', steps, { given, parts: { by: who, nearest } }),
      );
    } else if (to !== 'any' && !to.includes(found.thing)) {
      const parts = { by: who, is: found.thing };
      problems.push(problemOf('BOOK_TAG_WRONG_THING', steps, { given, allowed: to, parts }));
    }
  }
  return problems;
};
