import { drainMixSheet } from '../../../sheets/heat/drain-mix.ts';
import { causticPhSheet } from '../../../sheets/hygiene/caustic-ph.ts';
import { solutionConcentrationSheet } from '../../../sheets/hygiene/solution-concentration.ts';
import { neutralisingAcidSheet } from '../../../sheets/water/neutralising-acid.ts';
import type { Calculation } from '../calculation.ts';
import { greatestOf } from '../greatest-of.ts';
import { coldWater, feedTemperature } from '../heat/bath-water.ts';
import { bathVolume } from '../heat/heat-up.ts';
import type { ZoneAt } from '../heat/zones-of.ts';
import type { Known } from '../known.ts';
import type { Answer } from '../need.ts';
import type { TieInAt } from '../water/water-draw.ts';
import { bathsDumped, zoneOverflow, zonesDraining } from './drain-flows.ts';

const temperatureOf = (c: Calculation, at: ZoneAt): Known | undefined =>
  at.zone.temperature === undefined
    ? feedTemperature(c, at)
    : c.number(`${at.path}/temperature`, 'temperature');

/** What runs into a drain while the line runs, mixed; with the cold water that would bring it under the limit. */
export const drainMix = (c: Calculation, at: TieInAt) =>
  c.once(`drainMix ${at.path}`, (c) => {
    const zones = zonesDraining(c.book, at).filter(({ zone }) => zone.flow !== undefined);
    if (zones.length === 0) return undefined;
    const limit = c.number(`${c.floorPath}/drains/highestTemperature`, 'temperature');
    const tempering = c.number(`${c.floorPath}/drains/tempering`, 'volumeFlow');
    return c.run(drainMixSheet, {
      flows: [...zones.map((zone) => zoneOverflow(c, zone)), ...(tempering === undefined ? [] : [tempering])],
      temperatures: [
        ...zones.map((zone) => temperatureOf(c, zone)),
        ...(tempering === undefined ? [] : [coldWater(c)]),
      ],
      ...(limit === undefined ? {} : { limit, cold: coldWater(c) }),
    });
  });

/** The hottest that a drain gets: what runs all the time, mixed, or a bath that is let go on its own. */
export const temperatureAnswer = (c: Calculation, at: TieInAt): Answer => {
  const baths = bathsDumped(c.book, at).map(
    ({ path }) =>
      c.number(`${path}/letGo/temperature`, 'temperature') ?? c.needed(`${path}/temperature`, 'temperature'),
  );
  const running = drainMix(c, at)?.temperature;
  return {
    demand: c.needed(`${c.floorPath}/drains/highestTemperature`, 'temperature'),
    have: greatestOf(c, [running, ...baths]),
  };
};

/** A bath of caustic that is let go: its pH, and the acid that it takes. */
export const causticDumped = (c: Calculation, bath: ZoneAt) =>
  c.once(`causticDumped ${bath.path}`, (c) =>
    c.run(neutralisingAcidSheet, {
      volume: bathVolume(c, bath),
      caustic: c.run(solutionConcentrationSheet, {
        share: c.needed(`${bath.path}/concentration`, 'massFraction'),
      })?.concentration,
      acid: { value: 'sulfuric', from: { path: bath.path, assumed: true } },
    }),
  );

/** pH of a bath that is let go: what it is brought to first, else that of its caustic, thinned where water is added. */
const acidityLetGo = (c: Calculation, bath: ZoneAt): Known | undefined => {
  const brought = c.number(`${bath.path}/letGo/acidity`, 'acidity');
  if (brought !== undefined) return brought;
  const water = c.number(`${bath.path}/letGo/water`, 'ratio');
  if (water === undefined) return causticDumped(c, bath)?.acidity;
  const share = c.needed(`${bath.path}/concentration`, 'massFraction');
  return c.run(causticPhSheet, {
    concentration: c.run(solutionConcentrationSheet, { share, water })?.concentration,
  })?.acidity;
};

/** Lowest and highest pH of a text such as `6 to 9.5` or `pH 5.5 - 10`. */
export const rangeOf = (text: string): readonly [number, number] | undefined => {
  const [low, high, ...more] = (text.match(/\d+(?:[.,]\d+)?/g) ?? []).map((one) =>
    Number(one.replace(',', '.')),
  );
  return low === undefined || high === undefined || more.length > 0 || low >= high || high > 14
    ? undefined
    : [low, high];
};

/**
 * pH of a bath that is let go against what may be discharged.
 *
 * Assumes  caustic in pure water; real baths are buffered, and the water authority goes by what it measures
 */
export const acidityAnswer = (c: Calculation, at: TieInAt): Answer => {
  const path = `${c.floorPath}/drains/acidity`;
  const said = c.neededWord(path);
  const bath = bathsDumped(c.book, at).find(({ zone }) => zone.medium === 'detergent');
  const have = bath === undefined ? undefined : acidityLetGo(c, bath);
  c.note('DRAIN_CAUSTIC');
  const range = said === undefined ? undefined : rangeOf(said.value);
  if (said === undefined) return { have };
  if (range === undefined) {
    c.miss(path);
    return { have, verdict: 'unknown', said: { demand: said.value } };
  }
  return {
    have,
    demand: { value: range[1], from: said.from },
    said: { demand: said.value },
    ...(have !== undefined && have.value < range[0] ? { verdict: 'short' as const } : {}),
  };
};
