import type { UtilityFigure, UtilityFinding } from '../../floor/utilities/utility-finding.ts';

const kept = new WeakMap<object, string>();

const once = (of: object, make: () => unknown): string => {
  const found = kept.get(of);
  if (found !== undefined) return found;
  const text = JSON.stringify(make());
  kept.set(of, text);
  return text;
};

type Answer = UtilityFinding | UtilityFigure;

/** Everything of an answer that a row shows, as one text: which working it stands in may change unseen. */
const shownOf = (answer: Answer): string =>
  once(answer, () => {
    if ('figure' in answer) {
      const { figure, said, notes, refusals } = answer;
      return [figure.value, figure.low, figure.high, figure.assumed, figure.missing, said, notes, refusals];
    }
    const { demand, have, verdict, margin, gap, ifSaid, said, decides, notes, refusals } = answer;
    return [
      [demand.value, have.value, have.low, have.high, have.assumed.length],
      [verdict, margin, gap, ifSaid, said, decides],
      [notes, refusals],
    ];
  });

/** Whether two answers look the same in their row: a key that moves one row draws no other anew. */
export const sameAnswer = (a: Answer | undefined, b: Answer | undefined): boolean =>
  a === b || (a !== undefined && b !== undefined && shownOf(a) === shownOf(b));
