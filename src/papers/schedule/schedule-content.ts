import type { Join } from '../../book/index.ts';
import {
  type BoxLacks,
  boxPictures,
  endMark,
  endText,
  energisingLacks,
  faultsOfJoins,
  type JoinState,
  joinStates,
  type LaidJoin,
  lacksOfBoxes,
  laidJoins,
  printedCode,
  type Schedule,
  type StagePlan,
  type Stop,
  scheduleOf,
} from '../../joins/index.ts';
import { type BookQuantity, readEntry } from '../../quantity/index.ts';
import type { Envelope } from '../../record/envelope.ts';
import { asWritten } from '../as-written.ts';
import { type PaperHead, type PaperOptions, paperHead, subtitleOf } from '../paper-head.ts';
import type { PaperWords } from '../paper-words.ts';
import { type PicturesAtHand, pictureParts, type ScheduledPicture } from './picture-parts.ts';

/** Whether something was done, by the records; `open` has a box to tick. */
interface Done {
  readonly is: 'open' | 'done' | 'trouble' | 'conflict';
  readonly text: string;
}

/** One join on the schedule, as it is looked for at the box. */
interface JoinLine {
  readonly code: string;
  readonly mark: string;
  readonly what: string;
  readonly size: string;
  readonly from: string;
  readonly to: string;
  readonly cable: string;
  readonly asked: string;
  readonly made: Done;
  readonly tested: Done;
}

/** What is made at one stop before one walks on. */
interface StopPart {
  readonly title: string;
  readonly caution: string;
  /** What keeps the box from being energised; only where conductors are joined. */
  readonly lacks?: string;
  readonly pictures: readonly ScheduledPicture[];
  /** Frames for photographs that are not there. */
  readonly frames: readonly string[];
  readonly lines: readonly JoinLine[];
}

export interface ScheduleContent {
  readonly head: PaperHead;
  readonly subtitle: string;
  readonly about: string;
  readonly order: readonly {
    readonly stage: string;
    readonly what: string;
    readonly way: string;
    readonly caution: string;
  }[];
  readonly way: string;
  readonly before: readonly { readonly code: string; readonly what: string; readonly done: Done }[];
  readonly energising: readonly { readonly box: string; readonly lacks: string }[];
  /** Said in place of the list where nothing is recorded. */
  readonly unrecorded?: string;
  readonly stops: readonly StopPart[];
  readonly words: Readonly<Record<string, string>>;
}

/** What the schedule is made from besides the book. */
export interface ScheduleAsked {
  readonly records: readonly Envelope[];
  readonly pictures: PicturesAtHand;
  /** Name of the floor on which the line is rebuilt. */
  readonly floor?: string | undefined;
}

/** Joins beyond this many are counted: a line that nobody reads tells nothing. */
const mostNamed = 6;

const sizeText = ({ from, to }: LaidJoin, paper: PaperWords): string => {
  const one = asWritten(endMark(from), paper);
  const other = asWritten(endMark(to), paper);
  return one === other || other === '' ? one : `${one} / ${other}`;
};

const torqueText = (torque: BookQuantity, paper: PaperWords): string => {
  const read = readEntry(torque, 'torque', { path: '' });
  return read.ok ? paper.quantity(read.value.value, 'torque', 3).text : '';
};

const askedText = (join: Join | undefined, paper: PaperWords): string =>
  [join?.torque === undefined ? '' : torqueText(join.torque, paper), join?.test ?? '']
    .filter((one) => one !== '')
    .join(', ');

const open: Done = { is: 'open', text: '' };

/** How a join stands in its two columns. */
const doneOf = (
  state: JoinState | undefined,
  paper: PaperWords,
): { readonly made: Done; readonly tested: Done } => {
  if (state === undefined || state.state === 'parted') return { made: open, tested: open };
  const reading = state.last
    .flatMap(({ reading: one }) => (one === undefined ? [] : [asWritten(one, paper)]))
    .join('; ');
  if (state.conflict || state.state === 'trouble') {
    const is = state.conflict ? 'conflict' : 'trouble';
    return { made: open, tested: { is, text: paper.say(`joins.state.${is}`) } };
  }
  const made: Done = { is: 'done', text: '' };
  return { made, tested: state.state === 'tested' ? { is: 'done', text: reading } : open };
};

const namedLacks = ({ lacks }: BoxLacks, codes: ReadonlyMap<string, string>, { say }: PaperWords): string => {
  const sorts = energisingLacks.flatMap((why) => {
    const of = lacks.filter((one) => one.why === why).map(({ join }) => codes.get(join) ?? join);
    if (of.length === 0) return [];
    const joins = [...of.slice(0, mostNamed), ...(of.length > mostNamed ? ['…'] : [])].join(', ');
    return [say('schedule.energising.lack', { why: say(`joins.lack.${why}`), n: of.length, joins })];
  });
  return sorts.join('; ');
};

const orderOf = ({ stages }: Schedule, paper: PaperWords): ScheduleContent['order'] => {
  const { say, quantity } = paper;
  return stages.map(({ stage, sections, stops, distance }) => ({
    stage: say(`joins.stage.${stage}`),
    what: [
      ...sections,
      ...stops.map(({ box, joins }) =>
        say(box === undefined ? 'schedule.order.outside' : 'schedule.order.stop', {
          box: box ?? '',
          n: joins.length,
        }),
      ),
    ].join(', '),
    way: distance === 0 ? '' : quantity(distance, 'length', 2).text,
    caution: say(`schedule.caution.${stage}`),
  }));
};

const wordKeys = [
  'none',
  'order',
  'order.stage',
  'order.what',
  'order.way',
  'order.caution',
  'before',
  'before.join',
  'before.what',
  'before.done',
  'energising',
  'energising.box',
  'energising.lacks',
  'col.code',
  'col.what',
  'col.size',
  'col.from',
  'col.to',
  'col.cable',
  'col.asked',
  'col.made',
  'col.tested',
] as const;

/** Stages in which conductors are joined, so that a box could come to life. */
const electric: ReadonlySet<StagePlan['stage']> = new Set(['power', 'signals']);

/** Everything that stands on the connection schedule, in walking order; it needs neither records nor photographs. */
export const scheduleContent = (
  { records, pictures, floor }: ScheduleAsked,
  options: PaperOptions,
  paper: PaperWords,
): ScheduleContent => {
  const { say, book } = paper;
  const joins = laidJoins(book);
  const byTag = new Map(joins.map((join) => [join.tag, join]));
  const codes = new Map(joins.map(({ tag, code }) => [tag, printedCode(code)]));
  const inBook = new Map((book.line?.joins ?? []).map((join) => [join.tag, join]));
  const boxNames = new Map((book.line?.boxes ?? []).map(({ tag, name }) => [tag, name]));
  const states = joinStates(records);
  const plan = scheduleOf(joins, book);
  const boxes = lacksOfBoxes(joins, states, faultsOfJoins(joins, book));
  const boxText = (box: string): string => [box, boxNames.get(box)].filter(Boolean).join(' ');
  const whatText = ({ name, kind = 'other', potential = '' }: LaidJoin): string => {
    const named = name ?? say(`joins.name.${kind}`);
    // `conveyor -M3, L1` says already what it carries
    return potential === '' || named.includes(potential) ? named : `${named}, ${potential}`;
  };
  const lineOf = (join: LaidJoin): JoinLine => ({
    code: codes.get(join.tag) ?? '',
    mark: join.label ?? join.tag,
    what: whatText(join),
    size: sizeText(join, paper),
    from: endText(join.from, paper.say),
    to: endText(join.to, paper.say),
    cable: [join.cable, join.core].filter(Boolean).join('.'),
    asked: askedText(inBook.get(join.tag), paper),
    ...doneOf(states.get(join.tag), paper),
  });
  const partsOf = pictureParts(boxPictures(records), pictures, codes, boxText, paper);
  const framed = new Set<string>();
  const stopPart = (stage: StagePlan['stage'], { box, joins: tags }: Stop): StopPart => {
    const here = tags.flatMap((tag) => byTag.get(tag) ?? []);
    const first = box !== undefined && !framed.has(box);
    if (box !== undefined) framed.add(box);
    const { shown, frames } = partsOf(box, here, first);
    const own = electric.has(stage) ? boxes.find((one) => one.box === box) : undefined;
    const lacks = own === undefined || states.size === 0 ? '' : namedLacks(own, codes, paper);
    const named = say(`joins.stage.${stage}`);
    return {
      title:
        box === undefined
          ? say('schedule.stop.outside', { stage: named })
          : say('schedule.stop', { stage: named, box: boxText(box) }),
      caution: say(`schedule.caution.${stage}`),
      pictures: shown,
      frames,
      lines: here.map(lineOf),
      ...(lacks === '' ? {} : { lacks: say('schedule.stop.lacks', { box: box ?? '', lacks }) }),
    };
  };
  const distance = paper.quantity(plan.distance, 'length', 2).text;
  return {
    head: { ...paperHead(say('schedule.title'), options, paper), caution: say('schedule.foot') },
    subtitle: subtitleOf(paper),
    about: floor === undefined ? say('schedule.about.nowhere') : say('schedule.about', { floor }),
    order: joins.length === 0 ? [] : orderOf(plan, paper),
    way:
      plan.distance === 0
        ? say('schedule.way.unknown')
        : say(plan.inRow ? 'schedule.way.row' : 'schedule.way', { distance }),
    before: plan.beforeShipping.flatMap((tag) => {
      const join = byTag.get(tag);
      if (join === undefined) return [];
      const what = [whatText(join), endText(join.from, paper.say)].filter((one) => one !== '').join(', ');
      const { made, tested } = doneOf(states.get(tag), paper);
      return [{ code: codes.get(tag) ?? '', what, done: tested.is === 'open' ? made : tested }];
    }),
    energising:
      states.size === 0
        ? []
        : boxes.map((one) => ({
            box: one.box === undefined ? say('schedule.box.none') : boxText(one.box),
            lacks: namedLacks(one, codes, paper) || say('schedule.energising.recorded'),
          })),
    ...(states.size === 0 ? { unrecorded: say('schedule.energising.none') } : {}),
    stops: plan.stages.flatMap(({ stage, stops }) => stops.map((stop) => stopPart(stage, stop))),
    words: {
      ...Object.fromEntries(wordKeys.map((key) => [key, say(`schedule.${key}`)])),
      care: say('paper.care'),
      caution: say('joins.caution'),
    },
  };
};
