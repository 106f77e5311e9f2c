import type { Check } from '../check.ts';
import { makeCheck } from '../make-check.ts';
import type { ProofContext } from '../proof-context.ts';

/** Sections in their place, bonded across every split, and the supply as it should be before anything is closed. */
export const placingChecks = ({ book, hereIndex }: ProofContext): readonly Check[] => {
  const power = `/floors/${hereIndex}/power`;
  const { voltage, frequency } = book.floors?.[hereIndex]?.power ?? {};
  const word = (given: typeof voltage): string =>
    given === undefined ? '' : typeof given === 'string' ? given : [given.value].flat().join(' … ');
  return [
    ...(book.line?.sections ?? []).map(({ tag }, i) =>
      makeCheck('placed', [tag], 'placed', {
        places: ['x', 'y', 'turned', 'feet'].map((field) => `/line/sections/${i}/${field}`),
      }),
    ),
    ...(book.line?.joins ?? []).flatMap(({ tag, kind, from, to, size }, i) =>
      kind === 'bond'
        ? [
            makeCheck('bond', [tag], 'placed', {
              point: 'hold',
              missFails: true,
              instrument: 'lowOhmMeter',
              places: ['from', 'to', 'size', 'length'].map((field) => `/line/joins/${i}/${field}`),
              parts: { from: from ?? '', to: to ?? '', size: size ?? '' },
            }),
          ]
        : [],
    ),
    ...((book.line?.drives ?? []).length === 0
      ? []
      : [
          makeCheck('voltage', [], 'energised', {
            point: 'hold',
            missFails: true,
            instrument: 'multimeter',
            readings: 3,
            places: ['system', 'voltage', 'frequency', 'phases', 'stepTransformer'].map(
              (field) => `${power}/${field}`,
            ),
            missing: [
              ...(voltage === undefined ? [`${power}/voltage`] : []),
              ...(frequency === undefined ? [`${power}/frequency`] : []),
            ],
            parts: { voltage: word(voltage), frequency: word(frequency) },
          }),
        ]),
  ];
};
