import { handwritten } from '../../quantity/index.ts';
import { insulationLimitSheet } from '../../sheets/safety/insulation-limit.ts';
import { bondLimitOf, rulePlace } from '../bond-limit-of.ts';
import type { Check } from '../check.ts';
import { makeCheck } from '../make-check.ts';
import type { ProofContext } from '../proof-context.ts';
import { sheetLimit } from '../sheet-limit.ts';

/** Sections in their place, bonded across every split, circuits insulated, and the supply as it should be before anything is closed. */
export const placingChecks = ({ book, hereIndex }: ProofContext): readonly Check[] => {
  const power = `/floors/${hereIndex}/power`;
  const { voltage, frequency } = book.floors?.[hereIndex]?.power ?? {};
  const word = (given: typeof voltage): string =>
    given === undefined ? '' : typeof given === 'string' ? given : [given.value].flat().join(' … ');
  const { drives = [], heaters = [], loads = [] } = book.line ?? {};
  const circuits = drives.length + heaters.length + loads.length;
  return [
    ...(book.line?.sections ?? []).map(({ tag }, i) =>
      makeCheck('placed', [tag], 'placed', {
        places: ['x', 'y', 'turned', 'feet'].map((field) => `/line/sections/${i}/${field}`),
      }),
    ),
    ...(book.line?.joins ?? []).flatMap(({ tag, kind, from, to, size }, i) => {
      if (kind !== 'bond') return [];
      const path = `/line/joins/${i}`;
      const limit = bondLimitOf(book, hereIndex, path);
      return [
        makeCheck('bond', [tag], 'placed', {
          point: 'hold',
          missFails: true,
          instrument: 'lowOhmMeter',
          limits: [limit],
          missing: limit.figure.missing,
          places: [
            ...['from', 'to', 'size', 'length'].map((field) => `${path}/${field}`),
            rulePlace(book, hereIndex),
          ],
          parts: { from: from ?? '', to: to ?? '', size: handwritten(size ?? '') },
        }),
      ];
    }),
    ...(circuits === 0
      ? []
      : [
          makeCheck('insulation', [], 'placed', {
            point: 'hold',
            missFails: true,
            instrument: 'insulationMeter',
            readings: circuits,
            limits: [
              sheetLimit(insulationLimitSheet, {}, 'least', {
                sense: 'least',
                id: 'insulation',
                kind: 'resistance',
              }),
            ],
            places: ['/line/drives', '/line/heaters', '/line/loads'],
          }),
        ]),
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
