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

/** How near lanes come to what the book says of them as a rule, as shares. */
const pulseShare = 0.01;
const kvShare = 0.1;

/** Pairs of lanes whose values are far from the book, and near to it the other way round. */
export const swappedLanes = (
  { scales }: RowModel,
  lanes: readonly LaneEstimate[],
): readonly (readonly [number, number])[] => {
  const far = (values: LaneEstimate, book: number): number => {
    const { lane } = scales[book]!;
    const pulse =
      (values.pulse.value * lane.pulses - 1) / (pulseShare + values.pulse.deviation * lane.pulses);
    const kv = Math.log(values.kv.value / lane.kv) / (kvShare + values.kv.deviation / values.kv.value);
    return pulse * pulse + kv * kv;
  };
  const found: [number, number][] = [];
  lanes.forEach((a, i) => {
    for (let j = i + 1; j < lanes.length; j++) {
      const b = lanes[j]!;
      if (a.trials === 0 || b.trials === 0) continue;
      const now = far(a, i) + far(b, j);
      if (now > much && now > better * (far(a, j) + far(b, i))) found.push([i, j]);
    }
  });
  return found;
};
