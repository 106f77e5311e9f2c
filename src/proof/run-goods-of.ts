import type { Book } from '../book/index.ts';
import { ratePathOf } from '../floor/rate-path.ts';
import { runSheet } from '../sheets/frame.ts';
import { solutionConcentrationSheet } from '../sheets/hygiene/solution-concentration.ts';
import { runGoodsSheet } from '../sheets/rate/run-goods.ts';
import { placeFigure } from './place-figure.ts';

/** Something that a run uses up: what it takes and what is at hand. */
export interface RunGood {
  readonly good: 'bottles' | 'caps' | 'detergent';
  /** Pieces, or kg; none where the book does not say enough to tell. */
  readonly needed?: number;
  readonly have?: number;
  /** Place at which the book says what is at hand. */
  readonly path: string;
}

/** Volume and strength of the detergent baths, and what a bottle carries out of them. */
const bathOf = (book: Book) => {
  for (const [s, station] of (book.line?.stations ?? []).entries()) {
    if (station.kind !== 'washer') continue;
    const z = (station.zones ?? []).findIndex(({ medium }) => medium === 'detergent');
    if (z < 0) continue;
    const { tag, tank } = station.zones?.[z] ?? {};
    const path = `/line/stations/${s}/zones/${z}`;
    const heater = (book.line?.heaters ?? []).findIndex(({ zone }) => zone === tag);
    const volume = tank === undefined ? `/line/heaters/${heater}/tank` : `${path}/tank`;
    return {
      bath: placeFigure(book, volume, 'volume').value,
      share: placeFigure(book, `${path}/concentration`, 'massFraction').value,
      carry: placeFigure(book, `/line/stations/${s}/carryOver`, 'volume').value ?? 0,
    };
  }
  return undefined;
};

/**
 * Bottles, caps and detergent that the agreed run takes, against what is at hand on a floor.
 *
 * Returns  detergent only where a zone washes with it; in the quantities of the agreed rate and run, with a tenth to spare
 * Assumes  caps one a bottle; the first bath of detergent is made up once for the run
 */
export const runGoodsOf = (book: Book, floor: number): readonly RunGood[] => {
  const rate = placeFigure(book, ratePathOf(book, '/line/formats/0'), 'rate').value;
  const duration = placeFigure(book, '/agreement/acceptanceRun', 'time').value;
  const bath = bathOf(book);
  const strength =
    bath?.share === undefined ? undefined : runSheet(solutionConcentrationSheet, { share: bath.share });
  const concentration = strength?.ok === true ? strength.value.outputs.concentration : undefined;
  const washing =
    bath?.bath === undefined || concentration === undefined
      ? undefined
      : { bath: bath.bath, concentration, carry: bath.carry };
  const run =
    rate === undefined || duration === undefined
      ? undefined
      : runSheet(runGoodsSheet, { rate, duration, ...washing });
  const outputs = run?.ok === true ? run.value.outputs : undefined;
  const at = `/floors/${floor}/atHand`;
  const { bottles, caps } = book.floors?.[floor]?.atHand ?? {};
  const detergent = placeFigure(book, `${at}/detergent`, 'mass').value;
  const row = (good: RunGood['good'], needed: number | undefined, have: number | undefined): RunGood => ({
    good,
    path: `${at}/${good}`,
    ...(needed === undefined ? {} : { needed }),
    ...(have === undefined ? {} : { have }),
  });
  const pieces = outputs === undefined ? undefined : Math.ceil(outputs.bottles - 1e-9);
  return [
    row('bottles', pieces, bottles),
    row('caps', pieces, caps),
    ...(bath === undefined ? [] : [row('detergent', washing && outputs?.detergent, detergent)]),
  ];
};

/** Whether it is known that there is enough. */
export const isEnough = ({ needed, have }: RunGood): boolean =>
  needed !== undefined && have !== undefined && have >= needed;
