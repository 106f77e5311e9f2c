import type { FloorAssessment, Hold } from '../../floor/assessment.ts';
import type { PaperWords } from '../paper-words.ts';

const seconds = (value: number, { quantity }: PaperWords): string => quantity(value, 'time', 3).text;

/** `held by the fill, 8.36 s in every cycle`. */
export const holdSentence = ({ hold }: FloorAssessment, paper: PaperWords): string => {
  if (hold === undefined) return paper.say('hold.none');
  const parts = { seconds: seconds(hold.waits, paper), station: paper.station(hold.station) };
  return paper.sayOr(`hold.by.${hold.by}`, paper.say('hold.by.other', parts), parts);
};

/** `pace set by the washer's stroke 1.8 s, then …`; nothing where it is not known. */
export const chainSentence = (hold: Hold | undefined, paper: PaperWords): string | undefined => {
  const steps = (hold?.chain ?? [])
    .filter((step) => step.seconds > 0)
    .map((step) => {
      const what =
        step.lane === undefined
          ? paper.sayOr(`step.${step.step}`, step.step)
          : paper.say('step.lane', { lane: step.lane });
      return paper.say('hold.step', { what, seconds: seconds(step.seconds, paper) });
    });
  const [first, ...rest] = steps;
  if (first === undefined) return undefined;
  const all = rest.reduce((before, next) => paper.say('hold.then', { first: before, next }), first);
  return paper.say('hold.chain', { steps: all });
};
