import type { Floor, Format } from '../../book/index.ts';
import type { FloorAssessment, Working } from '../../floor/assessment.ts';
import { type RegisterRow, type SettingRegister, settingWords } from '../../proof/settings/index.ts';
import { settingMoments } from '../../record/setting-moments.ts';
import { type PaperHead, type PaperOptions, paperHead } from '../paper-head.ts';
import type { PaperWords } from '../paper-words.ts';
import { allowedText, settingText } from '../setting-text.ts';
import type { Citations, Marks } from '../workings/citations.ts';

/** What the card of one floor and bottle is made from. */
export interface CardAsked {
  readonly register: SettingRegister;
  readonly floor: FloorAssessment;
}

/** A value on the card and where it comes from: as left, shipped, run-off, the book, or worked out. */
export interface CardValue {
  readonly name: string;
  readonly value: string;
  readonly from: string;
  readonly allowed: string;
  readonly mark: Marks;
}

/** What is drawn beside a part of the card. */
export type Sign = 'count' | 'gauge' | 'warmth' | 'clock' | 'start' | 'stop' | 'wait' | 'screen';

export interface CardContent {
  readonly head: PaperHead;
  readonly title: string;
  readonly subtitle: string;
  readonly presets: readonly CardValue[];
  readonly settings: readonly {
    readonly sign: Sign;
    readonly title: string;
    readonly of: readonly CardValue[];
  }[];
  readonly start: readonly string[];
  readonly stop: readonly string[];
  readonly waits: readonly { readonly seen: string; readonly look: string }[];
  readonly clean: readonly string[];
  readonly words: Readonly<Record<string, string>>;
}

const bySign: Readonly<Partial<Record<Sign, readonly string[]>>> = {
  warmth: ['temperature', 'heater', 'concentration'],
  gauge: ['regulator', 'supplyRegulator', 'airRegulator', 'cutIn', 'cutOut'],
  clock: ['dwell', 'drip', 'dump', 'changeOver'],
};

/** Whether a row belongs on the card of this bottle and floor; what an electrician or programmer sets does not. */
const isOn = ({ row }: RegisterRow, floor: string, format: string): boolean =>
  (row.format === undefined || row.format === format) && (row.floor === undefined || row.floor === floor);

/** Marks of the workings behind a value. */
type Marking = (...workings: readonly (Working | number | undefined)[]) => Marks;

/** The value that counts last, and who says so; empty with room to write where nobody does. */
const latestOf = (one: RegisterRow, mark: Marking, paper: PaperWords): Omit<CardValue, 'name'> => {
  const moment = settingMoments.findLast((at) => one.at[at] !== undefined);
  const said = moment === undefined ? undefined : one.at[moment];
  const from = moment === undefined ? (one.row.designed === undefined ? '' : 'book') : moment;
  return {
    value: settingText(one.row.form, said?.text ?? one.row.designed, paper),
    from: from === '' ? '' : paper.say(`card.from.${from.replace(/\W/g, '')}`),
    allowed: allowedText(one, paper),
    mark: mark(one.range.least?.working, one.range.most?.working),
  };
};

/** Counts of the lanes: what was left there, else what the book or the working says. */
const presetsOf = (
  { register, floor }: CardAsked,
  mark: Marking,
  paper: PaperWords,
): readonly CardValue[] => {
  const names = settingWords(paper.book, paper.say, paper.locale);
  return floor.lanes.map(({ lane, preset, presetFrom, workings }) => {
    const row = register.rows.find(
      (one) => one.row.sort === 'preset' && one.row.on === lane && isOn(one, floor.floor, floor.format),
    );
    const read = row === undefined ? undefined : latestOf(row, mark, paper);
    const known = read !== undefined && read.value !== '';
    return {
      name: names.thing(lane),
      value: known ? read.value : String(preset),
      from: known ? read.from : paper.say(presetFrom === 'book' ? 'card.from.book' : 'card.from.worked'),
      allowed: read?.allowed ?? '',
      mark: known ? read.mark : mark(workings.dose),
    };
  });
};

const strainersOf = (floor: Floor | undefined): readonly string[] =>
  [...(floor?.supply?.run ?? []), ...(floor?.water?.run ?? [])].flatMap(({ name }) =>
    name !== undefined && /strainer|screen|filter/i.test(name) ? [name] : [],
  );

const wordKeys = [
  'presets',
  'start',
  'stop',
  'waits',
  'clean',
  'common',
  'signed',
  'signed.by',
  'signed.day',
] as const;

/** Everything that stands on the operator's card: one page to be laminated and hung at the line. */
export const cardContent = (
  asked: CardAsked,
  options: PaperOptions,
  citations: Citations,
  paper: PaperWords,
): CardContent => {
  const { book, say } = paper;
  const { floor, register } = asked;
  const mark: Marking = (...workings) => citations.mark(floor.floor, ...workings);
  const names = settingWords(book, say, paper.locale);
  const format: Format | undefined = book.line?.formats?.find(({ tag }) => tag === floor.format);
  const stations = book.line?.stations ?? [];
  const has = (kind: string): boolean => stations.some((one) => one.kind === kind);
  const bath = stations.some(
    (one) =>
      one.kind === 'washer' && (one.zones ?? []).some(({ concentration }) => concentration !== undefined),
  );
  const chute = stations.some((one) => one.kind === 'closing' && one.chute !== undefined);
  const zones = stations.flatMap((one) => (one.kind === 'washer' ? (one.zones ?? []) : []));
  const held = floor.hold !== undefined && floor.hold.waits > 0.05;
  const normal = held
    ? say('card.wait.normal', { seconds: paper.quantity(floor.hold!.waits, 'time', 2).text })
    : '';
  const onlyIf = (is: boolean, ...keys: readonly string[]): readonly string[] =>
    is ? keys.map((key) => say(key)) : [];
  const wait = (is: boolean, name: string): CardContent['waits'] =>
    is ? [{ seen: say(`card.seen.${name}`), look: say(`card.look.${name}`) }] : [];
  const settings = (Object.entries(bySign) as [Sign, readonly string[]][]).flatMap(([sign, sorts]) => {
    const of = register.rows
      .filter((one) => sorts.includes(one.row.sort) && isOn(one, floor.floor, floor.format))
      .map((one) => ({ name: names.name(one.row), ...latestOf(one, mark, paper) }));
    return of.length === 0 ? [] : [{ sign, title: say(`card.settings.${sign}`), of }];
  });
  const ownFloor = book.floors?.find(({ tag }) => tag === floor.floor);
  const bottle = format?.name ?? floor.format;
  return {
    head: { ...paperHead(say('card.title'), options, paper), caution: say('card.foot') },
    title: bottle === '' ? say('card.title') : say('card.of', { format: bottle }),
    subtitle: say('card.at', { floor: floor.name }),
    presets: presetsOf(asked, mark, paper),
    settings,
    start: [
      ...onlyIf(true, 'card.start.look', 'card.start.supplies'),
      ...onlyIf(bath, 'card.start.bath'),
      ...onlyIf(has('washer'), 'card.start.nozzles'),
      ...onlyIf(chute, 'card.start.caps'),
      ...onlyIf(true, 'card.start.first'),
    ],
    stop: [
      ...onlyIf(has('load'), 'card.stop.load'),
      ...onlyIf(has('washer'), 'card.stop.empty'),
      ...onlyIf(true, 'card.stop.supplies', 'card.stop.emergency'),
    ],
    waits: [
      ...(has('washer') && has('fill')
        ? [
            {
              seen: say('card.seen.washer'),
              look: [normal, say('card.look.washer')].filter((part) => part !== '').join(' '),
            },
          ]
        : []),
      ...wait(has('fill'), 'low'),
      ...wait(has('fill'), 'lane'),
      ...wait(has('closing'), 'filler'),
      ...wait(chute, 'caps'),
      ...wait(has('take-off'), 'full'),
    ],
    clean: [
      ...strainersOf(ownFloor).map((name) => say('card.clean.strainer', { name })),
      ...onlyIf(zones.length > 0, 'card.clean.screens'),
      ...onlyIf(chute, 'card.clean.chute'),
      ...onlyIf(has('fill'), 'card.clean.nozzles'),
      ...onlyIf(true, 'card.clean.lock'),
    ],
    words: {
      ...Object.fromEntries(wordKeys.map((key) => [key, say(`card.${key}`)])),
      care: say('paper.care'),
      workingKey: say('workings.key'),
      caution: say(bath ? 'card.caution.bath' : 'card.caution'),
    },
  };
};
