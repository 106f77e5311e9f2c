import type { Check, CheckSort } from './check.ts';
import type { Stage } from './stage.ts';

/** What a maker says of a check; the rest is what most checks are. */
export type CheckDraft = Partial<Omit<Check, 'id' | 'sort' | 'on' | 'stage'>> & {
  /** Other than its sort and tags. */
  readonly id?: string;
};

/** Id of a check: its sort and the tags that it is on, `effect -S1 -M1`. */
export const checkId = (sort: CheckSort, on: readonly string[]): string => [sort, ...on].join(' ');

/** A check, tried once, whose result is worth only what it was on its own floor. */
export const makeCheck = (
  sort: CheckSort,
  on: readonly string[],
  stage: Stage,
  draft: CheckDraft = {},
): Check => ({
  id: checkId(sort, on),
  sort,
  on,
  stage,
  point: 'none',
  readings: 1,
  judged: 'each',
  limits: [],
  parts: {},
  conditions: [],
  places: [],
  missing: [],
  after: [],
  travels: false,
  missFails: false,
  ownConditions: [],
  ...draft,
});
