import type { Finding, FloorAssessment, Verdict } from '../../floor/assessment.ts';
import { type BarShape, barShape } from '../../floor/bar-shape.ts';
import { tellingDigits } from '../../floor/telling-digits.ts';
import { marginText } from '../finding-texts.ts';
import type { PaperWords } from '../paper-words.ts';
import type { Citations, Marks } from '../workings/citations.ts';
import { holdSentence } from './hold-sentence.ts';

/** A floor at the head of its side: what it makes, against what was agreed. */
export interface FloorHead {
  readonly hue: number;
  readonly title: string;
  readonly rate: { readonly number: string; readonly unit: string };
  readonly interval?: string;
  readonly verdict: string;
  readonly short: boolean;
  readonly hold: string;
  readonly runs?: string;
}

export interface PrintedBar extends BarShape {
  readonly most: boolean;
}

/** One finding on one floor. */
export interface SpineSide {
  readonly hue: number;
  readonly value: string;
  readonly interval?: string;
  readonly verdict: string;
  readonly margin?: string;
  readonly is: Verdict;
  readonly marks: string;
  readonly working: Marks;
  readonly bar: PrintedBar;
}

export interface SpineRow {
  readonly name: string;
  readonly sides: readonly (SpineSide | null)[];
}

/** Up to two floors facing each other. */
export interface Spread {
  readonly agreed: string;
  readonly heads: readonly FloorHead[];
  readonly rows: readonly SpineRow[];
}

/** A floor with the colour that it has throughout the paper. */
export interface ShownFloor {
  readonly floor: FloorAssessment;
  readonly hue: number;
}

export const verdictText = (finding: Finding, { say, quantity }: PaperWords): string => {
  const { demand, have, sense, verdict } = finding;
  if (demand.value === undefined) return say('verdict.unknown.none');
  const asked = { demand: quantity(demand.value, demand.kind, tellingDigits(finding)).text };
  if (verdict !== 'unknown') return say(`verdict.${sense}.${verdict}`, asked);
  if (have.value === undefined) return say('verdict.unknown.demand', asked);
  return say(sense === 'most' ? 'verdict.straddles.most' : 'verdict.straddles', asked);
};

export const restsOnAssumed = ({ have, demand }: Finding): boolean =>
  have.assumed.length > 0 || demand.assumed.length > 0;

const sideOf = (
  finding: Finding,
  { floor, hue }: ShownFloor,
  citations: Citations,
  paper: PaperWords,
): SpineSide => {
  const { have, demand, verdict, ifSaid, sense } = finding;
  const digits = tellingDigits(finding);
  const interval = paper.interval(have, digits);
  const margin = marginText(finding, paper);
  return {
    hue,
    value:
      have.value === undefined
        ? paper.say('paper.unknown')
        : paper.quantity(have.value, have.kind, digits).text,
    ...(interval === undefined ? {} : { interval }),
    verdict: verdictText(finding, paper),
    ...(margin === undefined ? {} : { margin }),
    is: verdict,
    marks: `${ifSaid ? '\u00a0*' : ''}${restsOnAssumed(finding) ? '\u00a0†' : ''}`,
    working: citations.mark(floor.floor, have.working, demand.working),
    bar: { ...barShape(finding), most: sense === 'most' },
  };
};

const headOf = ({ floor, hue }: ShownFloor, paper: PaperWords): FloorHead => {
  const rate = floor.figures.runningRate;
  const finding = floor.findings.find(({ id }) => id === 'runningRate');
  const digits = finding === undefined ? 4 : tellingDigits(finding);
  const shown = rate?.value === undefined ? undefined : paper.quantity(rate.value, 'rate', digits);
  const interval = rate === undefined ? undefined : paper.interval(rate, digits);
  return {
    hue,
    title: paper.say('prediction.floor', { floor: floor.name, role: paper.say(`role.${floor.role}`) }),
    rate: { number: shown?.number ?? paper.say('paper.unknown'), unit: shown?.unit ?? '' },
    ...(interval === undefined ? {} : { interval }),
    verdict: finding === undefined ? '' : verdictText(finding, paper),
    short: finding?.verdict === 'short',
    hold: holdSentence(floor, paper),
    ...(floor.liquid === undefined ? {} : { runs: runs(floor.liquid, paper) }),
  };
};

const runs = (tag: string, { book, say }: PaperWords): string => {
  const product = book.line?.products?.find((one) => one.tag === tag);
  return say('prediction.runs', { product: product?.name ?? tag });
};

const agreedOf = (floors: readonly ShownFloor[], paper: PaperWords): string => {
  const agreed = floors
    .map(({ floor }) => floor.figures.agreedRate ?? demandOf(floor))
    .find((one) => one?.value);
  return agreed?.value === undefined
    ? paper.say('prediction.agreed.none')
    : paper.quantity(agreed.value, 'rate', 4).text;
};

const demandOf = ({ findings }: FloorAssessment) => findings.find(({ id }) => id === 'runningRate')?.demand;

/** The findings of one or two floors, one row each, as they face each other. */
export const spreadOf = (floors: readonly ShownFloor[], citations: Citations, paper: PaperWords): Spread => {
  const ids = [...new Set(floors.flatMap(({ floor }) => floor.findings.map(({ id }) => id)))];
  return {
    agreed: agreedOf(floors, paper),
    heads: floors.map((one) => headOf(one, paper)),
    rows: ids.map((id) => ({
      name: paper.name(id),
      sides: floors.map((shown) => {
        const finding = shown.floor.findings.find((one) => one.id === id);
        return finding === undefined ? null : sideOf(finding, shown, citations, paper);
      }),
    })),
  };
};
