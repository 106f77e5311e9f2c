import type { SheetCase } from '../sheet-case.ts';
import { arithmetic } from './sources.ts';

export const npshRequiredHereCases: readonly SheetCase[] = [
  {
    name: 'trade journal: half the speed, a quarter of the head, for the required suction head alike',
    source: {
      title: 'trade journal on pumps, column on slower running and suction head',
      edition: 'January 2009',
      place: '(200/400)^2 = 0.25, public page',
      mark: 'read',
    },
    inputs: { required: 4, ratio: 0.5 },
    outputs: { required: 1 },
    tolerance: { relative: 1e-12, reason: 'one square' },
    notes: ['NPSH_FLOW_MOVES', 'PUMP_SPEED_FAR'],
  },
  {
    name: 'from 50 to 60 Hz 2.5 m become 3.6 m',
    source: arithmetic,
    inputs: { required: 2.5, ratio: 1.2 },
    outputs: { required: 3.6 },
    tolerance: { relative: 1e-12, reason: 'one square' },
  },
];
