import type { LaneEstimate } from './lane-estimate.ts';
import type { Residual } from './residuals.ts';
import type { RowModel } from './row-model.ts';
import type { FillTrial } from './trial.ts';

/** Sum of squares of two standard residuals that no chance brings, and how many times less the exchange must leave. */
const much = 15;
const better = 4;

/** Two bottles of one row whose readings fit far better the other way round. */
export const swappedBottles = (
  trials: readonly FillTrial[],
  residuals: readonly Residual[],
): readonly { readonly trials: readonly number[]; readonly lanes: readonly number[] }[] => {
  const rows = new Map<string, Residual[]>();
  for (const residual of residuals) {
    const { row } = trials[residual.trial]!;
    if (residual.of !== 'volume' || row === undefined) continue;
    const found = rows.get(row);
    if (found === undefined) rows.set(row, [residual]);
    else found.push(residual);
  }
  const found: { readonly trials: readonly number[]; readonly lanes: readonly number[] }[] = [];
  for (const row of rows.values()) {
    row.forEach((a, i) => {
      for (let j = i + 1; j < row.length; j++) {
        const b = row[j]!;
        const now = a.standard * a.standard + b.standard * b.standard;
        if (!(now > much) || trials[a.trial]!.preset !== trials[b.trial]!.preset) continue;
        const unit = (of: Residual): number => (of.read - of.fitted) / of.standard;
        const other = ((b.read - a.fitted) / unit(a)) ** 2 + ((a.read - b.fitted) / unit(b)) ** 2;
        if (now > better * other) {
          found.push({ trials: [a.trial, b.trial], lanes: [a.lane, b.lane] });
        }
      }
    });
  }
  return found;
};

/** How near lanes come to what the book says of them as a rule, as shares; nearer where the book says so. */
const pulseShare = 0.01;
const kvShare = 0.1;

/**
 * Lanes that are far from what the book says of them, and near to it in each other's place.
 *
 * Method   squares of pulse and Kv over what book and trials leave open; from the order that was told, the exchange of two
 *          that lessens their sum most, again until none does
 * Returns  places of the lanes; none where the order that was told does as well
 * Cost     O(lanes^2) an exchange
 */
export const exchangedLanes = ({ scales }: RowModel, lanes: readonly LaneEstimate[]): readonly number[] => {
  const far = (lane: number, book: number): number => {
    const values = lanes[lane]!;
    const { lane: told, priors } = scales[book]!;
    const pulse =
      (values.pulse.value * told.pulses - 1) /
      Math.hypot(Math.min(pulseShare, priors.pulse), values.pulse.deviation * told.pulses);
    const kv =
      Math.log(values.kv.value / told.kv) /
      Math.hypot(Math.min(kvShare, priors.kv), values.kv.deviation / values.kv.value);
    return pulse * pulse + kv * kv;
  };
  const tried = lanes.flatMap(({ trials }, lane) => (trials > 0 ? [lane] : []));
  const place = lanes.map((_, lane) => lane);
  const gain = (a: number, b: number): number =>
    far(a, place[a]!) + far(b, place[b]!) - far(a, place[b]!) - far(b, place[a]!);
  for (let exchanges = 0; exchanges < lanes.length; exchanges++) {
    let best: readonly [number, number] | undefined;
    tried.forEach((a, i) => {
      for (const b of tried.slice(i + 1)) {
        if (gain(a, b) > (best === undefined ? 0 : gain(...best))) best = [a, b];
      }
    });
    if (best === undefined) break;
    const [a, b] = best;
    [place[a], place[b]] = [place[b]!, place[a]!];
  }
  const moved = tried.filter((lane) => place[lane] !== lane);
  const sum = (at: (lane: number) => number): number =>
    moved.reduce((all, lane) => all + far(lane, at(lane)), 0);
  const now = sum((lane) => lane);
  const other = sum((lane) => place[lane]!);
  return now - other > much && now > better * other ? moved : [];
};
