import type { Book } from '../book/index.ts';
import { type Doubt, type FloorPrediction, shareDeviation, type Within } from '../fill/index.ts';
import { withinOf } from '../fill/student-sum.ts';
import type { FillStory, FloorAllowances, GoalPresets } from '../floor/fill/index.ts';
import { formatNumber } from '../quantity/index.ts';
import type { Kind } from '../quantity/kinds.ts';
import { shown, shownInterval } from '../quantity/shown.ts';
import { doubtText, noAnswerText } from './fill-document.ts';
import { type FillTold, notesByCode, slipSentences, trialName } from './fill-told.ts';
import { rowsText } from './rows-document.ts';
import { samplesText } from './samples-document.ts';
import { sentenceOf } from './sentence.ts';
import { textTable } from './text-table.ts';
import { words } from './words.ts';

type Part = (told: FillTold) => readonly string[];

const percent = (share: number, locale: string, digits = 3): string =>
  `${formatNumber(share * 100, locale, digits)} %`;

const interval = (one: Within, kind: Kind, { wishes, locale }: FillTold): string =>
  shownInterval(one.value, [one.lower, one.upper], kind, wishes, locale);

const value = (one: number | undefined, kind: Kind, { wishes, locale }: FillTold, digits = 3): string =>
  one === undefined ? '' : shown(one, kind, wishes, locale, digits);

const head = (name: string): string => words.say(`fill.head.${name}`);

/** Longer lists of bottles are told by their first. */
const told12 = 12;
const named = (told: FillTold, trials: readonly number[]): string => {
  const names = trials.slice(0, told12).map((trial) => trialName(told, trial));
  return `${names.join(', ')}${trials.length > told12 ? ', …' : ''}`;
};

/** How the liquid in the run is counted while lanes close. */
const columnLines = (
  { runs }: FloorAllowances,
  { ofRuns }: FloorPrediction,
  told: FillTold,
): readonly string[] =>
  runs.map(
    ({ of, floor, column }) =>
      `  ${words.say(`fill.column.${column.source}`, {
        floor,
        share: percent(column.share, told.locale, 2),
        deviation: percent(shareDeviation(column), told.locale, 2),
        volume: value(column.volume, 'volume', told, 2),
        narrower: percent(ofRuns[of], told.locale, 2),
      })}`,
  );

const trialsPart: Part = (told) => {
  const { story } = told;
  const { read, estimate, otherFormat } = story;
  const apart = estimate?.kind === 'estimate' ? estimate.estimate.apart : (estimate?.apart ?? []);
  const lines = [
    words.say('fill.trials', {
      n: read.trials.length,
      floor: story.from.tag,
      given: told.file.values.length,
    }),
    ...(otherFormat.length === 0 ? [] : [`  ${words.say('fill.otherFormat', { n: otherFormat.length })}`]),
    ...read.refused.flatMap(({ trial, problems }) => [
      `  ${words.say('fill.refused', { trial: trialName(told, trial) })}`,
      ...problems.map((problem) => `    ${sentenceOf(problem)}`),
    ]),
    ...[...notesByCode(story)].map(([code, trials]) => {
      const text = words.say(`fill.note.${code}`);
      const all = trials.length === read.trials.length && trials.length > 1;
      return `  ${all ? words.say('fill.all') : named(told, trials)}: ${text}`;
    }),
    ...apart.map(
      ({ trial, why }) =>
        `  ${trialName(told, read.trials[trial]!.trial)}: ${words.say(`fill.apart.${why}`)}`,
    ),
  ];
  return [lines.join('\n')];
};

const slipsPart: Part = (told) => {
  const { slips } = told.story;
  if (slips.length === 0) return [];
  const lines = slips.flatMap(({ trial, slips: of }) =>
    of.slice(0, 1).flatMap((slip) => {
      const { question, compared } = slipSentences(slip, told);
      return [`  ${trialName(told, trial)}: ${question}`, `      ${compared}`];
    }),
  );
  return [[words.say('fill.slips', { n: slips.length }), ...lines].join('\n')];
};

/** Doubts that name certain bottles, or lanes that belong together. */
const apart = new Set(['outlier', 'bottles-swapped', 'lanes-swapped']);

/** The same doubt of several lanes is told once. */
const together = (doubts: readonly Doubt[]): readonly Doubt[] =>
  doubts.flatMap((doubt, i) => {
    if (apart.has(doubt.code)) return [doubt];
    const same = doubts.filter(({ code }) => code === doubt.code);
    return same[0] === doubts[i] ? [{ ...doubt, lanes: same.flatMap(({ lanes }) => lanes) }] : [];
  });

const estimatePart: Part = (told) => {
  const { story, locale } = told;
  if (story.estimate?.kind !== 'estimate') return [];
  const { lanes, doubts, ownSpread, timeSpread } = story.estimate.estimate;
  const confidence = story.other?.prediction.confidence ?? usualConfidence;
  const within = (one: (typeof lanes)[number]['kv'], kind: Kind) =>
    interval(withinOf(one, confidence), kind, told);
  const rows = lanes.map((one) => [
    one.lane,
    within(one.pulses, 'pulseDensity'),
    within(one.afterRun, 'time'),
    within(one.kv, 'flowCoefficient'),
    String(one.trials),
  ]);
  const header = ['lane', 'pulses', 'afterRun', 'kv', 'bottles'].map(head);
  return [
    [
      words.say('fill.estimate', { confidence: percent(confidence, locale) }),
      textTable([header, ...rows]),
      `  ${words.say('fill.spread', {
        volume: value(ownSpread.value, 'volume', told),
        time: value(timeSpread.value, 'time', told),
      })}`,
    ].join('\n'),
    ...(doubts.length === 0
      ? []
      : [
          [words.say('fill.doubts'), ...together(doubts).map((doubt) => `  ${doubtText(doubt, told)}`)].join(
            '\n',
          ),
        ]),
  ];
};

const presetRows = (set: Exclude<GoalPresets, { none: unknown }>, told: FillTold): string => {
  const { locale } = told;
  const counts = (i: number): string => `${set.ranges[i]?.lower ?? ''} … ${set.ranges[i]?.upper ?? ''}`;
  if (set.goal === 'level') {
    const header = ['lane', 'count', 'between', 'volume', 'reached', 'overflow'].map(head);
    const rows = set.presets.lanes.map((one, i) => [
      one.lane,
      String(one.preset),
      counts(i),
      value(one.volume, 'volume', told, 4),
      percent(one.reached, locale, 4),
      value(one.overflow, 'volume', told),
    ]);
    return textTable([header, ...rows]);
  }
  const header = ['lane', 'count', 'between', 'volume', 'giveaway', 'limit'].map(head);
  const rows = set.presets.map((one, i) => [
    one.lane,
    String(one.preset),
    counts(i),
    value(one.volume, 'volume', told, 4),
    value(one.giveaway, 'volume', told),
    words.say(`fill.limit.${one.limit}`),
  ]);
  return textTable([header, ...rows]);
};

const presetsText = (set: GoalPresets | undefined, floor: string, told: FillTold): readonly string[] => {
  if (set === undefined) return [];
  if ('none' in set)
    return [words.say('fill.presets.none', { floor, why: words.say(`fill.preset.${set.none}`) })];
  const { locale } = told;
  if (set.goal === 'volume') {
    const title = words.say('fill.presets.volume', {
      floor,
      label: value(set.label, 'volume', told, 4),
      deficiency: value(set.deficiency, 'volume', told),
    });
    return [[title, presetRows(set, told)].join('\n')];
  }
  const { common, shiftOverflow } = set.presets;
  const lines = [
    words.say('fill.presets.level', { floor, share: percent(set.share, locale, 4) }),
    presetRows(set, told),
    `  ${words.say('fill.presets.common', {
      preset: common.preset,
      price: value(common.price, 'volume', told),
      shift: common.shiftPrice === undefined ? '–' : value(common.shiftPrice, 'volume', told),
    })}`,
    ...(shiftOverflow === undefined
      ? []
      : [`  ${words.say('fill.presets.shift', { volume: value(shiftOverflow, 'volume', told) })}`]),
    `  ${words.say('fill.capacity', {
      mean: value(set.capacity.capacity.mean, 'volume', told, 4),
      deviation: value(set.capacity.capacity.deviation, 'volume', told),
      from: words.say(`fill.capacity.${set.capacity.from}`),
    })}`,
  ];
  return [lines.join('\n')];
};

/** Trials that would tell most; the rest of a long list tells little. */
const bestTrials = 3;

const nextPart: Part = (told) => {
  const next = (told.story.next ?? []).slice(0, bestTrials).filter(({ narrower }) => narrower > 0);
  if (next.length === 0) return [];
  const lines = next.map(
    ({ lane, preset, throttled, largeVessel, bottles, narrower }) =>
      `  ${words.say('fill.next.one', {
        lane,
        preset,
        bottles,
        percent: percent(narrower, told.locale, 2),
        throttled: throttled ? words.say('fill.next.throttled') : '',
        vessel: largeVessel ? words.say('fill.next.vessel') : '',
      })}`,
  );
  return [[words.say('fill.next'), ...lines].join('\n')];
};

const otherPart: Part = (told) => {
  const { other, from } = told.story;
  if (other === undefined) return [];
  const { prediction, floor, change, presetsFrom, reached, score, start } = other;
  const { locale } = told;
  const header = [
    'lane',
    'count',
    'volume',
    'bottle',
    'time',
    'afterRun',
    ...(reached === undefined ? [] : ['reached']),
  ];
  const rows = prediction.lanes.map((one, i) => [
    one.lane,
    `${one.preset} (${words.say(`fill.from.${presetsFrom[i]!}`)})`,
    interval(one.volume, 'volume', told),
    interval(one.bottle, 'volume', told),
    interval(one.time, 'time', told),
    interval(one.afterRun, 'volume', told),
    ...(reached === undefined ? [] : [percent(reached[i]!, locale, 4)]),
  ]);
  const around: readonly (readonly [string, string])[] = [
    [head('row'), interval(prediction.rowTime, 'time', told)],
    ...(prediction.stationTime === undefined
      ? []
      : [[head('station'), interval(prediction.stationTime, 'time', told)] as const]),
    ...(prediction.rate === undefined
      ? []
      : [[head('rate'), interval(prediction.rate, 'rate', told)] as const]),
  ];
  const lines = change.allowances.map(
    (line) =>
      `  ${words.say('fill.allowance', {
        name: words.say(`fill.allowance.${line.code}`),
        shift: percent(line.shift, locale, 2),
        deviation: percent(line.deviation, locale, 2),
        source: words.say(`fill.source.${line.source}`),
      })}`,
  );
  const allowed = [
    words.say('fill.allowances'),
    ...(lines.length === 0 ? [`  ${words.say('fill.waterOnly')}`] : lines),
    ...(change.airRatio === undefined && !change.waived ? [`  ${words.say('fill.airUnknown')}`] : []),
    ...columnLines(change, prediction, told),
  ];
  return [
    [
      words.say('fill.other', {
        floor: floor.tag,
        from: from.tag,
        confidence: percent(prediction.confidence, locale),
      }),
      textTable([header.map(head), ...rows]),
      textTable(around),
    ].join('\n'),
    allowed.join('\n'),
    ...presetsText(start, floor.tag, told),
    ...(score === undefined
      ? []
      : [
          words.say('fill.score', {
            inside: score.inside,
            of: score.of,
            floor: floor.tag,
            confidence: percent(score.confidence, locale),
          }),
        ]),
    words.say('fill.moves', { n: prediction.realMoves }),
  ];
};

/** Where no prediction says with which confidence. */
const usualConfidence = 0.9;

const unanswered = (book: Book, { none, estimate }: FillStory): readonly string[] => {
  const lines = [
    ...none.map((one) => noAnswerText(book, one)),
    ...(estimate?.kind === 'refused'
      ? [...new Set(estimate.problems.map(({ code }) => words.say(`fill.trial.${code}`)))]
      : []),
  ];
  return lines.length === 0 ? [] : [lines.join('\n')];
};

/** From the trials to the other floor, in the order in which the engineer meets the questions. */
export const fillText = (book: Book, told: FillTold): string => {
  const { story } = told;
  return [
    ...rowsText(told.file.report),
    ...(told.samples === undefined ? [] : samplesText(told.samples, told)),
    ...trialsPart(told),
    ...slipsPart(told),
    ...estimatePart(told),
    ...nextPart(told),
    ...presetsText(story.presets, story.from.tag, told),
    ...otherPart(told),
    ...unanswered(book, story),
    words.say('fill.caution'),
  ]
    .join('\n\n')
    .concat('\n');
};
