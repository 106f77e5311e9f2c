import type { Finding, FloorAssessment, Remedy } from '../../floor/assessment.ts';
import { answerText, smallerText } from '../answer-text.ts';
import { findingName } from '../finding-texts.ts';
import type { PaperWords } from '../paper-words.ts';

/** The size below, with what it misses: nobody can then buy one smaller and hope. */
const nextText = (remedy: Remedy, paper: PaperWords): string | undefined => {
  const { nextSmaller } = remedy;
  const { say, percent } = paper;
  if (nextSmaller?.margin === undefined) return undefined;
  const is = nextSmaller.margin >= 0 ? 'narrow' : 'short';
  return say(`preparation.fix.next.${is}`, {
    text: smallerText(remedy, paper),
    percent: percent(Math.abs(nextSmaller.margin)),
  });
};

const breaksText = (
  { breaks }: Remedy,
  floors: readonly FloorAssessment[],
  paper: PaperWords,
): string | undefined => {
  if (breaks.length === 0) return undefined;
  const names = breaks.map(({ floor, finding }) => {
    const there = floors.find((one) => one.floor === floor);
    return there === undefined
      ? paper.name(finding)
      : paper.say('prediction.remedies.of', {
          floor: there.name,
          finding: findingName(finding, there, paper),
        });
  });
  return paper.say('prediction.remedy.breaks', { what: names.join('; ') });
};

/**
 * The least change that carries a finding, of several the one that breaks least; that none does where all were tried, or where
 * nothing that could be tried is known.
 */
export const fixOf = (
  { id, verdict, levers }: Finding,
  floor: string,
  floors: readonly FloorAssessment[],
  remedies: readonly Remedy[],
  paper: PaperWords,
): string | undefined => {
  const tried = remedies.filter((one) => one.floor === floor && one.finding === id);
  const [best] = tried
    .filter(({ changes }) => changes.length > 0)
    .toSorted((a, b) => a.breaks.length - b.breaks.length);
  if (verdict === 'short' && levers.length === 0) return paper.say('preparation.fix.unknown');
  if (best === undefined) return tried.length === 0 ? undefined : paper.say('preparation.fix.none');
  const fix = best.changes
    .map((change) => `${paper.sayOr(`lever.${change.lever}`, change.lever)} ${answerText(change, paper)}`)
    .reduce((first, second) => paper.say('prediction.remedy.pair', { first, second }));
  const more = [nextText(best, paper), breaksText(best, floors, paper)].filter((each) => each !== undefined);
  return [paper.say('preparation.fix', { fix }), ...more].join('; ');
};
