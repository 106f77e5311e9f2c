import type { Book } from '../../../book/index.ts';
import type { Draw } from '../need.ts';
import { tieInsOf } from '../water/water-draw.ts';
import { averageFlow, bathsDumped, runningFlow } from './drain-flows.ts';
import { causticDumped, drainMix } from './drain-quality.ts';

/** Figures of the drains that nothing is held against. */
export const drainDraws = (book: Book): readonly Draw[] =>
  tieInsOf(book, 'drain').flatMap((at): Draw[] => {
    const of = at.tieIn.tag;
    const utility = 'drains';
    const caustic = bathsDumped(book, at).filter(({ zone }) => zone.medium === 'detergent');
    return [
      { id: 'drainRunning', of, utility, kind: 'volumeFlow', answer: (c) => runningFlow(c, at) },
      { id: 'drainAverage', of, utility, kind: 'volumeFlow', answer: (c) => averageFlow(c, at) },
      { id: 'drainTempering', of, utility, kind: 'volumeFlow', answer: (c) => drainMix(c, at)?.tempering },
      ...caustic.map(
        (bath): Draw => ({
          id: 'neutralisingAcid',
          of: bath.zone.tag,
          utility,
          kind: 'mass',
          answer: (c) => causticDumped(c, bath)?.pureAcid,
        }),
      ),
    ];
  });
