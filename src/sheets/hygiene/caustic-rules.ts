import type { Mark, Source } from '../frame.ts';

/** Public codes for the caustic wash of returnable glass, by the key that a book or a sheet chooses. */
export const causticRuleKeys = [
  'OR 603-021-0720',
  'CT 21a-142',
  'CA HSC 112080',
  'ME 32-1854',
  'VA 3.1-382',
  'OH 913.27',
  'NV 584.2511',
] as const;
export type CausticRuleKey = (typeof causticRuleKeys)[number];

/** What one code asks; a figure that it does not state is absent. Strengths are shares, as the codes print per cent. */
export interface CausticRule {
  /** Sodium hydroxide. */
  readonly leastCaustic?: number;
  /** All alkali together. */
  readonly leastAlkali?: number;
  /** Sodium hydroxide as a share of the alkali. */
  readonly leastCausticShare?: number;
  /** s. */
  readonly leastTime?: number;
  /** K. */
  readonly leastTemperature?: number;
  readonly mark: Mark;
  readonly source: Source;
}

const fahrenheit = (degrees: number): number => ((degrees + 459.67) * 5) / 9;
const fiveMinutes = 300;

const cited = (title: string, place: string, edition = 'as transcribed, date of the text not stated') => ({
  mark: 'read' as const,
  source: { title, edition, place, mark: 'read' as const },
});

const rules: Readonly<Record<CausticRuleKey, CausticRule>> = {
  'OR 603-021-0720': {
    leastCaustic: 0.03,
    leastTime: fiveMinutes,
    leastTemperature: fahrenheit(130),
    ...cited('OAR 603-021-0720, Oregon', 'public transcription'),
  },
  'CT 21a-142': {
    leastAlkali: 0.035,
    leastCausticShare: 0.6,
    leastTime: fiveMinutes,
    leastTemperature: fahrenheit(120),
    ...cited('General Statutes 21a-142, Connecticut', 'public transcription'),
  },
  'CA HSC 112080': {
    leastCaustic: 0.025,
    leastTime: fiveMinutes,
    leastTemperature: fahrenheit(120),
    ...cited('Health and Safety Code 112080, California', 'public transcription'),
  },
  'ME 32-1854': {
    leastCaustic: 0.03,
    leastTemperature: fahrenheit(110),
    ...cited('Revised Statutes title 32, 1854, Maine', 'public transcription'),
  },
  'VA 3.1-382': {
    leastAlkali: 0.03,
    leastCausticShare: 0.6,
    ...cited('Code 3.1-382, Virginia', 'public transcription', 'repealed 2008'),
  },
  'OH 913.27': {
    leastAlkali: 0.03,
    ...cited('Revised Code 913.27, Ohio', 'public transcription, text cut off after the strength'),
  },
  'NV 584.2511': cited(
    'Administrative Code 584.2511, Nevada',
    'public transcription; the commission sets the figures',
  ),
};

/**
 * What a code asks of the caustic wash of returnable glass.
 *
 * Method   look-up
 * Returns  least strengths as shares, least time in s, least temperature in K, each only where it is stated
 * Cost     O(1)
 * Source   the code itself, named in the answer
 */
export const causticRule = (key: CausticRuleKey): CausticRule => rules[key];

/** Whether a code states any figure at all. */
export const statesFigures = ({ mark: _mark, source: _source, ...figures }: CausticRule): boolean =>
  Object.keys(figures).length > 0;
