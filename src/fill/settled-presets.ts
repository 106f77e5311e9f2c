import type { EstimateBasis } from './lane-estimate.ts';
import { laneValues, perLane } from './lane-unknowns.ts';
import { type ForecastFigure, type Place, placed, type RowForecast, rowForecast } from './row-forecast.ts';

export interface SettledPresets {
  readonly presets: readonly number[];
  readonly forecast: RowForecast;
}

/** Rounds in which the after-runs, and with them the counts, settle. */
const rounds = 6;

/**
 * Smallest whole counts at which each lane's mean volume is what is wanted of it.
 *
 * Symbols  wanted  m3 by lane, from what is foretold of it: its margin hangs on how well it is known
 * Returns  undefined where some lane can never reach its count
 */
export const settledPresets = (
  basis: EstimateBasis,
  place: Place,
  wanted: (figure: ForecastFigure, lane: number) => number,
): SettledPresets | undefined => {
  const { model, unknowns } = placed(basis, place);
  const pulses = model.scales.map((scale, i) => laneValues(scale, unknowns, perLane * i).pulse);
  const used = Math.max(...basis.setups.flatMap(({ setup }) => setup.presets));
  let presets: readonly number[] = model.scales.map(() => used);
  for (let round = 0; ; round++) {
    const forecast = rowForecast(basis, place, presets);
    if (forecast === undefined) return undefined;
    const next = presets.map((preset, i) => {
      const figure = forecast.volumes[i]!;
      const more = (wanted(figure, i) - figure.value) / pulses[i]!;
      // a count that is whole but for rounding is not the next one
      return Math.max(1, preset + Math.ceil(more - 1e-9));
    });
    if (next.every((count, i) => count === presets[i])) return { presets, forecast };
    if (round >= rounds) {
      // lanes that end together can change places for ever: the higher count of the two keeps the promise
      const higher = next.map((count, i) => Math.max(count, presets[i]!));
      const last = rowForecast(basis, place, higher);
      return last === undefined ? undefined : { presets: higher, forecast: last };
    }
    presets = next;
  }
};
