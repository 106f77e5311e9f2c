import type { CycleBar } from '../../floor/assessment.ts';
import { shortened } from '../paper-head.ts';
import type { PaperWords } from '../paper-words.ts';
import type { Citations } from '../workings/citations.ts';
import { type ChartWorkings, chartWorkings } from './charts.ts';
import { chainSentence, holdSentence } from './hold-sentence.ts';
import type { ShownFloor } from './spine.ts';
import { type Tick, ticksOf } from './ticks.ts';

export interface PrintedStretch {
  readonly from: number;
  readonly to: number;
  readonly state: 'works' | 'waits';
  readonly label: string;
}

export interface CycleFloor {
  readonly hue: number;
  readonly title: string;
  readonly stations: readonly { readonly name: string; readonly bars: readonly PrintedStretch[] }[];
}

export interface CyclePart {
  readonly holds: readonly string[];
  /** Absent where no floor has a cycle. */
  readonly chart?: {
    readonly alt: string;
    readonly floors: readonly CycleFloor[];
    readonly ticks: readonly Tick[];
    readonly workings: readonly ChartWorkings[];
  };
}

/** Letters of a station's name that its column has room for, in three lines. */
const roomForStation = 48;

/** Share of the chart's width that a letter of a label takes, on the narrower page. */
const letterWidth = 0.0088;

const labelOf = (bar: CycleBar, wide: number, { say, sayOr }: PaperWords): string => {
  const label =
    bar.state === 'works'
      ? sayOr(`step.${bar.what}`, bar.what)
      : sayOr(`wait.${bar.what}`, say('prediction.cycle.waits'));
  return label.length * letterWidth < wide ? label : '';
};

/** Who works and who waits, with what holds each floor in words. */
export const cyclePart = (
  floors: readonly ShownFloor[],
  citations: Citations,
  paper: PaperWords,
): CyclePart => {
  const holds = floors.map(({ floor }) => {
    const chain = chainSentence(floor.hold, paper);
    const hold = holdSentence(floor, paper);
    return paper.say('prediction.hold.of', {
      floor: floor.name,
      hold: chain === undefined ? hold : `${hold}; ${chain}`,
    });
  });
  const drawn = floors.filter(({ floor }) => floor.cycle.length > 0);
  const longest = Math.max(0, ...drawn.flatMap(({ floor }) => floor.cycle.map(({ to }) => to)));
  if (longest === 0) return { holds };
  const share = (time: number): number => time / longest;
  return {
    holds,
    chart: {
      alt: paper.say('prediction.cycle.alt', { floors: holds.join(' ') }),
      floors: drawn.map(({ floor, hue }) => ({
        hue,
        title: paper.say('prediction.cycle.title', {
          floor: floor.name,
          cycle: paper.quantity(Math.max(...floor.cycle.map(({ to }) => to)), 'time', 3).text,
        }),
        stations: [...new Set(floor.cycle.map(({ station }) => station))].map((station) => ({
          name: shortened(paper.station(station), roomForStation),
          bars: floor.cycle
            .filter((bar) => bar.station === station)
            .map((bar) => ({
              from: share(bar.from),
              to: share(bar.to),
              state: bar.state,
              label: labelOf(bar, share(bar.to) - share(bar.from), paper),
            })),
        })),
      })),
      workings: chartWorkings(drawn, ['cycle'], citations),
      ticks: ticksOf(longest, (n) => paper.say('prediction.seconds', { n })),
    },
  };
};
