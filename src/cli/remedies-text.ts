import { placeText } from '../book/place-text.ts';
import type { FloorAssessment, Remedy, RemedyChange } from '../floor/assessment.ts';
import { formatNumber } from '../quantity/index.ts';
import { nameOnFloor } from './finding-names.ts';
import { figureName, type Told } from './told.ts';
import { words } from './words.ts';

const leverText = ({ lever, text }: RemedyChange): string =>
  `${words.has(`lever.${lever}`) ? words.say(`lever.${lever}`) : lever} ${text}`;

const remedyText = (
  { changes, nextSmaller, path, breaks }: Remedy,
  floors: readonly FloorAssessment[],
  { book, world }: Told,
): string => {
  const place = placeText(book, path);
  if (changes.length === 0) return `    ${words.say('assess.remedy.none', { place })}`;
  const misses = (share: number) => formatNumber(Math.abs(share) * 100, world.locale, 2);
  const next =
    nextSmaller?.margin === undefined
      ? ''
      : `; ${words.say(nextSmaller.margin >= 0 ? 'assess.remedy.narrow' : 'assess.remedy.next', { text: nextSmaller.text, margin: misses(nextSmaller.margin) })}`;
  const harm = breaks
    .map(({ floor, finding }) => {
      const there = floors.find((one) => one.floor === floor);
      return `${there === undefined ? figureName(finding) : nameOnFloor(book, there, finding)} (${floor})`;
    })
    .join(', ');
  const broken = harm === '' ? '' : `; ${words.say('assess.remedy.breaks', { what: harm })}`;
  const [change = '', ...others] = changes.map(leverText);
  const all = others.reduce((first, second) => words.say('assess.remedy.both', { first, second }), change);
  return `    ${words.say('assess.remedy', { change: all, place })}${next}${broken}`;
};

/** What would carry each finding that is short, floor by floor. */
export const remediesText = (
  floors: readonly FloorAssessment[],
  remedies: readonly Remedy[],
  told: Told,
): string => {
  const rank = (one: Remedy): number => (one.changes.length === 0 ? 2 : one.breaks.length > 0 ? 1 : 0);
  const of = (floor: string, finding: string) =>
    remedies
      .filter((one) => one.floor === floor && one.finding === finding)
      .toSorted((a, b) => rank(a) - rank(b));
  return [
    words.say('assess.remedies'),
    ...floors.flatMap((one) =>
      [...one.findings, ...one.utilities.findings]
        .filter(({ id }) => of(one.floor, id).length > 0)
        .flatMap(({ id }) => [
          `  ${one.name}, ${nameOnFloor(told.book, one, id)}`,
          ...of(one.floor, id).map((each) => remedyText(each, floors, told)),
        ]),
    ),
  ].join('\n');
};
