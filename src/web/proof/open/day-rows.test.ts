import { expect, it } from 'vitest';
import type { PlanStep, ProvedCheck } from '../../../proof/index.ts';
import { dayRows } from './day-rows.ts';

const day = 86_400;
const step = (sort: PlanStep['sort'], of: string, from: number, to: number, slack = 0): PlanStep => ({
  sort,
  of,
  start: from * day,
  end: to * day,
  slack: slack * day,
  critical: slack === 0,
  usual: false,
});

it('a plan is a bar for each stage and one for each thing of others, by their start', () => {
  const checks = [
    { check: { id: 'a', stage: 'placed' } },
    { check: { id: 'b', stage: 'placed' } },
    { check: { id: 'c', stage: 'wet' } },
  ] as unknown as readonly ProvedCheck[];
  const steps = [
    step('check', 'c', 1.2, 2),
    step('check', 'a', 0.3, 0.4, 2.5),
    step('check', 'b', 0.4, 1.1),
    step('result', 'c', 2, 6, 1),
    step('wait', 'W1', 0, 3, 4),
    step('wait', 'promised', 3, 3, 1),
  ];
  const rows = dayRows({ steps }, checks);
  expect(
    rows.map(({ sort, of, first, last, critical, spare }) => [sort, of, first, last, critical, spare]),
  ).toEqual([
    ['wait', 'W1', 1, 3, false, 4],
    ['stage', 'placed', 1, 2, true, 0],
    ['stage', 'wet', 2, 2, true, 0],
    ['result', 'c', 3, 6, false, 1],
    ['wait', 'promised', 3, 3, false, 1],
  ]);
});
