import type { Finding, Remedy, RemedyChange } from '../../floor/assessment.ts';
import { answerText, smallerText } from '../answer-text.ts';
import { findingName, marginText } from '../finding-texts.ts';
import type { PaperWords } from '../paper-words.ts';
import { type ShownFloor, verdictText } from './spine.ts';

export interface PrintedRemedy {
  readonly what: string;
  readonly where: string;
  readonly next: string;
  readonly breaks?: string;
}

/** What would carry one finding of one floor, or several that have the same answer. */
export interface RemedyGroup {
  readonly hue: number;
  readonly floor: string;
  readonly findings: readonly { readonly name: string; readonly verdict: string }[];
  readonly remedies: readonly PrintedRemedy[];
  /** Places whose levers carry nothing alone. */
  readonly idle: readonly string[];
}

const changeText = (change: RemedyChange, paper: PaperWords): string =>
  paper.say('prediction.remedy.change', {
    lever: paper.sayOr(`lever.${change.lever}`, change.lever),
    answer: answerText(change, paper),
  });

const nextText = (remedy: Remedy, paper: PaperWords): string => {
  const { nextSmaller } = remedy;
  const { say, percent } = paper;
  if (nextSmaller?.margin === undefined) return smallerText(remedy, paper);
  const is = nextSmaller.margin >= 0 ? 'narrow' : 'short';
  return say(`prediction.remedy.next.${is}`, {
    text: smallerText(remedy, paper),
    percent: percent(Math.abs(nextSmaller.margin)),
  });
};

const printed = (remedy: Remedy, floors: readonly ShownFloor[], paper: PaperWords): PrintedRemedy => {
  const [first = '', ...others] = remedy.changes.map((change) => changeText(change, paper));
  const harm = remedy.breaks
    .map(({ floor, finding }) => {
      const there = floors.find((one) => one.floor.floor === floor)?.floor;
      return paper.say('prediction.remedies.of', {
        floor: there?.name ?? floor,
        finding: there === undefined ? paper.name(finding) : findingName(finding, there, paper),
      });
    })
    .join('; ');
  return {
    what: others.reduce(
      (before, second) => paper.say('prediction.remedy.pair', { first: before, second }),
      first,
    ),
    where: paper.place(remedy.path),
    next: nextText(remedy, paper),
    ...(harm === '' ? {} : { breaks: paper.say('prediction.remedy.breaks', { what: harm }) }),
  };
};

const groupOf = (
  finding: Finding,
  { floor, hue }: ShownFloor,
  floors: readonly ShownFloor[],
  remedies: readonly Remedy[],
  paper: PaperWords,
): RemedyGroup => {
  const mine = remedies.filter((one) => one.floor === floor.floor && one.finding === finding.id);
  const carrying = mine
    .filter(({ changes }) => changes.length > 0)
    .toSorted((a, b) => a.breaks.length - b.breaks.length);
  const idle = mine.filter(({ changes }) => changes.length === 0);
  const verdict = [verdictText(finding, paper), marginText(finding, paper)].filter(
    (part) => part !== undefined,
  );
  return {
    hue,
    floor: floor.name,
    findings: [{ name: paper.name(finding.id), verdict: verdict.join(', ') }],
    remedies: carrying.map((one) => printed(one, floors, paper)),
    idle: idle.map(({ path }) => paper.place(path)),
  };
};

const sameAnswer = (a: RemedyGroup, b: RemedyGroup): boolean =>
  a.hue === b.hue &&
  a.remedies.length > 0 &&
  JSON.stringify(a.remedies.map(({ what, where }) => [what, where])) ===
    JSON.stringify(b.remedies.map(({ what, where }) => [what, where]));

/** Finding by finding what would carry it, what breaks nothing else first; findings with one answer stand together. */
export const remedyGroups = (
  floors: readonly ShownFloor[],
  remedies: readonly Remedy[],
  paper: PaperWords,
): readonly RemedyGroup[] => {
  const groups: RemedyGroup[] = [];
  for (const shown of floors) {
    for (const finding of shown.floor.findings) {
      if (finding.verdict !== 'short') continue;
      const group = groupOf(finding, shown, floors, remedies, paper);
      const at = groups.findIndex((one) => sameAnswer(one, group));
      const twin = groups[at];
      if (twin === undefined) groups.push(group);
      else {
        groups[at] = {
          ...twin,
          findings: [...twin.findings, ...group.findings],
          idle: [...new Set([...twin.idle, ...group.idle])],
        };
      }
    }
  }
  return groups;
};
