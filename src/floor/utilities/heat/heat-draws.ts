import type { Book } from '../../../book/index.ts';
import type { Draw } from '../need.ts';
import { bathLoad } from './bath-load.ts';
import { heatUp } from './heat-up.ts';
import { lastBath, rinseResidue } from './rinse-residue.ts';
import { heatedZones, loadBy } from './site-heat.ts';
import { contactAt, stayAt } from './wash-contact.ts';
import { isJudged } from './wash-rules.ts';
import { zonesOf } from './zones-of.ts';

/** Figures of heat and washing that nothing is held against. */
export const heatDraws = (book: Book): readonly Draw[] => {
  const heated = heatedZones({ book });
  const bath = lastBath(zonesOf(book));
  const utility = 'heat';
  return [
    ...(heated.length === 0
      ? []
      : [{ id: 'heatLoad', utility, kind: 'heatFlow', answer: (c) => loadBy(c) } satisfies Draw]),
    ...heated.flatMap((at): Draw[] => [
      {
        id: 'bottleHeat',
        of: at.zone.tag,
        utility,
        kind: 'heatFlow',
        answer: (c) => bathLoad(c, at)?.bottles,
      },
      ...(book.agreement?.heatUp === undefined
        ? [
            {
              id: 'heatUpTime',
              of: at.zone.tag,
              utility,
              kind: 'time',
              answer: (c) => heatUp(c, at)?.time,
            } satisfies Draw,
          ]
        : []),
    ]),
    ...zonesOf(book)
      .filter(isJudged)
      .flatMap((at): Draw[] => [
        { id: 'contact', of: at.zone.tag, utility, kind: 'time', answer: (c) => contactAt(c, at) },
        { id: 'longestStay', of: at.zone.tag, utility, kind: 'time', answer: (c) => stayAt(c, at) },
      ]),
    ...(bath === undefined
      ? []
      : [
          {
            id: 'rinse',
            utility,
            kind: 'soluteConcentration',
            answer: (c) => rinseResidue(c, bath),
          } satisfies Draw,
        ]),
  ];
};
