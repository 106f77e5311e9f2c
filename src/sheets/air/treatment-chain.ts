import type { Problem } from '../../quantity/problem.ts';
import { choiceField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { asCleanAs, type PurityClass, purityClasses } from './purity-classes.ts';
import { iso8573 } from './sources.ts';

/** `-` of a designation: not specified. */
export type AskedClass = PurityClass | '-';
/** `?`: nobody has said it yet. */
export type GivenClass = PurityClass | '?';
export type Answer = 'met' | 'not met' | 'unknown';

const askedClasses: readonly AskedClass[] = ['-', ...purityClasses];
const givenClasses: readonly GivenClass[] = ['?', ...purityClasses];
const answers: readonly Answer[] = ['met', 'not met', 'unknown'];

/**
 * Whether a class that is given meets the one that is asked.
 *
 * Method   a class is met by itself and by every cleaner one; what was not asked is met
 * Symbols  asked  0 to 9, X, or `-` not specified;  given  0 to 9, X, or `?` not known
 * Returns  met, not met, or unknown
 * Cost     O(1)
 * Source   ISO 8573-1:2010; a hyphen in a designation is "not specified"
 */
export const classMet = (asked: AskedClass, given: GivenClass): Answer => {
  if (asked === '-') return 'met';
  if (given === '?') return 'unknown';
  return asCleanAs(given, asked) ? 'met' : 'not met';
};

export type CompressorKind = 'oil-free' | 'oil-flooded' | '?';
export type ChainDryer = 'none' | 'refrigerated' | 'desiccant' | 'membrane' | '?';
export type YesNo = 'yes' | 'no' | '?';

interface TreatmentChainInputs {
  readonly particlesAsked: AskedClass;
  readonly waterAsked: AskedClass;
  readonly oilAsked: AskedClass;
  readonly compressor: CompressorKind;
  readonly dryer: ChainDryer;
  readonly dustFilter: YesNo;
  readonly particlesGiven: GivenClass;
  readonly waterGiven: GivenClass;
  readonly oilGiven: GivenClass;
}

/** Cleanest class of water that a kind of dryer can give. */
const bestWater: Readonly<Partial<Record<ChainDryer, PurityClass>>> = { none: '7', refrigerated: '4' };

const overall = (parts: readonly Answer[]): Answer =>
  parts.includes('not met') ? 'not met' : parts.includes('unknown') ? 'unknown' : 'met';

const claimed = ({ dryer, waterGiven }: TreatmentChainInputs): Problem[] => {
  const best = bestWater[dryer];
  return best === undefined || waterGiven === '?' || asCleanAs(best, waterGiven)
    ? []
    : [{ code: 'CHAIN_DRYER_CLASS', path: 'waterGiven', given: waterGiven, allowed: `${best} or worse` }];
};

export const treatmentChainSheet = defineSheet({
  id: 'air/treatment-chain',
  version: 1,
  inputs: {
    particlesAsked: choiceField<AskedClass>('P', askedClasses),
    waterAsked: choiceField<AskedClass>('W', askedClasses),
    oilAsked: choiceField<AskedClass>('O', askedClasses),
    compressor: choiceField<CompressorKind>('\\text{compressor}', ['?', 'oil-free', 'oil-flooded'], '?'),
    dryer: choiceField<ChainDryer>(
      '\\text{dryer}',
      ['?', 'none', 'refrigerated', 'desiccant', 'membrane'],
      '?',
    ),
    dustFilter: choiceField<YesNo>('\\text{dust filter}', ['?', 'yes', 'no'], '?'),
    particlesGiven: choiceField<GivenClass>('P_g', givenClasses, '?'),
    waterGiven: choiceField<GivenClass>('W_g', givenClasses, '?'),
    oilGiven: choiceField<GivenClass>('O_g', givenClasses, '?'),
  },
  outputs: {
    particles: choiceField<Answer>('P_g \\le P', answers),
    water: choiceField<Answer>('W_g \\le W', answers),
    oil: choiceField<Answer>('O_g \\le O', answers),
    purity: choiceField<Answer>('[P{:}W{:}O]', answers),
  },
  formula: ['\\text{met if } P_g \\le P, \\quad W_g \\le W, \\quad O_g \\le O'],
  limits: [
    {
      code: 'CHAIN_CLASS_ZERO',
      broken: ({ particlesAsked, waterAsked, oilAsked }) =>
        [particlesAsked, waterAsked, oilAsked].includes('0'),
    },
    {
      code: 'CHAIN_OIL_FREE_INTAKE',
      broken: ({ compressor, oilAsked }) =>
        compressor === 'oil-free' && (oilAsked === '0' || oilAsked === '1'),
    },
    { code: 'CHAIN_OIL_FLOODED', broken: ({ compressor }) => compressor === 'oil-flooded' },
    {
      code: 'CHAIN_DESICCANT_DUST',
      broken: ({ dryer, dustFilter }) => dryer === 'desiccant' && dustFilter !== 'yes',
    },
    { code: 'PURITY_SECOND_HAND', broken: () => true },
  ],
  sources: [iso8573],
  check: claimed,
  compute: (i: TreatmentChainInputs) => {
    const particles = classMet(
      i.particlesAsked,
      // dust of the desiccant goes straight to the machine, whatever the filters before it give
      i.dryer === 'desiccant' && i.dustFilter === 'no' ? '?' : i.particlesGiven,
    );
    // a dryer of a kind that cannot give the class settles it, although its dew point is not known
    const best = bestWater[i.dryer];
    const water =
      i.waterGiven === '?' && best !== undefined && i.waterAsked !== '-' && !asCleanAs(best, i.waterAsked)
        ? 'not met'
        : classMet(i.waterAsked, i.waterGiven);
    const oil = classMet(i.oilAsked, i.oilGiven);
    return { particles, water, oil, purity: overall([particles, water, oil]) };
  },
});
