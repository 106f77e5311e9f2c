import type { SheetCase } from '../sheet-case.ts';

export const inertiaLagCases: readonly SheetCase[] = [
  {
    name: '12 m of 25.4 mm and 2 m of 19 mm under 1.4 m, 0.9 L/s, by an ODE solver after 2 s',
    source: {
      title: 'general ODE solver on the rigid column',
      place: 'independent script',
      mark: 'computed',
    },
    inputs: { lengths: [12, 2], bores: [0.0254, 0.019], flow: 0.0009, head: 1.4, time: 2 },
    outputs: {
      timeConstant: 2.0148598461,
      share: 0.758479353,
      lostTime: 1.137286495,
      lostInAll: 1.396594422,
    },
    tolerance: { relative: 1e-8, reason: 'tolerance of the ODE solver' },
    notes: ['INERTIA_NOT_STARTED'],
  },
  {
    name: 'textbook rule: 99 % of the velocity after 2.646 L v0/(g H)',
    source: {
      title: 'establishment of flow in a pipe, textbooks of fluid mechanics',
      place: '2.646 L v0/(g H)',
      mark: 'memory',
    },
    inputs: { lengths: [9.80665], bores: [0.1], flow: 0.0025 * Math.PI, head: 1, time: 2.646 },
    outputs: { share: 0.99 },
    tolerance: { relative: 1e-4, reason: 'four printed digits' },
  },
];
