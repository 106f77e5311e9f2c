import { placeText } from '../book/place-text.ts';
import type { Assessment, FloorAssessment, Remedy } from '../floor/assessment.ts';
import { comparisonText } from './comparison-text.ts';
import { holdText } from './hold-text.ts';
import { lanesText } from './lanes-text.ts';
import { remediesText } from './remedies-text.ts';
import type { Told } from './told.ts';
import { words } from './words.ts';

/** What the reader must know beside the figures: notes, what was assumed and what is not known. */
const remarks = (floor: FloorAssessment, { book }: Told): readonly string[] => {
  const { name, figures, findings } = floor;
  const notes = [...floor.notes, ...findings.flatMap((finding) => finding.notes)];
  const paths = (of: 'assumed' | 'missing') => [
    ...new Set(Object.values(figures).flatMap((figure) => figure[of])),
  ];
  const places = (of: readonly string[]) => of.map((path) => placeText(book, path)).join('; ');
  const assumed = paths('assumed');
  const missing = paths('missing');
  const sentences = [
    ...new Set(notes.map(({ code, parts }) => words.say(code, parts))),
    ...(assumed.length === 0
      ? []
      : [words.say('assess.assumed', { count: assumed.length, paths: places(assumed) })]),
    ...(missing.length === 0 ? [] : [words.say('assess.missing', { paths: places(missing) })]),
  ];
  return sentences.map((sentence) => `  ${name}: ${sentence}`);
};

const heading = ({ book }: Told, format: string): string => {
  const { title, builder, customer, demonstration } = book.about ?? {};
  const parts = [
    title,
    builder === undefined || customer === undefined
      ? undefined
      : words.say('assess.from', { builder, customer }),
    words.say('assess.format', { format }),
  ];
  const line = parts.filter((part) => part !== undefined).join(', ');
  return demonstration === undefined ? line : `${line}\n${demonstration}`;
};

/** The floors of a book side by side: figures with verdicts in words, lanes, what holds, what would carry it. */
export const assessText = (
  { format, floors }: Assessment,
  remedies: readonly Remedy[] | undefined,
  told: Told,
): string => {
  const said = floors.flatMap((floor) => remarks(floor, told));
  return [
    heading(told, format),
    ...comparisonText(floors, told),
    ...(floors.some(({ findings }) => findings.some(({ ifSaid }) => ifSaid))
      ? [words.say('assess.ifSaid')]
      : []),
    `${words.say('assess.holds')}\n${floors.map((floor) => holdText(floor, told)).join('\n')}`,
    ...floors.filter(({ lanes }) => lanes.length > 0).map((floor) => lanesText(floor, told)),
    ...(remedies === undefined || remedies.length === 0 ? [] : [remediesText(floors, remedies, told)]),
    ...(said.length === 0 ? [] : [said.join('\n')]),
    words.say('assess.caution'),
  ]
    .join('\n\n')
    .concat('\n');
};
