import type { SheetCase } from '../sheet-case.ts';
import { chlorineLiterature } from './sources.ts';

const tolerance = {
  relative: 2e-3,
  reason: 'four printed digits; the source rounds 1.0498 to 1.05',
} as const;
const outputs = { chlorine: 125, trade: 0.125, byWeight: 0.1078, hypochlorite: 0.1131 };

export const hypochloriteCases: readonly SheetCase[] = (
  [
    ['trade', 0.125, '12.5 trade'],
    ['available chlorine', 0.10776, '10.78 % available by weight'],
    ['sodium hypochlorite', 0.11313, '11.31 % hypochlorite by weight'],
  ] as const
).map(([which, percent, said]) => ({
  name: `${said} at a density of 1.16: 125 g/L, 12.5, 10.78 and 11.31 %`,
  source: { ...chlorineLiterature, mark: 'computed' },
  inputs: { which, percent, density: 1160 },
  outputs,
  tolerance,
  notes: ['HYPOCHLORITE_WHICH_PERCENT'],
}));
