import type { Book } from '../../../book/index.ts';
import type { Need } from '../need.ts';
import { tieInsOf } from '../water/water-draw.ts';
import { bathsDumped, peakFlow } from './drain-flows.ts';
import { acidityAnswer, temperatureAnswer } from './drain-quality.ts';
import { drainLevers, drainTakes } from './drain-takes.ts';
import { acidityLevers, temperatureLevers } from './let-go-levers.ts';

/** What the line asks of the drains of a floor. */
export const drainNeeds = (book: Book): readonly Need[] =>
  tieInsOf(book, 'drain').flatMap((at): Need[] => {
    const common = { utility: 'drains', of: at.tieIn.tag, tieIn: at.tieIn.tag } as const;
    return [
      {
        ...common,
        question: 'drainFlow',
        sense: 'least',
        kind: 'volumeFlow',
        answer: (c) => ({ demand: peakFlow(c, at), have: drainTakes(c, at) }),
        levers: (c) => drainLevers(c, at),
      },
      {
        ...common,
        question: 'drainTemperature',
        sense: 'most',
        kind: 'temperature',
        answer: (c) => temperatureAnswer(c, at),
        levers: (c) => temperatureLevers(c, at),
      },
      ...(bathsDumped(book, at).some(({ zone }) => zone.medium === 'detergent')
        ? [
            {
              ...common,
              question: 'drainAcidity',
              sense: 'most',
              kind: 'acidity',
              answer: (c) => acidityAnswer(c, at),
              levers: (c) => acidityLevers(c, at),
            } satisfies Need,
          ]
        : []),
    ];
  });
