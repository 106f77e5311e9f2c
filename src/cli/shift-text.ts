import { placeText } from '../book/place-text.ts';
import type { LostRow, ProofPlan, ShiftAnswer, Shown } from '../floor/shift/index.ts';
import { formatNumber } from '../quantity/index.ts';
import type { Kind } from '../quantity/kinds.ts';
import { shown } from '../quantity/shown.ts';
import { thingName } from './finding-names.ts';
import type { ShiftAsked } from './shift-options.ts';
import type { ShiftTold } from './shift-told.ts';
import { textTable } from './text-table.ts';
import type { Told } from './told.ts';
import { words } from './words.ts';

const hour = 3600;
const minute = 60;

/** How the numbers of one answer are said. */
const sayer = ({ book, wishes, world }: Told) => {
  const { locale } = world;
  const value = (one: number, kind: Kind, digits?: number): string =>
    shown(one, kind, wishes, locale, digits);
  return {
    value,
    whole: (n: number): string =>
      formatNumber(Math.round(n), locale, Math.max(1, String(Math.round(Math.abs(n))).length)),
    percent: (share: number): string =>
      words.say('shift.percent', { n: formatNumber(100 * share, locale, 3) }),
    seconds: (s: number): string => shown(s, 'time', { byKind: { time: 's' } }, locale, 3),
    hours: (s: number): string => shown(s, 'time', { byKind: { time: 'h' } }, locale, 3),
    minutes: (s: number): string =>
      words.say('shift.minutes', { n: formatNumber(s / minute, locale, s < 10 * minute ? 2 : 3) }),
    name: (tag: string): string => thingName(book, tag),
    place: (path: string): string => placeText(book, path),
  };
};

type Sayer = ReturnType<typeof sayer>;

const stepName = (step: string, lane?: string): string => {
  const key = lane === undefined ? `step.${step}` : 'step.lane';
  return words.has(key) ? words.say(key, { lane: lane ?? '' }) : step;
};

/** Like a mechanic: who was waited for, and why. */
const whatOf = (say: Sayer, { state, station, cause, step }: LostRow): string => {
  if (state === 'running') return words.say('shift.ran', { station: say.name(station) });
  if (cause !== undefined) return say.name(cause);
  return words.say('shift.why', {
    station: say.name(station),
    why: words.say(`shift.why.${step ?? 'start'}`),
  });
};

const minutesTable = (say: Sayer, { minutes }: ShiftAnswer): string =>
  textTable([
    [words.say('shift.where'), words.say('shift.time'), words.say('shift.share'), words.say('shift.owner')],
    ...minutes.map((row) => [
      whatOf(say, row),
      say.minutes(row.seconds),
      say.percent(row.share),
      row.state === 'running' ? '' : words.say(`shift.owner.${row.owner}`),
    ]),
  ]);

const chainLines = (say: Sayer, { bound }: ShiftAnswer): readonly string[] => {
  const { hold, next, period, byBelts, worth } = bound;
  if (hold === undefined || period === undefined) return [];
  const said = (steps: readonly { step: string; seconds: number; lane?: string }[]): string =>
    steps
      .filter(({ seconds }) => seconds > 0)
      .map(({ step, seconds, lane }) =>
        words.say('shift.step', { what: stepName(step, lane), seconds: say.seconds(seconds) }),
      )
      .reduce((first, following) => words.say('hold.then', { first, next: following }));
  return [
    words.say('shift.chain', { steps: said(hold.chain), period: say.seconds(period) }),
    ...(byBelts === undefined ? [] : [words.say('shift.belts', { seconds: say.seconds(byBelts) })]),
    ...(next === undefined
      ? []
      : [words.say('shift.next', { shorter: say.seconds(next.shorter), steps: said(next.steps) })]),
    ...worth.map(({ step, gain, until, over }) =>
      words.say(until > 0 ? 'shift.worth' : 'shift.worth.last', {
        what:
          over < 1
            ? words.say('shift.piece', { seconds: say.seconds(over) })
            : words.say(`shift.second.${step}`),
        n: say.whole(gain * hour),
        until: say.seconds(until),
      }),
    ),
  ];
};

const worthText = (say: Sayer, one: Shown): string => {
  const range = `${say.whole(one.mean)} (${say.whole(one.low)} … ${say.whole(one.high)})`;
  return one.low <= 0 && one.high >= 0 ? `${range}, ${words.say('shift.notShown')}` : range;
};

const changesTable = (say: Sayer, { changes }: ShiftAnswer): readonly string[] =>
  changes.length === 0
    ? []
    : [
        textTable([
          [words.say('shift.change'), words.say('shift.change.worth')],
          ...changes.map(({ change, cause, good }) => [
            words.say(`shift.change.${change}`, { cause: cause === undefined ? '' : say.name(cause) }),
            worthText(say, good),
          ]),
        ]),
      ];

const washingText = (say: Sayer, { washing }: ShiftAnswer): readonly string[] => {
  if (washing === undefined || washing.zones.length === 0) return [];
  const heads = ['zone', 'least', 'mean', 'most', 'own', 'need'].map((id) => words.say(`shift.${id}`));
  return [
    textTable([
      [...heads, ''],
      ...washing.zones.map(({ zone, least, mean, most, own, need, verdict, rule }) => [
        say.name(zone),
        say.seconds(least),
        say.seconds(mean),
        say.seconds(most),
        own === undefined ? '' : say.seconds(own),
        need === undefined ? '' : say.seconds(need),
        words.say(`shift.contact.${verdict}`, { rule: rule ?? '' }),
      ]),
    ]),
    ...(washing.residue === undefined
      ? []
      : [
          `  ${words.say('shift.residue', { residue: say.value(washing.residue.value, 'soluteConcentration', 2) })}`,
        ]),
  ];
};

const proofText = (say: Sayer, run: number, plan: ProofPlan | undefined): readonly string[] => {
  if (plan === undefined) return [`  ${words.say('shift.proof.none')}`];
  const { between, clear, efficiency, confidence, agreedBetween, runs, inAgreedRun, byTime } = plan;
  return [
    [
      ...(plan.rateReached === false ? [words.say('shift.proof.rate')] : []),
      words.say('shift.proof.stops', { between: say.minutes(between), clear: say.seconds(clear) }),
      words.say('shift.proof.agreed', {
        efficiency: say.percent(efficiency),
        confidence: say.percent(confidence),
        between: say.minutes(agreedBetween),
      }),
    ]
      .map((line) => `  ${line}`)
      .join('\n'),
    textTable([
      ['allowed', 'length', 'passing'].map((id) => words.say(`shift.proof.${id}`)),
      ...runs.map(({ allowed, length, passing }) => [
        String(allowed),
        say.minutes(length),
        say.percent(passing),
      ]),
    ]),
    [
      inAgreedRun === undefined
        ? words.say('shift.proof.short', { run: say.minutes(run) })
        : words.say('shift.proof.agreedRun', { n: inAgreedRun, run: say.minutes(run) }),
      byTime === undefined
        ? words.say('shift.proof.never', { efficiency: say.percent(efficiency) })
        : words.say('shift.proof.time', {
            length: say.minutes(byTime.length),
            stops: say.whole(byTime.stops),
          }),
    ]
      .map((line) => `  ${line}`)
      .join('\n'),
  ];
};

const shownText = (say: Sayer, answer: ShiftAnswer, asked: ShiftAsked): readonly string[] => {
  const { shown: found, bound } = answer;
  const { run } = asked;
  if (found === undefined || run === undefined || found.between === undefined) return [];
  const first = words.say('shift.shown', {
    run: say.minutes(run.seconds),
    n: run.stops,
    confidence: say.percent(bound.confidence),
    rate: say.value(found.rate.value, 'rate'),
    between: say.minutes(found.between.value),
  });
  const more =
    found.availability === undefined
      ? []
      : [words.say('shift.shown.availability', { availability: say.percent(found.availability.value) })];
  return [`  ${[first, ...more].join('; ')}`];
};

const fillLines = (say: Sayer, { bound }: ShiftAnswer): readonly string[] => {
  const { fillFrom: told, floor } = bound;
  if (told === undefined) return [];
  const { set, byBook, lanes, from, trials } = told;
  const range = { mean: say.seconds(set.seconds), low: say.seconds(set.low), high: say.seconds(set.high) };
  return [
    words.say(from === floor ? 'shift.fill.here' : 'shift.fill.foretold', { trials, from, ...range }),
    ...(byBook === undefined ? [] : [words.say('shift.fill.byBook', { seconds: say.seconds(byBook) })]),
    ...lanes.map(({ lane, seconds, low, high, spread }) =>
      words.say('shift.fill.lane', {
        lane,
        mean: say.seconds(seconds),
        low: say.seconds(low),
        high: say.seconds(high),
        spread: say.seconds(spread),
      }),
    ),
  ];
};

const logLines = (say: Sayer, { bound: { log } }: ShiftAnswer): readonly string[] => [
  ...(log?.causes ?? []).map(({ cause, stops, between, low, high, clear, taken }) =>
    words.say('shift.log.cause', {
      cause: say.name(cause),
      n: stops,
      between: say.minutes(between),
      low: say.minutes(low),
      high: say.minutes(high),
      clear: say.minutes(clear),
      taken: say.minutes(taken.between),
      takenClear: say.minutes(taken.clear),
    }),
  ),
  ...(log === undefined || log.unseen.length === 0
    ? []
    : [words.say('shift.log.unseen', { causes: log.unseen.map(say.name).join('; ') })]),
  ...(log?.unknown ?? []).map(({ cause, stops, seconds }) =>
    words.say('shift.log.unknown', { cause, n: stops, time: say.minutes(seconds) }),
  ),
];

const goodLines = (say: Sayer, answer: ShiftAnswer): readonly string[] => {
  const { good, goodFrom, agreed, bound, efficiency, figures, ranDry, shifts } = answer;
  if (good === undefined || shifts === undefined) return [];
  const range = { mean: say.whole(good.mean), low: say.whole(good.low), high: say.whole(good.high) };
  return [
    words.say('shift.good', { ...range, shifts, confidence: say.percent(bound.confidence) }),
    ...(goodFrom === undefined
      ? []
      : [
          words.say(bound.fillFrom === undefined ? 'shift.from' : 'shift.from.trials', {
            low: say.whole(goodFrom[0]),
            high: say.whole(goodFrom[1]),
          }),
        ]),
    ...(agreed === undefined
      ? []
      : [
          words.say(`shift.agreed.${agreed.verdict}`, {
            bottles: say.whole(agreed.bottles),
            gap: say.whole(agreed.bottles - good.mean),
          }),
        ]),
    ...(bound.stops === undefined
      ? []
      : [
          words.say(`shift.stops.${bound.stops}`, {
            n: bound.log?.runs ?? 0,
            hours: say.hours(bound.log?.seconds ?? 0),
          }),
        ]),
    ...(figures === undefined
      ? []
      : [
          words.say('shift.losses', {
            fallen: say.whole(figures.fallen.mean),
            rejected: say.whole(figures.rejected.mean),
          }),
        ]),
    ...(ranDry === undefined
      ? []
      : [
          words.say('shift.ranDry', {
            share: say.percent(ranDry.share),
            at: say.minutes(ranDry.at),
            bottles: say.whole(ranDry.bottles),
            makeUp: say.value(ranDry.makeUp, 'volumeFlow'),
            usable: say.value(ranDry.usable, 'volume'),
          }),
        ]),
    ...(efficiency === undefined
      ? []
      : [
          words.say('shift.efficiency', {
            rate: say.value(efficiency.setRate, 'rate'),
            overall: say.percent(efficiency.overall),
            technical: say.percent(efficiency.technical),
          }),
        ]),
  ];
};

const answerText = (
  say: Sayer,
  answer: ShiftAnswer,
  asked: ShiftAsked,
  proof: boolean,
): readonly string[] => {
  const { bound, runningRate } = answer;
  const unknown = bound.missing.length > 0;
  const lines = [
    ...(runningRate === undefined
      ? []
      : [words.say('shift.running', { rate: say.value(runningRate.value, 'rate') })]),
    ...(unknown
      ? [
          words.say('shift.unknown', { n: bound.missing.length }),
          ...bound.missing.map((path) => words.say('shift.wanted', { place: say.place(path) })),
        ]
      : []),
    ...fillLines(say, answer),
    ...goodLines(say, answer),
    ...logLines(say, answer),
  ];
  return [
    lines.map((line) => `  ${line}`).join('\n'),
    ...(answer.minutes.length === 0 ? [] : [minutesTable(say, answer)]),
    ...[chainLines(say, answer)]
      .filter(({ length }) => length > 0)
      .map((all) => all.map((line) => `  ${line}`).join('\n')),
    ...changesTable(say, answer),
    ...washingText(say, answer),
    ...(proof && answer.good !== undefined ? proofText(say, bound.agreedRun, answer.proof) : []),
    ...shownText(say, answer, asked),
    ...(bound.unfollowed.length === 0
      ? []
      : [`  ${words.say('shift.unfollowed', { rules: bound.unfollowed.map(say.name).join('; ') })}`]),
    ...(bound.notInRate.length === 0
      ? []
      : [`  ${words.say('shift.notInRate', { rules: bound.notInRate.map(say.name).join('; ') })}`]),
    ...(bound.assumed.length === 0
      ? []
      : [`  ${words.say('shift.assumed', { places: bound.assumed.map(say.place).join('; ') })}`]),
  ];
};

/** What a whole shift does on each floor, in words. */
export const shiftText = (
  told: readonly ShiftTold[],
  asked: ShiftAsked,
  by: Told,
  proof: boolean,
): string => {
  const say = sayer(by);
  return [
    ...told.flatMap(({ answer, changed, moved }) => {
      const { bound } = answer;
      const head = words.say('shift.floor', {
        floor: bound.name,
        role: words.say(`role.${bound.role}`),
        duration: say.value(bound.duration, 'time'),
      });
      const before = answerText(say, answer, asked, proof);
      if (changed === undefined) return [head, ...before];
      return [
        `${head} ${words.say('shift.before')}`,
        ...before,
        `${head} ${words.say('shift.after')}`,
        ...answerText(say, changed, asked, proof),
        ...(moved === undefined
          ? []
          : [
              `  ${words.say('shift.moved', {
                floor: bound.name,
                mean: say.whole(moved.mean),
                low: say.whole(moved.low),
                high: say.whole(moved.high),
              })}`,
            ]),
      ];
    }),
    words.say('shift.caution'),
  ]
    .join('\n\n')
    .concat('\n');
};
