import { bookUnits } from '../book/book-units.ts';
import type { Book } from '../book/index.ts';
import {
  type BoxLacks,
  endMark,
  endText,
  energisingLacks,
  type FaultEnd,
  faultSentence,
  type JoinEnd,
  type JoinFault,
  type LaidJoin,
  printedCode,
  type StagePlan,
  type Stop,
} from '../joins/index.ts';
import { shown } from '../quantity/shown.ts';
import { placementsText } from './placements-text.ts';
import { textTable } from './text-table.ts';
import type { ToldJoins } from './told-joins.ts';
import { words } from './words.ts';
import type { World } from './world.ts';

/** A table wants a mark where nothing is said of an end. */
const toldEnd = (end: JoinEnd): string =>
  endText({ ...end, label: end.label ?? end.on ?? words.say('joins.end.none') }, words.say);

/** The ends of one join stand together: `J-1: X1:14 (+S1), X2:14 (+S2)`. */
const endsText = (ends: readonly FaultEnd[]): string =>
  [...new Set(ends.map(({ join }) => join))]
    .map((join) => {
      const own = ends.filter((end) => end.join === join);
      return `${join}: ${own.map(toldEnd).join(', ')}`;
    })
    .join('; ');

/** A fault as a sentence, with both ends of each join that it is about. */
export const faultText = (fault: JoinFault): string => {
  const { ends } = fault;
  const sentence = faultSentence(fault, words.say);
  return ends.length === 0 ? `${sentence}.` : `${sentence}. ${endsText(ends)}.`;
};

const countsOf = (keys: readonly string[]): ReadonlyMap<string, number> => {
  const counts = new Map<string, number>();
  for (const key of keys) counts.set(key, (counts.get(key) ?? 0) + 1);
  return counts;
};

const stateOf = ({ states }: ToldJoins, tag: string): string => {
  const state = states.get(tag);
  return state === undefined ? 'none' : state.conflict ? 'conflict' : state.state;
};

/** What was read last, with how. */
const readingText = ({ states }: ToldJoins, tag: string): string =>
  (states.get(tag)?.last ?? [])
    .flatMap(({ method, reading }) =>
      reading === undefined ? [] : [[method, reading].filter(Boolean).join(' ')],
    )
    .join('; ');

const joinRow = (join: LaidJoin, told: ToldJoins): readonly string[] => [
  printedCode(join.code),
  join.tag,
  toldEnd(join.from),
  toldEnd(join.to),
  endMark(join.from),
  words.say(`joins.state.${stateOf(told, join.tag)}`),
  readingText(told, join.tag),
];

const stopHead = ({ box, unplaced }: Stop): string =>
  box === undefined
    ? words.say('joins.box.none')
    : words.say(unplaced ? 'joins.box.unplaced' : 'joins.box', { box });

const stageText = (plan: StagePlan, told: ToldJoins, wanted: string | undefined): readonly string[] => {
  const byTag = new Map(told.joins.map((join) => [join.tag, join]));
  const stops = plan.stops.filter(({ box }) => wanted === undefined || box === wanted);
  const stage = words.say(`joins.stage.${plan.stage}`);
  const n = stops.reduce((sum, { joins }) => sum + joins.length, 0);
  const head = [
    ...(plan.sections.length === 0 || wanted !== undefined
      ? []
      : [words.say('joins.stage.sections', { stage, sections: plan.sections.join(', ') })]),
    ...(n === 0 ? [] : [words.say('joins.stage.head', { stage, n })]),
  ];
  return head.length === 0
    ? []
    : [
        [
          ...head,
          ...stops.flatMap((stop) => [
            `  ${stopHead(stop)}`,
            textTable(stop.joins.map((tag) => joinRow(byTag.get(tag)!, told))),
          ]),
        ].join('\n'),
      ];
};

/** Names beyond this many are counted. */
const mostNames = 4;

const lacksText = ({ box, lacks }: BoxLacks): string => {
  const name = box ?? words.say('joins.box.none');
  if (lacks.length === 0)
    return words.say('joins.energising.box', { box: name, lacks: words.say('joins.energising.recorded') });
  const counts = countsOf(lacks.map(({ why }) => why));
  const sorts = energisingLacks.flatMap((why) => {
    const n = counts.get(why);
    if (n === undefined) return [];
    const of = lacks.filter((lack) => lack.why === why).map(({ join }) => join);
    const joins = [...of.slice(0, mostNames), ...(of.length > mostNames ? ['…'] : [])].join(', ');
    return [words.say('joins.energising.lack', { why: words.say(`joins.lack.${why}`), n, joins })];
  });
  return words.say('joins.energising.box', { box: name, lacks: sorts.join('; ') });
};

const summaryText = (told: ToldJoins): readonly string[] => {
  if (told.joins.length === 0) return [words.say('joins.none')];
  const kinds = [...countsOf(told.joins.map(({ kind }) => kind ?? 'other'))].map(([kind, n]) =>
    words.say(`joins.kind.${kind}`, { n }),
  );
  const states = [...countsOf(told.joins.map(({ tag }) => stateOf(told, tag)))].map(
    ([state, n]) => `${words.say(`joins.state.${state}`)} ${n}`,
  );
  return [
    [
      words.say('joins.counted', { n: told.joins.length, kinds: kinds.join(', ') }),
      words.say('joins.states', { states: states.join(', ') }),
    ].join('\n'),
  ];
};

const faultsText = (book: Book, { faults, joins }: ToldJoins): readonly string[] => {
  if (joins.length === 0) return [];
  const colours =
    book.agreement?.conductorColours === undefined && joins.some(({ kind }) => kind === 'conductor');
  return [
    [
      words.say('joins.faults', { n: faults.length }),
      ...faults.map((fault) => `  ${faultText(fault)}`),
      ...(colours ? [words.say('joins.coloursUnsaid')] : []),
    ].join('\n'),
  ];
};

/** Everything that is told of the joins; of one box where it is asked for. */
export const joinsTextOf = (book: Book, told: ToldJoins, box: string | undefined, world: World): string => {
  const { schedule, boxes } = told;
  const byTag = new Map(told.joins.map((join) => [join.tag, join]));
  const before =
    box === undefined && schedule.beforeShipping.length > 0
      ? [
          `${words.say('joins.before')}\n${textTable(
            schedule.beforeShipping.map((tag) => {
              const { kind = 'other', from } = byTag.get(tag)!;
              return [tag, kind, toldEnd(from), words.say(`joins.state.${stateOf(told, tag)}`)];
            }),
          )}`,
        ]
      : [];
  const lacks = boxes.filter((one) => box === undefined || one.box === box);
  const length = shown(schedule.distance, 'length', bookUnits(book, undefined), world.locale);
  return [
    ...(book.about?.title === undefined ? [] : [words.say('joins.title', { title: book.about.title })]),
    ...summaryText(told),
    ...faultsText(book, told),
    ...before,
    ...schedule.stages.flatMap((plan) => stageText(plan, told, box)),
    ...(told.joins.length === 0 || box !== undefined
      ? []
      : [
          schedule.distance === 0
            ? words.say('joins.way.unknown')
            : words.say(schedule.inRow ? 'joins.way.row' : 'joins.way', { distance: length }),
        ]),
    ...placementsText(told, box),
    ...(lacks.length === 0
      ? []
      : [`${words.say('joins.energising')}\n${lacks.map((one) => `  ${lacksText(one)}`).join('\n')}`]),
    words.say('joins.caution'),
  ]
    .join('\n\n')
    .concat('\n');
};
