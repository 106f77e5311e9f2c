import type { SheetCase } from '../sheet-case.ts';

export const drivePaceCases: readonly SheetCase[] = [
  {
    name: 'a motor of 1440 rev/min on 50 Hz turns at 1728 on 60 Hz: its times shrink to 1440/1728',
    source: {
      title: 'trade handbooks on motors of another frequency',
      place: 'speed rises by a fifth from 50 to 60 Hz',
      mark: 'common practice',
    },
    inputs: { rated: 50, here: 60 },
    outputs: { stretch: 1440 / 1728 },
    tolerance: { relative: 1e-9, reason: 'exact figures' },
  },
];
