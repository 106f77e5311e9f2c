import { placeText } from '../book/place-text.ts';
import type { Assessment, FloorAssessment, Remedy } from '../floor/assessment.ts';
import { placesBehind } from '../floor/questions/index.ts';
import type { Utility, UtilityFinding } from '../floor/utilities/utility-finding.ts';
import { formatNumber, type Kind } from '../quantity/index.ts';
import { shown } from '../quantity/shown.ts';
import { drawName, nameOnFloor, questionName } from './finding-names.ts';
import { refusalSentences } from './refusal-text.ts';
import { remediesText } from './remedies-text.ts';
import { textTable } from './text-table.ts';
import { figureText, type Told } from './told.ts';
import { utilitiesIn } from './utilities-document.ts';
import { words } from './words.ts';

/** What is asked or there: words where they are words, nothing where a verdict needs no number. */
const side = (finding: UtilityFinding, which: 'demand' | 'have', told: Told): string => {
  const figure = finding[which];
  const said = finding.said?.[which];
  if (figure.value === undefined && (said !== undefined || finding.verdict !== 'unknown')) return said ?? '';
  // a word beside a number says of what it is: the door that is the narrowest
  return [figureText(figure, told), ...(said === undefined ? [] : [said])].join(', ');
};

/** Kinds whose zero is not nothing, with the kind of their differences: no share can be taken of them. */
const differences: Partial<Record<Kind, Kind>> = { temperature: 'temperatureDifference' };

const marginText = ({ margin, gap, demand }: UtilityFinding, { wishes, world }: Told): string => {
  const kind = differences[demand.kind];
  if (kind === undefined && margin !== undefined) {
    const percent = formatNumber(margin * 100, world.locale, 2);
    return words.say('assess.margin', { margin: `${margin > 0 ? '+' : ''}${percent}` });
  }
  if (gap === undefined) return '';
  const size = shown(Math.abs(gap), kind ?? demand.kind, wishes, world.locale, 2);
  return words.say(gap < 0 ? 'utilities.lacking' : 'utilities.spare', { gap: size });
};

const verdictText = (finding: UtilityFinding, told: Told): string => {
  const verdict = words.say(`verdict.${finding.verdict}`);
  const margin = finding.verdict === 'unknown' ? '' : marginText(finding, told);
  return `${margin === '' ? verdict : `${verdict}, ${margin}`}${finding.ifSaid ? ' *' : ''}`;
};

/** One row a question of one trade on one floor. */
const questionsTable = (findings: readonly UtilityFinding[], told: Told): string =>
  textTable([
    ['question', 'asks', 'has', 'verdict'].map((id) => words.say(`utilities.${id}`)),
    ...findings.map((finding) => [
      questionName(told.book, finding),
      side(finding, 'demand', told),
      side(finding, 'have', told),
      verdictText(finding, told),
    ]),
  ]);

/** Why a question is open, what a sheet refused, and what must be known with an answer. */
const remarks = (findings: readonly UtilityFinding[], { book, wishes, world }: Told): readonly string[] => {
  const open = findings.flatMap((finding) => {
    const behind = placesBehind(finding);
    const question = questionName(book, finding);
    const places = (waits: 'missing' | 'unsure') =>
      behind.filter((each) => each.waits === waits).map(({ path }) => placeText(book, path));
    const missing = places('missing');
    const [unsure] = places('unsure');
    return [
      ...(missing.length === 0
        ? []
        : [words.say('utilities.missing', { question, places: missing.join('; ') })]),
      ...(unsure === undefined ? [] : [words.say('utilities.unsure', { question, place: unsure })]),
    ];
  });
  const refused = findings.flatMap((finding) =>
    finding.refusals.map((refusal) => {
      const question = questionName(book, finding);
      const places = refusal.places.map((path) => placeText(book, path)).join('; ');
      const problem = refusalSentences(refusal, wishes, world.locale).join(' ');
      return places === ''
        ? words.say('utilities.refusedWithin', { question, problem })
        : words.say('utilities.refused', { question, places, problem });
    }),
  );
  const notes = findings.flatMap((finding) => finding.notes.map(({ code, parts }) => words.say(code, parts)));
  return [...new Set([...open, ...refused, ...notes])].map((sentence) => `  ${sentence}`);
};

const tradeText = (floor: FloorAssessment, utility: Utility, told: Told): readonly string[] => {
  const findings = floor.utilities.findings.filter((one) => one.utility === utility);
  const figures = floor.utilities.figures.filter((one) => one.utility === utility);
  const known = figures.filter(({ figure, said }) => figure.value !== undefined || said !== undefined);
  if (findings.length === 0 && known.length === 0) return [];
  const about = remarks(findings, told);
  return [
    [
      `${floor.name} (${words.say(`role.${floor.role}`)}): ${words.say(`utility.${utility}`)}`,
      ...(findings.length === 0 ? [] : [questionsTable(findings, told)]),
      ...about,
    ].join('\n'),
    ...(known.length === 0
      ? []
      : [
          textTable([
            [words.say('utilities.figure'), ''],
            ...known.map((one) => [drawName(told.book, one), one.said ?? figureText(one.figure, told)]),
          ]),
        ]),
  ];
};

const assumedText = ({ name, utilities }: FloorAssessment, { book }: Told): readonly string[] => {
  const figures = [
    ...utilities.findings.flatMap(({ demand, have }) => [demand, have]),
    ...utilities.figures.map(({ figure }) => figure),
  ];
  const assumed = [...new Set(figures.flatMap((figure) => figure.assumed))];
  if (assumed.length === 0) return [];
  const paths = assumed.map((path) => placeText(book, path)).join('; ');
  return [`  ${name}: ${words.say('assess.assumed', { count: assumed.length, paths })}`];
};

/** What is short and for which nothing is known that could be changed. */
const withoutRemedy = (floor: FloorAssessment, { book }: Told): readonly string[] =>
  floor.utilities.findings
    .filter(({ verdict, levers }) => verdict === 'short' && levers.length === 0)
    .map(({ id }) =>
      words.say('utilities.remedy.unknown', { floor: floor.name, name: nameOnFloor(book, floor, id) }),
    );

/** Each floor trade by trade: what the line asks, what is there, whether it carries and by how much. */
export const utilitiesText = (
  assessment: Assessment,
  remedies: readonly Remedy[] | undefined,
  { wishes, ...rest }: Told,
): string => {
  // a share is said in per cent
  const told: Told = { ...rest, wishes: { ...wishes, byKind: { ratio: '%', ...wishes.byKind } } };
  const { floors } = assessment;
  const trades = utilitiesIn(assessment);
  const assumed = floors.flatMap((floor) => assumedText(floor, told));
  const ifSaid = floors.some(({ utilities }) => utilities.findings.some((finding) => finding.ifSaid));
  const without = remedies === undefined ? [] : floors.flatMap((floor) => withoutRemedy(floor, told));
  return [
    ...floors.flatMap((floor) => {
      const parts = trades.flatMap((utility) => tradeText(floor, utility, told));
      return parts.length === 0 ? [words.say('utilities.none', { floor: floor.name })] : parts;
    }),
    ...(ifSaid ? [words.say('assess.ifSaid')] : []),
    ...(remedies === undefined || remedies.length === 0 ? [] : [remediesText(floors, remedies, told)]),
    ...(without.length === 0 ? [] : [without.join('\n')]),
    ...(assumed.length === 0 ? [] : [assumed.join('\n')]),
    [...trades.map((utility) => words.say(`utility.caution.${utility}`)), words.say('assess.caution')].join(
      '\n',
    ),
  ]
    .join('\n\n')
    .concat('\n');
};
