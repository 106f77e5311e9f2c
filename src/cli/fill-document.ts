import type * as z from 'zod';
import { type Book, valueAt } from '../book/index.ts';
import { placeText } from '../book/place-text.ts';
import { withinOf } from '../fill/student-sum.ts';
import type { FillStory, GoalPresets, NoAnswer } from '../floor/fill/index.ts';
import type { FillDocument, presetsSchema } from './fill-schema.ts';
import { type FillTold, notesByCode, slipSentences, trialName } from './fill-told.ts';
import { problemDocument } from './problem-document.ts';
import { rowsDocument } from './rows-document.ts';
import { samplesDocument } from './samples-document.ts';
import { withinDocument } from './within-document.ts';
import { words } from './words.ts';

/** What can't be answered, as a sentence. */
export const noAnswerText = (book: Book, none: NoAnswer): string => {
  if (none.code === 'floorUnknown') {
    const places = none.places.map((path) => placeText(book, path)).join('; ');
    return words.say('fill.none.floorUnknown', { floor: none.floor, places: places === '' ? '–' : places });
  }
  if (none.code === 'noPreset') return words.say('fill.none.noPreset', { lanes: none.lanes.join(', ') });
  return words.say(`fill.none.${none.code}`, 'floor' in none ? { floor: none.floor } : {});
};

/** A doubt with lanes and trials by the names that a person has for them. */
export const doubtText = (
  {
    code,
    lanes,
    trials,
  }: { readonly code: string; readonly lanes: readonly string[]; readonly trials: readonly number[] },
  told: Pick<FillTold, 'story' | 'file'>,
): string =>
  words.say(`fill.doubt.${code}`, {
    lanes: lanes.join(', '),
    trials: trials.map((at) => trialName(told, told.story.read.trials[at]!.trial)).join(', '),
  });

const presetsDocument = (set: GoalPresets): z.infer<typeof presetsSchema> => {
  const { goal } = set;
  if ('none' in set) {
    return { goal, lanes: [], none: { code: set.none, text: words.say(`fill.preset.${set.none}`) } };
  }
  const range = (i: number) => {
    const { lower, upper } = set.ranges[i]!;
    return { lower, upper };
  };
  if (set.goal === 'volume') {
    const { label, labelHere, deficiency, presets } = set;
    return {
      goal,
      label,
      labelHere,
      deficiency,
      lanes: presets.map(({ mean: _, ...one }, i) => ({ ...one, ...range(i) })),
    };
  }
  const { capacity, share, presets } = set;
  const { mean, deviation } = capacity.capacity;
  return {
    goal,
    share,
    capacity: { mean, deviation, from: capacity.from },
    lanes: presets.lanes.map(({ mean: _, ...one }, i) => ({ ...one, ...range(i) })),
    overflow: presets.overflow,
    ...(presets.shiftOverflow === undefined ? {} : { shiftOverflow: presets.shiftOverflow }),
    common: {
      preset: presets.common.preset,
      price: presets.common.price,
      ...(presets.common.shiftPrice === undefined ? {} : { shiftPrice: presets.common.shiftPrice }),
    },
  };
};

const estimateDocument = (told: FillTold, confidence: number): Pick<FillDocument, 'estimate'> => {
  const { estimate: answer, read } = told.story;
  if (answer?.kind !== 'estimate') return {};
  const { lanes, volumeSpread, ownSpread, timeSpread, doubts, residuals } = answer.estimate;
  const within = (one: (typeof lanes)[number]['kv']) => withinOf(one, confidence);
  const placeOf = (at: number): number => read.trials[at]!.trial;
  return {
    estimate: {
      lanes: lanes.map((one) => ({
        lane: one.lane,
        pulses: withinDocument(within(one.pulses), 'pulseDensity'),
        afterRun: withinDocument(within(one.afterRun), 'time'),
        kv: withinDocument(within(one.kv), 'flowCoefficient'),
        drip: withinDocument(within(one.drip), 'volume'),
        shutTime: withinDocument(within(one.shutTime), 'time'),
        ...(one.spread === undefined ? {} : { spread: one.spread.value }),
        trials: one.trials,
      })),
      volumeSpread: volumeSpread.value,
      ownSpread: ownSpread.value,
      timeSpread: timeSpread.value,
      doubts: doubts.map((doubt) => ({
        code: doubt.code,
        text: doubtText(doubt, told),
        lanes: [...doubt.lanes],
        trials: doubt.trials.map(placeOf),
      })),
      residuals: residuals.map(({ trial, of, read: value, fitted, standard, outlying }) => ({
        trial: placeOf(trial),
        of,
        read: value,
        fitted,
        standard,
        outlying,
      })),
    },
  };
};

const predictionDocument = ({ other }: FillStory): Pick<FillDocument, 'prediction'> => {
  if (other === undefined) return {};
  const { prediction, change, presetsFrom, reached, start, score, floor } = other;
  return {
    prediction: {
      floor: floor.tag,
      confidence: prediction.confidence,
      lanes: prediction.lanes.map((one, i) => ({
        lane: one.lane,
        preset: one.preset,
        presetFrom: presetsFrom[i]!,
        volume: withinDocument(one.volume, 'volume'),
        bottle: withinDocument(one.bottle, 'volume'),
        time: withinDocument(one.time, 'time'),
        afterRun: withinDocument(one.afterRun, 'volume'),
        ...(reached === undefined ? {} : { reached: reached[i]! }),
        volumeCauses: { ...one.volumeCauses },
        timeCauses: { ...one.timeCauses },
      })),
      rowTime: withinDocument(prediction.rowTime, 'time'),
      ...(prediction.stationTime === undefined
        ? {}
        : { stationTime: withinDocument(prediction.stationTime, 'time') }),
      ...(prediction.rate === undefined ? {} : { rate: withinDocument(prediction.rate, 'rate') }),
      start: presetsDocument(start),
      allowances: change.allowances.map((line) => ({
        ...line,
        text: words.say(`fill.allowance.${line.code}`),
      })),
      runs: change.runs.map(({ of, floor, column }) => ({
        floor,
        ...column,
        unsaid: [...column.unsaid],
        narrower: prediction.ofRuns[of],
      })),
      waived: change.waived,
      sameProduct: change.sameProduct,
      viscosityRatio: change.viscosityRatio,
      flowRatio: change.flowRatio,
      ...(change.airRatio === undefined ? {} : { airRatio: change.airRatio }),
      stuckShare: prediction.stuckShare,
      realMoves: prediction.realMoves,
      ...(score === undefined
        ? {}
        : {
            score: {
              inside: score.inside,
              of: score.of,
              confidence: score.confidence,
              scores: score.scores.map((one) => ({ ...one })),
            },
          }),
    },
  };
};

const trialsDocument = (told: FillTold): FillDocument['trials'] => {
  const { story, file } = told;
  const { read, estimate } = story;
  const apart = estimate?.kind === 'estimate' ? estimate.estimate.apart : (estimate?.apart ?? []);
  return {
    given: file.values.length,
    here: read.trials.length,
    refused: read.refused.map(({ trial, problems }) => ({
      trial,
      problems: problems.map((problem) => problemDocument(problem)),
    })),
    notes: [...notesByCode(story)].map(([code, trials]) => ({
      code,
      text: words.say(`fill.note.${code}`),
      trials: [...trials],
    })),
    apart: apart.map(({ trial, why }) => ({
      trial: read.trials[trial]!.trial,
      code: why,
      text: words.say(`fill.apart.${why}`),
    })),
    volumes: read.trials.map(({ trial, fill, weighing }) => ({
      trial,
      lane: fill.lane,
      preset: fill.preset,
      ...(fill.volume === undefined ? {} : { volume: fill.volume }),
      ...(fill.volumeDeviation === undefined ? {} : { volumeDeviation: fill.volumeDeviation }),
      ...(fill.commonDeviation === undefined ? {} : { commonDeviation: fill.commonDeviation }),
      ...(fill.time === undefined ? {} : { time: fill.time }),
      ...(fill.timeDeviation === undefined ? {} : { timeDeviation: fill.timeDeviation }),
      ...(weighing === undefined ? {} : { net: weighing.net, density: weighing.density }),
    })),
  };
};

export const fillDocument = (book: Book, told: FillTold, confidence: number): FillDocument => {
  const { story, file } = told;
  const title = valueAt(book, '/about/title');
  const refused = story.estimate?.kind === 'refused' ? story.estimate.problems : [];
  return {
    document: 'twinfloor fill',
    version: 1,
    ...(typeof title === 'string' ? { title } : {}),
    ...(story.format === undefined ? {} : { format: story.format }),
    from: story.from.tag,
    ...(story.to === undefined ? {} : { to: story.to.tag }),
    ...(file.report === undefined ? {} : { rows: rowsDocument(file.report) }),
    ...(told.samples === undefined ? {} : { samples: samplesDocument(told.samples) }),
    trials: trialsDocument(told),
    slips: story.slips.flatMap(({ trial, slips }) =>
      slips.map((slip) => {
        const { code, field, entered, likely, compared } = slip;
        const text = slipSentences(slip, told);
        return {
          trial,
          code,
          text: text.question,
          field,
          ...(entered === undefined ? {} : { entered }),
          ...(likely === undefined ? {} : { likely }),
          compared: { ...compared, text: text.compared },
        };
      }),
    ),
    ...estimateDocument(told, confidence),
    ...(story.presets === undefined ? {} : { presets: presetsDocument(story.presets) }),
    ...(story.next === undefined ? {} : { next: story.next.map((one) => ({ ...one })) }),
    ...predictionDocument(story),
    unanswered: [
      ...story.none.map((none) => ({ code: none.code, text: noAnswerText(book, none) })),
      ...refused.map(({ code }) => ({ code, text: words.say(`fill.trial.${code}`) })),
    ],
    caution: words.say('fill.caution'),
  };
};
