import type { SheetCase } from '../sheet-case.ts';
import { type CausticRuleKey, causticRule } from './caustic-rules.ts';

const judged = (
  name: string,
  rule: CausticRuleKey,
  [caustic, alkali, minutes, fahrenheit]: readonly [number, number, number, number],
  verdict: 'meets' | 'does not meet',
  notes: readonly string[] = [],
): SheetCase => ({
  name,
  source: causticRule(rule).source,
  inputs: {
    rule,
    caustic: caustic / 100,
    alkali: alkali / 100,
    time: minutes * 60,
    temperature: ((fahrenheit - 32) * 5) / 9 + 273.15,
  },
  outputs: { verdict },
  tolerance: { absolute: 1e-9, reason: 'a code is met or not' },
  notes,
});

const asked = (
  name: string,
  rule: CausticRuleKey,
  outputs: Readonly<Record<string, readonly number[]>>,
): SheetCase => ({
  name,
  source: causticRule(rule).source,
  inputs: { rule, caustic: 0.02, alkali: 0.02, time: 60, temperature: 320 },
  outputs,
  tolerance: { relative: 1e-5, reason: 'degrees Fahrenheit to a hundredth of a kelvin' },
});

export const causticRuleCases: readonly SheetCase[] = [
  judged('Oregon: 3 % for 5 min at 130 degF meets', 'OR 603-021-0720', [3, 3, 5, 130], 'meets', [
    'CAUSTIC_OR_EQUIVALENT',
    'CAUSTIC_TABLE_DISAGREES',
    'CAUTION_CHEMICAL',
  ]),
  judged('Oregon: 2.5 % does not meet', 'OR 603-021-0720', [2.5, 4, 5, 130], 'does not meet'),
  judged('California: 2.5 % for 5 min at 120 degF meets', 'CA HSC 112080', [2.5, 2.5, 5, 120], 'meets'),
  judged('California: 4 min does not meet', 'CA HSC 112080', [2.5, 2.5, 4, 120], 'does not meet'),
  judged('Connecticut: 3.5 % alkali with 2.1 % caustic meets', 'CT 21a-142', [2.1, 3.5, 5, 120], 'meets'),
  judged(
    'Connecticut: 3.5 % alkali with 2 % caustic does not meet',
    'CT 21a-142',
    [2, 3.5, 5, 120],
    'does not meet',
  ),
  judged('Maine: 3 % at 110 degF meets, no time stated', 'ME 32-1854', [3, 3, 1, 110], 'meets', [
    'CAUSTIC_NOT_ALL_STATED',
  ]),
  judged('Virginia: 3 % alkali, 1.8 % caustic meets, repealed', 'VA 3.1-382', [1.8, 3, 1, 100], 'meets', [
    'CAUSTIC_REPEALED',
  ]),
  judged('Ohio: 3 % alkali, text read in part', 'OH 913.27', [1, 3, 1, 100], 'meets', ['CAUSTIC_TEXT_CUT']),
  asked('Oregon asks 3 %, 5 min, 130 degF', 'OR 603-021-0720', {
    leastCaustic: [0.03],
    leastTime: [300],
    leastTemperature: [327.594],
  }),
  asked('Connecticut asks 3.5 % alkali, 60 % of it caustic, 5 min, 120 degF', 'CT 21a-142', {
    leastAlkali: [0.035],
    leastCausticShare: [0.6],
    leastTime: [300],
    leastTemperature: [322.039],
  }),
];
