import type { SheetCase } from '../sheet-case.ts';
import { closedForms } from './sources.ts';

export const tankDrawDownCases: readonly SheetCase[] = [
  {
    name: 'Torricelli: tank of 2.5 m radius, hole of 10 mm radius, 2 m, emptied',
    source: {
      title: "public demonstration of Torricelli's law",
      place: 'formula read, number computed with g = 9.81',
      mark: 'computed',
    },
    inputs: { planArea: Math.PI * 2.5 ** 2, bore: 0.02, dischargeCoefficient: 1, startHead: 2, endHead: 0 },
    outputs: { time: 39909 },
    tolerance: { relative: 1e-3, reason: 'g = 9.81 there moves it by 0.017 %' },
    notes: ['DRAWDOWN_NEAR_OUTLET'],
  },
  {
    name: '0.8 m tank, 25 mm hole, 1.0 to 0.2 m',
    source: closedForms,
    inputs: { planArea: 0.16 * Math.PI, bore: 0.025, dischargeCoefficient: 0.62, startHead: 1, endHead: 0.2 },
    outputs: { time: 412.3 },
    tolerance: { relative: 2e-4, reason: 'four printed digits' },
  },
  {
    name: 'the same with 0.6 L/s inflow, 1.0 to 0.5 m',
    source: closedForms,
    inputs: {
      planArea: 0.16 * Math.PI,
      bore: 0.025,
      dischargeCoefficient: 0.62,
      startHead: 1,
      endHead: 0.5,
      inflow: 0.0006,
    },
    outputs: { time: 467.66, balanceHead: 0.198 },
    tolerance: { relative: 2e-3, reason: 'three printed digits of the balance level' },
  },
  {
    name: 'a level that rises: 0.5 m2, 20 mm hole, 1 L/s in, 0.1 to 0.4 m, by an ODE solver',
    source: { title: 'general ODE solver', place: 'independent script', mark: 'computed' },
    inputs: {
      planArea: 0.5,
      bore: 0.02,
      dischargeCoefficient: 0.62,
      startHead: 0.1,
      endHead: 0.4,
      inflow: 0.001,
    },
    outputs: { time: 265.270240126, balanceHead: 1.34389768, firstFlow: 0.0002727827465 },
    tolerance: { relative: 1e-8, reason: 'tolerance of the ODE solver' },
  },
];
