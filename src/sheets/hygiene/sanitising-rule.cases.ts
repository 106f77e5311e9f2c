import type { Values } from '../frame.ts';
import type { SheetCase } from '../sheet-case.ts';
import { type SanitisingRuleKey, sanitisingRuleSources } from './sanitising-rules.ts';

const word = { absolute: 1e-9, reason: 'a rule is met or not' } as const;
const figures = { relative: 1e-5, reason: 'degrees Fahrenheit to a hundredth of a kelvin' } as const;
const nj: SanitisingRuleKey = 'NJ 8:21-5.8';

/** Fahrenheit, minutes, mg/L as the texts print them. */
const given = (
  rule: SanitisingRuleKey,
  medium: string,
  fahrenheit: number,
  minutes: number,
  milligrams?: number,
  acidity?: number,
): Values => ({
  rule,
  medium,
  temperature: ((fahrenheit - 32) * 5) / 9 + 273.15,
  time: minutes * 60,
  ...(milligrams === undefined ? {} : { concentration: milligrams / 1000 }),
  ...(acidity === undefined ? {} : { acidity }),
});

const judged = (
  name: string,
  rule: SanitisingRuleKey,
  rest: readonly [medium: string, fahrenheit: number, minutes: number, milligrams?: number, acidity?: number],
  met: readonly number[],
  notes: readonly string[] = [],
): SheetCase => ({
  name,
  source: sanitisingRuleSources[rule],
  inputs: given(rule, ...rest),
  outputs: { verdict: met.includes(1) ? 'meets' : 'does not meet', met },
  tolerance: word,
  notes,
});

export const sanitisingRuleCases: readonly SheetCase[] = [
  ...(['steam', 'hot water'] as const).flatMap((medium) => [
    judged(`N.J.A.C., ${medium}: 170 degF for 15 min meets`, nj, [medium, 170, 15], [1, 0]),
    judged(`N.J.A.C., ${medium}: 200 degF for 5 min meets`, nj, [medium, 200, 5], [0, 1]),
    judged(
      `N.J.A.C., ${medium}: 180 degF for 10 min meets neither point`,
      nj,
      [medium, 180, 10],
      [0, 0],
      ['RULE_TWO_POINTS', 'RULE_TRANSCRIBED', 'HYGIENE_AUTHORITY', 'CAUTION_SCALD'],
    ),
    judged(`N.J.A.C., ${medium}: 200 degF for 4 min does not meet`, nj, [medium, 200, 4], [0, 0]),
    judged(`N.J.A.C., ${medium}: 180 degF for 15 min meets`, nj, [medium, 180, 15], [1, 0]),
  ]),
  judged(
    'N.J.A.C., chlorine bath: 50 ppm for 2 min at 57 degF does not meet 75 degF',
    nj,
    ['chlorine bath', 57, 2, 50],
    [0],
    ['RULE_57_OR_75', 'CAUTION_CHEMICAL'],
  ),
  judged('N.J.A.C., chlorine bath: 50 ppm for 2 min at 75 degF meets', nj, ['chlorine bath', 75, 2, 50], [1]),
  judged('N.J.A.C., chlorine spray: 50 ppm is half of what is asked', nj, ['chlorine spray', 75, 2, 50], [0]),
  judged(
    'N.J.A.C., ozone water: 0.1 ppm for 5 min meets',
    nj,
    ['ozone water', 60, 5, 0.1],
    [1],
    ['RULE_OZONE_5_OR_10'],
  ),
  judged(
    '10 NYCRR, ozone water: 0.1 ppm for 5 min does not meet 10 min',
    'NY 10-5-6.8',
    ['ozone water', 60, 5, 0.1],
    [0],
  ),
  judged(
    '10 NYCRR, chlorine: 200 ppm for 5 min meets, for tanks and pipes',
    'NY 10-5-6.8',
    ['chlorine bath', 60, 5, 200],
    [1],
    ['RULE_FOR_TANKS_PIPES'],
  ),
  judged(
    'Rhode Island, pipes: 200 ppm for 4 min does not meet',
    'RI 50-10-4.9',
    ['chlorine bath', 60, 4, 200],
    [0],
  ),
  judged(
    'California, dairy farm: hot water of 170 degF for 5 min meets there',
    'CA FAC 33519',
    ['hot water', 170, 5],
    [1],
    ['RULE_FOR_DAIRY', 'RULE_HOT_WATER_5_OR_15'],
  ),
  judged(
    'Louisiana, food service: 50 mg/L at 80 degF and pH 7.5 meets the third way only',
    'LA 51-X-117',
    ['chlorine bath', 80, 1, 50, 7.5],
    [0, 0, 1, 0],
    ['RULE_PH_ASKED', 'RULE_TIME_NOT_STATED'],
  ),
  judged(
    'Louisiana, food service: the same at pH 9 does not meet',
    'LA 51-X-117',
    ['chlorine bath', 80, 1, 50, 9],
    [0, 0, 0, 0],
  ),
  judged(
    'federal text: 50 ppm for 2 min at 57 degF meets',
    '21 CFR 129.80',
    ['chlorine bath', 57, 2, 50],
    [1],
    ['RULE_FROM_MEMORY', 'RULE_57_OR_75'],
  ),
  {
    name: 'N.J.A.C., hot water: 170 degF (76.7 degC) 15 min or 200 degF (93.3 degC) 5 min',
    source: sanitisingRuleSources[nj],
    inputs: given(nj, 'hot water', 100, 1),
    outputs: { leastTemperature: [349.817, 366.483], leastTime: [900, 300] },
    tolerance: figures,
  },
  {
    name: 'Louisiana: 25, 50, 50 and 100 mg/L at 120, 100, 75 and 55 degF, pH 10 and 8',
    source: sanitisingRuleSources['LA 51-X-117'],
    inputs: given('LA 51-X-117', 'chlorine bath', 100, 1, 0),
    outputs: {
      leastTemperature: [322.039, 310.928, 297.039, 285.928],
      leastConcentration: [0.025, 0.05, 0.05, 0.1],
      mostAcidity: [10, 8],
    },
    tolerance: figures,
  },
];
