import { deficiencyIn, lotBottles } from '../../fill/lot-bottles.ts';
import type { Kind } from '../../quantity/index.ts';
import { readEntry } from '../../quantity/read-entry.ts';
import type { PaperWords } from '../paper-words.ts';
import { printedIn } from '../prediction/charts.ts';
import { type Tick, ticksBetween } from '../prediction/ticks.ts';
import type { CertifiedLot } from './fill-of.ts';

/** Every bottle of a lot as a dot on one axis, a strip for each lane; places are shares of the axis. */
export interface LotChart {
  readonly title: string;
  readonly alt: string;
  readonly ticks: readonly Tick[];
  /** The label, and what lies under it by once and twice the deficiency. */
  readonly limits: readonly Tick[];
  readonly lanes: readonly {
    readonly lane: string;
    /** Bottles that would lie on each other stand on each other. */
    readonly bottles: readonly { readonly at: number; readonly above: number; readonly short: boolean }[];
  }[];
}

interface Drawn {
  readonly lane: string;
  readonly value: number;
}

/** Room at both ends of the axis, as a share of what is drawn. */
const edge = 0.04;
/** Dots nearer than this share of the axis would lie on each other. */
const dot = 0.014;

const massOf = (text: string): number | undefined => {
  const read = readEntry(text, 'mass', { path: '' });
  return read.ok ? read.value.value : undefined;
};

/** The volumes of the worksheet; where no rule made them what the balance showed, gross less the bottle's own tare. */
const drawnOf = ({ given, lot, judged }: CertifiedLot): readonly [Kind, readonly Drawn[]] => {
  const volumes = lot === undefined || judged === undefined ? undefined : lotBottles(judged, lot);
  if (volumes !== undefined) {
    return ['volume', volumes.map(({ volume, lane = '' }) => ({ lane, value: volume }))];
  }
  const masses = given.packages.flatMap(({ gross, tare, lane = '' }) => {
    const [whole, empty] = [massOf(gross), tare === undefined ? undefined : massOf(tare)];
    return whole === undefined || empty === undefined ? [] : [{ lane, value: whole - empty }];
  });
  return ['mass', masses];
};

/** The chart of a lot; nothing where fewer than two bottles can be drawn. */
export const lotChart = (certified: CertifiedLot, paper: PaperWords): LotChart | undefined => {
  const { lot, judged } = certified;
  const [kind, drawn] = drawnOf(certified);
  if (drawn.length < 2) return undefined;
  const label = kind === 'volume' ? lot?.label : undefined;
  const deficiency =
    label === undefined || lot === undefined || judged === undefined ? undefined : deficiencyIn(judged, lot);
  const limits: readonly (readonly [word: string, value: number])[] =
    label === undefined
      ? []
      : [
          ['label', label],
          ...(deficiency === undefined
            ? []
            : ([
                ['once', label - deficiency],
                ['twice', label - 2 * deficiency],
              ] as const)),
        ];
  const values = drawn.map(({ value }) => value);
  const ends = [...values, ...limits.map(([, value]) => value)];
  const [low, high] = [Math.min(...ends), Math.max(...ends)];
  const room = edge * (high - low || Math.abs(high) || 1);
  const [first, last] = [low - room, high + room];
  const at = (value: number): number => (value - first) / (last - first);
  const { unit, scale } = printedIn(kind, high, paper);
  const shown = (value: number): string => paper.quantity(value, kind, 4).text;
  return {
    title: paper.say(`filled.lot.chart.${kind}`, { unit }),
    alt: paper.say('filled.lot.chart.alt', {
      n: drawn.length,
      low: shown(Math.min(...values)),
      high: shown(Math.max(...values)),
    }),
    ticks: ticksBetween(scale(first), scale(last), (value) => paper.number(value, 6)),
    limits: limits.map(([word, value]) => ({ at: at(value), text: paper.say(`filled.lot.limit.${word}`) })),
    lanes: [...new Set(drawn.map(({ lane }) => lane))].sort().map((lane) => {
      const taken = new Map<number, number>();
      return {
        lane,
        bottles: drawn
          .filter((one) => one.lane === lane)
          .map(({ value }) => {
            const column = Math.round(at(value) / dot);
            const above = taken.get(column) ?? 0;
            taken.set(column, above + 1);
            return { at: column * dot, above, short: label !== undefined && value < label };
          }),
      };
    }),
  };
};
