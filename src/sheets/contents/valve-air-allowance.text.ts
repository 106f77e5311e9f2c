import type { SheetText } from '../sheet-text.ts';

export const valveAirAllowanceText: SheetText = {
  en: {
    title: 'What the air of the valves changes between two floors',
    about: 'Expected change of the after-run, and its standard deviation, where the valves get another air.',
    inputs: { airRatio: 'Absolute pressure of the valves’ air there over here' },
    outputs: {
      shift: 'Expected change of the after-run',
      deviation: 'Standard deviation of that change',
    },
    notes: {
      VALVE_AIR_HABIT:
        'The inverse of the pressure is common practice: trials at two pressures of the air say it of these valves.',
    },
  },
};
