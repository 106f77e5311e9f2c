import { npshSheet } from '../../../sheets/water/npsh.ts';
import { npshRequiredHereSheet } from '../../../sheets/water/npsh-required-here.ts';
import { vapourPressureSheet } from '../../../sheets/water/vapour-pressure.ts';
import { waterDensitySheet } from '../../../sheets/water/water-density.ts';
import { atmosphereHere } from '../air/site-air.ts';
import type { Calculation } from '../calculation.ts';
import type { Known } from '../known.ts';
import type { Answer } from '../need.ts';

/** Loss of a short suction pipe with a strainer, common practice. */
const usualSuctionLoss = 0.5;

/** Place of the wash zone that a pump draws from. */
const zoneOf = (c: Calculation, drive: string): string | undefined => {
  for (const [s, station] of (c.book.line?.stations ?? []).entries()) {
    if (station.kind !== 'washer') continue;
    const z = (station.zones ?? []).findIndex((zone) => zone.pump === drive);
    if (z >= 0) return `/line/stations/${s}/zones/${z}`;
  }
  return undefined;
};

/**
 * Suction head that a wash pump is offered on this floor against what it requires at its speed here: hot water, altitude
 * and a higher frequency all eat into it.
 */
export const pumpSuction = (c: Calculation, index: number, speedRatio: Known | undefined): Answer => {
  const path = `/line/drives/${index}`;
  const drive = c.book.line!.drives![index]!;
  const point = (drive.pump ?? []).findLastIndex((each) => each.npsh !== undefined);
  const zone = zoneOf(c, drive.tag);
  if (zone === undefined) c.miss('/line/stations');
  const temperature = zone === undefined ? undefined : c.needed(`${zone}/temperature`, 'temperature');
  return {
    demand: c.run(npshRequiredHereSheet, {
      required: c.needed(`${path}/pump/${point}/npsh`, 'length'),
      ratio: speedRatio,
    })?.required,
    have: c.run(npshSheet, {
      atmosphere: atmosphereHere(c),
      vapourPressure: c.run(vapourPressureSheet, { temperature })?.vapourPressure,
      suctionHeight: c.needed(`${path}/suction`, 'length'),
      suctionLoss: { value: usualSuctionLoss, from: { path: `${path}/suction`, assumed: true } },
      density: c.run(waterDensitySheet, { temperature })?.density,
    })?.npsh,
  };
};
