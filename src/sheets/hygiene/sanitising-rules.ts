import type { Mark, Source } from '../frame.ts';

/** Texts that say how a clean surface is sanitised, by the key that a book or a sheet chooses. */
export const sanitisingRuleKeys = [
  '21 CFR 129.80',
  'NJ 8:21-5.8',
  'NY 10-5-6.8',
  'RI 50-10-4.9',
  'CA FAC 33519',
  'LA 51-X-117',
] as const;
export type SanitisingRuleKey = (typeof sanitisingRuleKeys)[number];

export const sanitisingMedia = [
  'steam',
  'steam jet',
  'hot water',
  'hot air',
  'chlorine bath',
  'chlorine spray',
  'ozone water',
] as const;
export type SanitisingMedium = (typeof sanitisingMedia)[number];

/** What a row is written for; a row for pipes says nothing of bottles. */
export type SanitisedObject =
  | 'containers and equipment'
  | 'storage tanks and pipes'
  | 'pipes'
  | 'dairy farm equipment'
  | 'food service utensils';

/** One way to meet a rule: every figure that it states must be kept; what it does not state is absent. */
export interface SanitisingAlternative {
  /** K. */
  readonly leastTemperature?: number;
  /** s. */
  readonly leastTime?: number;
  /** kg/m3 of available chlorine or of ozone. */
  readonly leastConcentration?: number;
  readonly mostAcidity?: number;
  readonly object: SanitisedObject;
  readonly mark: Mark;
}

const fahrenheit = (degrees: number): number => ((degrees + 459.67) * 5) / 9;
const minutes = (n: number): number => 60 * n;
/** 1 mg/L, in kg/m3; the texts print ppm. */
const ppm = 1e-3;

const citation = (title: string, place: string, mark: Mark): Source => ({
  title,
  edition: mark === 'memory' ? 'not read, confirm before use' : 'as transcribed, date of the text not stated',
  place,
  mark,
});

export const sanitisingRuleSources: Readonly<Record<SanitisingRuleKey, Source>> = {
  '21 CFR 129.80': citation(
    '21 CFR 129.80(d), bottling of drinking water, US federal',
    '(d)(1) to (d)(5)',
    'memory',
  ),
  'NJ 8:21-5.8': citation('N.J.A.C. 8:21-5.8(a), bottled water, New Jersey', 'public transcription', 'read'),
  'NY 10-5-6.8': citation('10 NYCRR 5-6.8, bottled water, New York', 'public transcription', 'read'),
  'RI 50-10-4.9': citation('216-RICR-50-10-4.9, bottled water, Rhode Island', 'public transcription', 'read'),
  'CA FAC 33519': citation(
    'Food and Agricultural Code 33519, dairy farms, California',
    'public transcription',
    'read',
  ),
  'LA 51-X-117': citation(
    'Louisiana Administrative Code title 51, X-117, food service',
    'public transcription',
    'read',
  ),
};

type Rows = Readonly<Partial<Record<SanitisingMedium, readonly SanitisingAlternative[]>>>;

/** Rows of one text share their object and their mark. */
const rows = (
  object: SanitisedObject,
  mark: Mark,
  figures: Readonly<
    Partial<Record<SanitisingMedium, readonly Omit<SanitisingAlternative, 'object' | 'mark'>[]>>
  >,
): Rows =>
  Object.fromEntries(
    Object.entries(figures).map(([medium, each]) => [medium, each.map((one) => ({ ...one, object, mark }))]),
  );

/** 170 degF for 15 min or 200 degF for 5 min: two points, not the ends of a line. */
const bottledWaterHeat = [
  { leastTemperature: fahrenheit(170), leastTime: minutes(15) },
  { leastTemperature: fahrenheit(200), leastTime: minutes(5) },
];

const byRule: Readonly<Record<SanitisingRuleKey, Rows>> = {
  '21 CFR 129.80': rows('containers and equipment', 'memory', {
    steam: bottledWaterHeat,
    'hot water': bottledWaterHeat,
    'chlorine bath': [
      { leastConcentration: 50 * ppm, leastTime: minutes(2), leastTemperature: fahrenheit(57) },
    ],
    'chlorine spray': [{ leastConcentration: 100 * ppm, leastTemperature: fahrenheit(57) }],
    'ozone water': [{ leastConcentration: 0.1 * ppm, leastTime: minutes(5) }],
  }),
  'NJ 8:21-5.8': rows('containers and equipment', 'read', {
    steam: bottledWaterHeat,
    'hot water': bottledWaterHeat,
    'chlorine bath': [
      { leastConcentration: 50 * ppm, leastTime: minutes(2), leastTemperature: fahrenheit(75) },
    ],
    'chlorine spray': [{ leastConcentration: 100 * ppm, leastTemperature: fahrenheit(75) }],
    'ozone water': [{ leastConcentration: 0.1 * ppm, leastTime: minutes(5) }],
  }),
  'NY 10-5-6.8': rows('storage tanks and pipes', 'read', {
    'chlorine bath': [{ leastConcentration: 200 * ppm, leastTime: minutes(5) }],
    'ozone water': [{ leastConcentration: 0.1 * ppm, leastTime: minutes(10) }],
  }),
  'RI 50-10-4.9': rows('pipes', 'read', {
    'chlorine bath': [{ leastConcentration: 200 * ppm, leastTime: minutes(5) }],
    'ozone water': [{ leastConcentration: 0.1 * ppm }],
  }),
  'CA FAC 33519': rows('dairy farm equipment', 'read', {
    steam: bottledWaterHeat,
    'steam jet': [{ leastTime: minutes(1) }],
    'hot water': [{ leastTemperature: fahrenheit(170), leastTime: minutes(5) }],
    'hot air': [{ leastTemperature: fahrenheit(180), leastTime: minutes(20) }],
  }),
  'LA 51-X-117': rows('food service utensils', 'read', {
    'chlorine bath': [
      { leastConcentration: 25 * ppm, leastTemperature: fahrenheit(120) },
      { leastConcentration: 50 * ppm, leastTemperature: fahrenheit(100), mostAcidity: 10 },
      { leastConcentration: 50 * ppm, leastTemperature: fahrenheit(75), mostAcidity: 8 },
      { leastConcentration: 100 * ppm, leastTemperature: fahrenheit(55) },
    ],
  }),
};

/**
 * The ways in which a rule is met with a medium; any one of them is enough.
 *
 * Method   look-up
 * Returns  alternatives; none where the text has no row for the medium, which is unknown and never guessed
 * Cost     O(1)
 * Source   `sanitisingRuleSources`; 1 ppm counted as 1 mg/L
 */
export const sanitisingAlternatives = (
  rule: SanitisingRuleKey,
  medium: SanitisingMedium,
): readonly SanitisingAlternative[] => byRule[rule][medium] ?? [];

/** Media of which a rule has a row. */
export const mediaOfRule = (rule: SanitisingRuleKey): readonly SanitisingMedium[] =>
  sanitisingMedia.filter((medium) => sanitisingAlternatives(rule, medium).length > 0);
