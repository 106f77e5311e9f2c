import type { SheetCase } from '../sheet-case.ts';
import { statisticsScript } from './trial-sources.ts';

const chanceOf = (looked: number, accepted: number, share: number, chance: number): SheetCase => ({
  name: `${looked} looked at, ${accepted} allowed, ${100 * share} % bad: accepted in ${(100 * chance).toFixed(3)} of 100`,
  source: statisticsScript,
  inputs: { looked, accepted, share },
  outputs: { chance },
  tolerance: { relative: 1e-12, reason: 'printed digits' },
  notes: ['PLAN_ONE_LOT'],
});

const pointsOf = (
  looked: number,
  accepted: number,
  mostlyAccepted: number,
  evenly: number,
  mostlyRefused: number,
): SheetCase => ({
  name: `${looked} looked at, ${accepted} allowed: shares accepted in 95, 50 and 10 of 100`,
  source: statisticsScript,
  inputs: { looked, accepted, share: 0.01 },
  outputs: { mostlyAccepted, evenly, mostlyRefused },
  tolerance: { relative: 1e-12, reason: 'printed digits' },
});

export const acceptancePlanCases: readonly SheetCase[] = [
  // lot of 800, level II, code letter J, acceptance quality limit 1.0: 80 and 2
  chanceOf(80, 2, 0.005, 0.9922881683046688),
  chanceOf(80, 2, 0.01, 0.9534468142640684),
  chanceOf(80, 2, 0.02, 0.784418886975356),
  chanceOf(80, 2, 0.03, 0.5681232516410872),
  chanceOf(80, 2, 0.05, 0.23062050491649155),
  chanceOf(125, 3, 0.01, 0.9625509378366359),
  pointsOf(80, 2, 0.01029780136007769, 0.03328531776818942, 0.06515966699162976),
  pointsOf(125, 3, 0.01100290447633598, 0.029297651497219926, 0.05266318973087612),
  pointsOf(20, 0, 0.002561378776530283, 0.03406367107515445, 0.10874906186625448),
  pointsOf(50, 10, 0.1285573788803384, 0.21194973629528974, 0.29129726601727063),
];
