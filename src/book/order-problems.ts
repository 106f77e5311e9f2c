import type { Problem } from '../quantity/problem.ts';
import { flowOrder, type Order, type Ordered, orderBy } from './flow-order.ts';
import { problemOf } from './problem-of.ts';
import { valueAt } from './value-at.ts';

const isText = (value: unknown): value is string => typeof value === 'string';

/** What of a list is ordered at all; the rest is told elsewhere. */
const orderedOf = (list: unknown): readonly (Ordered & { readonly index: number })[] => {
  if (!Array.isArray(list)) return [];
  return list.flatMap((each: unknown, index) => {
    const tag = valueAt(each, '/tag');
    const after = valueAt(each, '/after');
    if (!isText(tag)) return [];
    return [{ tag, index, ...(Array.isArray(after) ? { after: after.filter(isText) } : {}) }];
  });
};

const lists: readonly (readonly [string, (things: readonly Ordered[]) => Order])[] = [
  ['stations', flowOrder],
  ...(['joins', 'checks'] as const).map(
    (list) =>
      [
        list,
        (things: readonly Ordered[]) =>
          orderBy(
            things.map(({ tag }) => tag),
            new Map(things.map(({ tag, after }) => [tag, after ?? []])),
          ),
      ] as const,
  ),
];

/**
 * Stations, joins or checks that come before each other in a circle.
 *
 * Problems BOOK_ORDER_CIRCLE
 * Cost     O(things + references)
 */
export const orderProblems = (data: unknown): readonly Problem[] =>
  lists.flatMap(([list, orderOf]) => {
    const things = orderedOf(valueAt(data, `/line/${list}`));
    const found = orderOf(things);
    if (!('circle' in found)) return [];
    const { circle } = found;
    const at = things.find(({ tag, after }) => circle.includes(tag) && after !== undefined) ?? things[0];
    const steps = ['line', list, at?.index ?? 0, 'after'];
    return [problemOf('BOOK_ORDER_CIRCLE', steps, { given: circle, parts: { loop: circle.join(' → ') } })];
  });
