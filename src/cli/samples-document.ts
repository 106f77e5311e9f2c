import * as z from 'zod';
import { type SampledName, sampledNames } from '../fill/bottle-samples.ts';
import type { FormatSamples } from '../floor/fill/index.ts';
import { formatNumber } from '../quantity/index.ts';
import { type Kind, kinds } from '../quantity/kinds.ts';
import { shown } from '../quantity/shown.ts';
import type { UnitWishes } from '../quantity/unit-choice.ts';
import { problemDocument, problemSchema } from './problem-document.ts';
import { sentenceOf } from './sentence.ts';
import { textTable } from './text-table.ts';
import { words } from './words.ts';
import { workingDocument, workingSchema } from './working-document.ts';

const number = z.number();

export const samplesSchema = z
  .strictObject({
    bottles: z.number().int(),
    refused: z.array(z.strictObject({ bottle: z.string(), problems: z.array(problemSchema) })),
    quantities: z.array(
      z.strictObject({
        of: z.enum(sampledNames),
        unit: z.string(),
        n: z.number().int(),
        mean: number,
        spread: number.describe('Standard deviation from bottle to bottle'),
        meanLow: number.describe('Bounds of the mean'),
        meanHigh: number,
        spreadLow: number.describe('Bounds of the spread'),
        spreadHigh: number,
        low: number.describe('Nearly all bottles lie between: a tolerance interval'),
        high: number,
      }),
    ),
    millimetre: number.optional().describe('What one millimetre of level is worth, m3'),
    levelAgainstVolume: z
      .strictObject({
        verdict: z.enum(['both', 'not both', 'unknown']).describe('Whether one level also means one volume'),
        spread: number.describe('Standard deviation of the volume at one level, m3'),
        wanted: number.optional(),
        levelSpread: number.optional().describe('Standard deviation of the level at one volume, m'),
      })
      .optional(),
    against: z
      .array(
        z.strictObject({
          code: z.enum(['unlike', 'boreNotWritten', 'boreOverNeck']),
          of: z.enum(sampledNames),
          said: number,
          low: number,
          high: number,
          mean: number,
        }),
      )
      .describe('Where the book says another than the bottles, or nothing though it should; SI'),
    measuringContainer: workingSchema
      .optional()
      .describe('As measuring containers, where they state a capacity'),
    accepts: z
      .array(
        z.strictObject({
          part: z.enum(['lift', 'grippers', 'nozzle', 'cap head', 'cap chute']),
          of: z.enum(sampledNames),
          low: number,
          high: number,
        }),
      )
      .describe('What the machine must take, m'),
  })
  .describe('What the measured bottles of the customer say');

/** The step that judges the bottles as measuring containers. */
const containerOf = ({ measuringContainer, steps }: FormatSamples['found']) => {
  if (measuringContainer === undefined) return undefined;
  return { ...steps[measuringContainer]!, from: {} };
};

const kindOf = (name: SampledName): Kind =>
  name === 'brimful' || name === 'level'
    ? 'volume'
    : name === 'mass' || name === 'closureMass'
      ? 'mass'
      : 'length';

export const samplesDocument = ({
  bottles,
  found,
  refused,
  against,
}: FormatSamples): z.infer<typeof samplesSchema> => {
  const { quantities, millimetre, levelAgainstVolume, accepts } = found;
  const container = containerOf(found);
  return {
    bottles,
    refused: refused.map(({ bottle, problems }) => ({
      bottle,
      problems: problems.map((problem) => problemDocument(problem)),
    })),
    quantities: sampledNames.flatMap((of) => {
      const quantity = quantities[of];
      if (quantity === undefined) return [];
      const { step: _, ...rest } = quantity;
      return [{ of, unit: kinds[kindOf(of)], ...rest }];
    }),
    ...(millimetre === undefined ? {} : { millimetre }),
    ...(levelAgainstVolume === undefined
      ? {}
      : {
          levelAgainstVolume: {
            verdict: levelAgainstVolume.verdict,
            spread: levelAgainstVolume.spread,
            ...(levelAgainstVolume.wanted === undefined ? {} : { wanted: levelAgainstVolume.wanted }),
            ...(levelAgainstVolume.levelSpread === undefined
              ? {}
              : { levelSpread: levelAgainstVolume.levelSpread }),
          },
        }),
    against: against.map((one) => ({ ...one })),
    ...(container === undefined ? {} : { measuringContainer: workingDocument(container) }),
    accepts: accepts.map((one) => ({ ...one })),
  };
};

/** What the bottles hold, how they differ, and what the machine must take. */
export const samplesText = (
  { bottles, found, refused, against }: FormatSamples,
  { wishes, locale }: { readonly wishes: UnitWishes; readonly locale: string },
): readonly string[] => {
  const small = wishes.system === 'us' ? 'oz' : 'g';
  const ofCap: UnitWishes = { ...wishes, byKind: { ...wishes.byKind, mass: small } };
  const value = (one: number, of: SampledName, digits: number): string =>
    shown(one, kindOf(of), of === 'closureMass' ? ofCap : wishes, locale, digits);
  const rows = sampledNames.flatMap((of) => {
    const quantity = found.quantities[of];
    return quantity === undefined
      ? []
      : [
          [
            words.say(`fill.sampled.${of}`),
            formatNumber(quantity.n, locale, 4),
            value(quantity.mean, of, 4),
            value(quantity.spread, of, 2),
            // nothing of a bottle is less than nought
            `${value(Math.max(0, quantity.low), of, 4)} … ${value(quantity.high, of, 4)}`,
          ],
        ];
  });
  const { millimetre, levelAgainstVolume: both } = found;
  const container = containerOf(found);
  const verdict = container?.outputs.verdict;
  const header = ['', ...['n', 'mean', 'spread', 'nearlyAll'].map((name) => words.say(`fill.head.${name}`))];
  const lines = [
    words.say('fill.samples', { n: bottles }),
    ...refused.flatMap(({ bottle, problems }) => [
      `  ${words.say('fill.refused', { trial: bottle })}`,
      ...problems.map((problem) => `    ${sentenceOf(problem)}`),
    ]),
    ...found.problems.map((problem) => `  ${sentenceOf(problem)}`),
    ...(rows.length === 0 ? [] : [textTable([header, ...rows])]),
    ...(millimetre === undefined
      ? []
      : [`  ${words.say('fill.millimetre', { volume: shown(millimetre, 'volume', wishes, locale, 2) })}`]),
    ...(both === undefined
      ? []
      : [
          `  ${words.say(`fill.both.${both.verdict}`, {
            spread: shown(both.spread, 'volume', wishes, locale, 2),
            wanted: both.wanted === undefined ? '–' : shown(both.wanted, 'volume', wishes, locale, 2),
          })}`,
        ]),
  ];
  return [
    [
      ...lines,
      ...against.map(
        ({ code, of, said, low, high, mean }) =>
          `  ${words.say(`fill.against.${code}`, {
            of: words.say(`fill.sampled.${of}`),
            said: value(said, of, 4),
            low: value(low, of, 4),
            high: value(high, of, 4),
            mean: value(mean, of, 4),
          })}`,
      ),
      ...(container === undefined || typeof verdict !== 'string'
        ? []
        : [
            `  ${words.say('fill.container', {
              capacity: shown(container.inputs.capacity as number, 'volume', wishes, locale, 4),
              verdict: words.say(`fill.verdict.${verdict}`, { more: Number(container.outputs.more) }),
            })}`,
          ]),
    ].join('\n'),
  ];
};
