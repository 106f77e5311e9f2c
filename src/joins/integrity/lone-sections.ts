import type { Book } from '../../book/index.ts';
import type { LaidJoin } from '../laid-join.ts';
import type { JoinFault } from './fault.ts';
import { pairsOf } from './section-pairs.ts';

/** For each section the first of all that hang together with it. */
const rootsOf = (sections: readonly string[], pairs: readonly (readonly [string, string])[]) => {
  const parent = new Map(sections.map((tag) => [tag, tag]));
  const root = (tag: string): string => {
    let at = tag;
    for (let next = parent.get(at) ?? at; next !== at; next = parent.get(at) ?? at) at = next;
    return at;
  };
  for (const [one, other] of pairs) parent.set(root(other), root(one));
  return root;
};

/**
 * Sections to which no join leads from where most of the line stands: rebuilt by this list, they would stay alone.
 *
 * Returns  each of them; of groups that are as large the first of the book counts as the line
 */
export const loneSections = (joins: readonly LaidJoin[], book: Book): readonly JoinFault[] => {
  const tags = (book.line?.sections ?? []).map(({ tag }) => tag);
  // a book that lists no joins yet says nothing of its sections
  if (tags.length < 2 || joins.length === 0) return [];
  const pairOf = pairsOf(book);
  const root = rootsOf(
    tags,
    joins.flatMap((join) => {
      const pair = pairOf(join);
      return pair === undefined ? [] : [pair];
    }),
  );
  const sizes = new Map<string, number>();
  for (const tag of tags) sizes.set(root(tag), (sizes.get(root(tag)) ?? 0) + 1);
  const [main] = [...sizes].sort((a, b) => b[1] - a[1])[0] ?? [];
  return tags.flatMap((section, i): readonly JoinFault[] => {
    if (root(section) === main) return [];
    const others = tags.filter((tag) => root(tag) === main).join(', ');
    return [
      { code: 'JOIN_SECTION_ALONE', path: `/line/sections/${i}`, ends: [], parts: { section, others } },
    ];
  });
};
