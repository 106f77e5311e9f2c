import { stationOf } from '../../floor/station-of.ts';
import { runSheet } from '../../sheets/frame.ts';
import { trialsWantedSheet } from '../../sheets/rate/trials-wanted.ts';
import type { Check } from '../check.ts';
import type { ConditionId } from '../condition.ts';
import { makeCheck } from '../make-check.ts';
import { placeFigure } from '../place-figure.ts';
import type { ProofContext } from '../proof-context.ts';

/** Bottles of a lane where no share of bottles was agreed; common practice. */
const usualBottles = 5;

/** Confidence where the agreement names none. */
const usualConfidence = 0.95;

/** Under the site's pressure, on its product, in its bottles: else a level shows only that the lane opens and closes. */
const likeTheSite: readonly ConditionId[] = ['manifoldPressure', 'product', 'lineAtIndex', 'bottles'];

/** Bottles that a lane fills so that all lanes together, with none short, show the agreed share. */
const bottlesOfLane = ({ book }: ProofContext, lanes: number): number => {
  const goal = placeFigure(book, '/agreement/contents/levelGoal', 'ratio').value;
  if (goal === undefined) return usualBottles;
  const confidence = placeFigure(book, '/agreement/confidence', 'ratio').value ?? usualConfidence;
  const wanted = runSheet(trialsWantedSheet, { share: 1 - goal, allowed: 0, confidence });
  return wanted.ok ? Math.ceil(wanted.value.outputs.trials / lanes) : usualBottles;
};

/** Where the counts of a lane stand on the floor: those of the other lanes do not move its level. */
const countsOf = ({ book, hereIndex, format }: ProofContext, lane: string): readonly string[] =>
  (book.floors?.[hereIndex]?.settings ?? []).flatMap((one, i) =>
    one.lane === lane && (one.format === undefined || one.format === format?.tag)
      ? [`/floors/${hereIndex}/settings/${i}`]
      : [],
  );

/** Each lane fills to the level, and the contents are judged by the rule that was agreed. */
export const fillingChecks = (c: ProofContext): readonly Check[] => {
  const fill = stationOf(c.book, 'fill');
  if (fill === undefined || c.format === undefined) return [];
  const lanes = (fill.station.lanes ?? [])
    .map(({ tag, out }, i) => ({ tag, out, path: `${fill.path}/lanes/${i}` }))
    .filter(({ out }) => out !== true);
  const level = `${c.formatPath}/level`;
  const figure = placeFigure(c.book, level, 'volume');
  const foretold = c.finding('level')?.verdict;
  const rule = c.book.agreement?.contents?.rule;
  return [
    ...lanes.map(({ tag, path }) =>
      makeCheck('fillLevel', [tag], 'product', {
        point: 'witness',
        instrument: 'scale',
        readings: bottlesOfLane(c, lanes.length),
        limits: [{ sense: 'least', figure }],
        missing: figure.missing,
        ...(foretold === undefined ? {} : { foreseen: foretold }),
        places: [
          level,
          `${c.formatPath}/brimful`,
          '/agreement/contents/levelGoal',
          ...countsOf(c, tag),
          ...['preset', 'presets', 'pulses', 'delay', 'closing', 'nozzleBore', 'changeOver', 'out'].map(
            (field) => `${path}/${field}`,
          ),
        ],
        conditions: likeTheSite,
      }),
    ),
    ...(rule === undefined || rule === 'level only'
      ? []
      : [
          makeCheck('contents', [c.format.tag], 'product', {
            point: 'witness',
            instrument: 'scale',
            parts: { rule },
            places: ['/agreement/contents', `${c.formatPath}/label`],
            conditions: likeTheSite,
          }),
        ]),
  ];
};
