import type { ReactElement } from 'react';
import type { Book } from '../../book/index.ts';
import type { FloorAssessment } from '../../floor/assessment.ts';
import { floorClass } from '../floors/floor-class.ts';
import { usePageState, useWords } from '../state/page-context.ts';
import type { UnitChoice } from '../state/page-state.ts';
import type { Words } from '../words/words.ts';

type Hold = NonNullable<FloorAssessment['hold']>;

/** The lane that is full last. */
const slowestLane = (floor: FloorAssessment): string | undefined =>
  [...floor.lanes].sort((a, b) => b.fillTime - a.fillTime)[0]?.lane;

/** The name of one step of a chain: from the catalogue, or as the line names it. */
export const stepName = (words: Words, step: string, floor: FloorAssessment): string => {
  const lane = step === 'fill' ? slowestLane(floor) : undefined;
  if (lane !== undefined) return words.say('step.lane', { lane });
  return words.has(`step.${step}`) ? words.say(`step.${step}`) : step;
};

/** "held by the fill, 6.2 s in every cycle" */
export const holdText = (words: Words, hold: Hold | undefined, units: UnitChoice, book: Book): string => {
  if (hold === undefined) return words.say('hold.none');
  const seconds = words.quantity(hold.waits, 'time', { units, book, unit: 's', digits: 3 }).text;
  const key = `hold.by.${hold.by}`;
  const station = book.line?.stations?.find(({ tag }) => tag === hold.station)?.name ?? hold.station;
  return words.say(words.has(key) ? key : 'hold.by.other', { seconds, station });
};

/** From the longest step on, up to the washer's stroke that it held: the part that one would tell a mechanic. */
const told = (chain: Hold['chain']): Hold['chain'] => {
  const longest = chain.reduce((at, step, i) => (step.seconds > (chain[at]?.seconds ?? 0) ? i : at), 0);
  const turned = [...chain.slice(longest), ...chain.slice(0, longest)];
  const stroke = turned.findIndex(({ step }) => step === 'stroke');
  return stroke < 0 ? turned : turned.slice(0, stroke + 1);
};

/** What sets the pace of a floor, in the mechanic's words. */
export const HoldSentence = ({
  book,
  floor,
}: {
  readonly book: Book;
  readonly floor: FloorAssessment;
}): ReactElement | null => {
  const words = useWords();
  const { units } = usePageState();
  const chain = told(floor.hold?.chain ?? []);
  if (chain.length === 0) return null;
  const names = chain.map((step, i) =>
    i > 0
      ? stepName(words, step.step, floor)
      : words.say('hold.step', {
          what: stepName(words, step.step, floor),
          seconds: words.quantity(step.seconds, 'time', { units, book, unit: 's', digits: 3 }).text,
        }),
  );
  const last = names.length > 1 ? names.at(-1) : undefined;
  const first = (last === undefined ? names : names.slice(0, -1)).join(', ');
  const steps = last === undefined ? first : words.say('hold.then', { first, next: last });
  return (
    <p className="small quiet">
      <span className={floorClass(book, floor.floor)}>{floor.name}</span> {words.say('hold.chain', { steps })}
    </p>
  );
};
