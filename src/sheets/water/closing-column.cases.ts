import type { SheetCase } from '../sheet-case.ts';
import { columnSolver, derived } from './sources.ts';

export const closingColumnCases: readonly SheetCase[] = [
  {
    name: 'a long hose behind a quick valve, by an ODE solver',
    source: columnSolver,
    inputs: { inertia: 0.3, closing: 0.12, jets: 0.6, flow: 4e-4 },
    outputs: { factor: 0.7894692171553127, volume: 1.389452242345501e-5 },
    tolerance: { relative: 3e-4, reason: 'steps of the first order' },
  },
  {
    name: 'a short hose behind a slow valve, by an ODE solver',
    source: columnSolver,
    inputs: { inertia: 0.05, closing: 0.2, jets: 0.9, flow: 1e-4 },
    outputs: { factor: 0.566049342409382, volume: 1.3209868481876397e-6 },
    tolerance: { relative: 3e-4, reason: 'steps of the first order' },
  },
  {
    name: 'a long run before a valve that shuts at once, by an ODE solver',
    source: columnSolver,
    inputs: { inertia: 2, closing: 0.1, jets: 0.4, flow: 1e-3 },
    outputs: { factor: 0.9477022489920685, volume: 4.477022489920685e-5 },
    tolerance: { relative: 3e-4, reason: 'steps of the first order' },
  },
  {
    name: 'without inertia the integral of x/sqrt(j + (1 - j) x^2), 1/(1 + sqrt j)',
    source: derived,
    inputs: { inertia: 0, closing: 0.1, jets: 0.25, flow: 1e-3 },
    outputs: { factor: 2 / 3, volume: 1e-4 / 6 },
    tolerance: { relative: 1e-6, reason: 'steps of the integral' },
  },
];
