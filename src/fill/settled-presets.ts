import type { EstimateBasis } from './lane-estimate.ts';
import { laneValues, perLane } from './lane-unknowns.ts';
import {
  type Departures,
  type ForecastFigure,
  type Place,
  placed,
  type RowForecast,
  rowForecast,
} from './row-forecast.ts';

export interface SettledPresets {
  readonly presets: readonly number[];
  readonly forecast: RowForecast;
}

/** Rounds in which the after-runs, and with them the counts, settle. */
const rounds = 6;
/** Lanes depart from their slopes alike at counts that differ by no more than this share. */
const alike = 0.02;
/** Before anything is known of them. */
const none = (lanes: number): Departures => {
  const departure = { shift: 0, variance: 0 };
  const all = Array.from({ length: lanes }, () => departure);
  return { volumes: all, times: all, rowTime: departure, stuckShare: 0 };
};

/**
 * Smallest whole counts at which each lane's mean volume is what is wanted of it.
 *
 * Method   counts that the slopes alone would have, then those that the whole forecast would, with the departures of the
 *          round before where the counts lie near; what is given back was foretold whole at its own counts
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
  const nextOf = (presets: readonly number[], forecast: RowForecast): readonly number[] =>
    presets.map((preset, i) => {
      const figure = forecast.volumes[i]!;
      const more = (wanted(figure, i) - figure.value) / pulses[i]!;
      // a count that is whole but for rounding is not the next one
      return Math.max(1, preset + Math.ceil(more - 1e-9));
    });
  const differ = (a: readonly number[], b: readonly number[], by: number): boolean =>
    a.some((count, i) => Math.abs(count - b[i]!) > by * count);
  let presets: readonly number[] = model.scales.map(() => used);
  let known: { readonly presets: readonly number[]; readonly departures: Departures } | undefined;
  for (let round = 0; round <= rounds; round++) {
    const near = known !== undefined && !differ(presets, known.presets, alike);
    const departures = near ? known!.departures : round === 0 ? none(presets.length) : undefined;
    const forecast = rowForecast(basis, place, presets, departures);
    if (forecast === undefined) return undefined;
    if (departures === undefined) known = { presets, departures: forecast.departures };
    const next = nextOf(presets, forecast);
    const stays = !differ(next, presets, 0);
    if (stays && departures === undefined) return { presets, forecast };
    // what has settled by departures from elsewhere is looked at with its own
    if (stays) known = undefined;
    presets = next;
  }
  // lanes that end together can change places for ever: the higher count of the two keeps the promise
  const forecast = rowForecast(basis, place, presets);
  if (forecast === undefined) return undefined;
  const higher = nextOf(presets, forecast).map((count, i) => Math.max(count, presets[i]!));
  const last = differ(higher, presets, 0) ? rowForecast(basis, place, higher) : forecast;
  return last === undefined ? undefined : { presets: higher, forecast: last };
};
