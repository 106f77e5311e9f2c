import type { SheetCase } from '../sheet-case.ts';
import { epaTables, script } from './sources.ts';

const [mg, ct] = [1e-3, 0.06];
const printed = { relative: 1e-9, reason: 'a printed figure itself' } as const;

export const otherCtCases: readonly SheetCase[] = [
  ...(
    [
      [20, 'viruses', 4],
      [20, 'giardia', 2.08],
      [15, 'viruses', 3.33],
      [15, 'giardia', 1.58],
    ] as const
  ).map(([degrees, target, reached]) => ({
    name: `0.1 mg/L of ozone for 5 min at ${degrees} degC: ${reached} logs of ${target}`,
    source: script,
    inputs: {
      disinfectant: 'ozone',
      target,
      temperature: degrees + 273.15,
      residual: 0.1 * mg,
      time: 300,
    },
    outputs: { ct: 0.5 * ct, reached, ratio: reached / (target === 'viruses' ? 4 : 3) },
    tolerance: { relative: 5e-3, reason: 'three printed digits' },
    notes: ['CT_RULE_NO_LOGS', 'CT_NOT_FOR_RINSE'],
  })),
  ...(
    [
      ['chlorine dioxide', 'giardia', 10, 3, 23],
      ['chlorine dioxide', 'viruses', 25, 4, 8.4],
      ['chloramine', 'giardia', 1, 3, 3800],
      ['chloramine', 'viruses', 15, 4, 994],
      ['ozone', 'giardia', 5, 3, 1.9],
    ] as const
  ).map(([disinfectant, target, degrees, logs, given]) => ({
    name: `table: ${disinfectant}, ${logs} logs of ${target} at ${degrees} degC: CT ${given}`,
    source: epaTables,
    inputs: { disinfectant, target, temperature: degrees + 273.15, residual: mg, logs },
    outputs: { needed: given * ct, neededTime: given * 60 },
    tolerance: printed,
  })),
];
