import { heatTogetherSheet } from '../../../sheets/heat/heat-together.ts';
import { heatingWaterNeedSheet } from '../../../sheets/heat/heating-water-need.ts';
import { steamNeedSheet } from '../../../sheets/heat/steam-need.ts';
import { wetSteamSheet } from '../../../sheets/heat/wet-steam.ts';
import { atmosphereHere } from '../air/site-air.ts';
import type { Calculation } from '../calculation.ts';
import { greatestOf } from '../greatest-of.ts';
import type { Known } from '../known.ts';
import { bathLoad } from './bath-load.ts';
import { type HeatKind, heatersOfZone } from './heaters-of.ts';
import { type ZoneAt, zonesOf } from './zones-of.ts';

/** Zones that a heater of one kind warms; of any kind where none is named. */
export const heatedZones = (c: Pick<Calculation, 'book'>, kind?: HeatKind): readonly ZoneAt[] =>
  zonesOf(c.book).filter(({ zone }) =>
    heatersOfZone(c.book, zone.tag).some((each) => kind === undefined || each.kind === kind),
  );

/** Steady load of all zones that are warmed by one kind of heat. */
export const loadBy = (c: Calculation, kind?: HeatKind): Known | undefined =>
  c.once(`loadBy ${kind ?? ''}`, (c) => {
    const loads = heatedZones(c, kind).map((at) => bathLoad(c, at)?.total);
    if (loads.length === 0) return undefined;
    // a bath that its bottles warm gives the others nothing
    return c.run(heatTogetherSheet, { heats: loads })?.heat;
  });

/** Hottest bath that steam warms: what it condenses against. */
const hottestBath = (c: Calculation): Known | undefined =>
  greatestOf(
    c,
    heatedZones(c, 'steam').map(({ path }) => c.needed(`${path}/temperature`, 'temperature')),
  );

/** Steam of this floor that carries the steady load. */
export const steamNeed = (c: Calculation) =>
  c.once('steamNeed', (c) =>
    c.run(steamNeedSheet, {
      heat: loadBy(c, 'steam'),
      pressure: c.needed(`${c.floorPath}/heat/steam/pressure`, 'gaugePressure'),
      atmosphere: atmosphereHere(c),
      use: { value: 'indirect', from: { path: '/line/heaters', assumed: true } },
      bath: hottestBath(c),
    }),
  );

/** The same of wet steam: only its dry share gives heat. */
export const steamFlow = (c: Calculation): Known | undefined => {
  const dry = steamNeed(c)?.steam;
  const dryness = c.number(`${c.floorPath}/heat/steam/dryness`, 'ratio');
  if (dry === undefined || dryness === undefined || dryness.value <= 0) return dry;
  return c.run(wetSteamSheet, { dry, dryness })?.steam;
};

export const heatingWater = (c: Calculation) =>
  c.once('heatingWater', (c) =>
    c.run(heatingWaterNeedSheet, {
      heat: loadBy(c, 'hot water'),
      supply: c.needed(`${c.floorPath}/heat/hotWater/supply`, 'temperature'),
      back: c.needed(`${c.floorPath}/heat/hotWater/return`, 'temperature'),
    }),
  );
