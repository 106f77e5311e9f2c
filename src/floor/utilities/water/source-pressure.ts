import { gravitySupplySheet } from '../../../sheets/water/gravity-supply.ts';
import { heightAboveSheet } from '../../../sheets/water/height-above.ts';
import { mainSupplySheet } from '../../../sheets/water/main-supply.ts';
import { pumpedSupplySheet } from '../../../sheets/water/pumped-supply.ts';
import { tieInPressureSheet } from '../../../sheets/water/tie-in-pressure.ts';
import type { Calculation } from '../calculation.ts';
import type { Known } from '../known.ts';
import { waterDensity } from './run-pieces.ts';

/** Long mains lose with the power 1.85 of the flow. */
const usualExponent = 1.85;
/** Plan area that stands for a tank that does not fall. */
const endless = 1e6;

/** Pressure that the source of the wash water keeps at a flow, at its own height. */
const atSource = (c: Calculation, path: string, flow: Known | undefined): Known | undefined => {
  const { source } = c.book.floors![c.floor]!.water!;
  switch (source!.kind) {
    case 'main':
      return c.run(mainSupplySheet, {
        staticPressure: c.needed(`${path}/static`, 'gaugePressure'),
        residualPressure: c.needed(`${path}/residual`, 'gaugePressure'),
        testFlow: c.needed(`${path}/testFlow`, 'volumeFlow'),
        exponent: c.plain(`${path}/exponent`, usualExponent)!,
        flow,
      })?.pressure;
    case 'gravity': {
      const area: Known = c.number(`${path}/area`, 'area') ?? {
        value: endless,
        from: { path: `${path}/area` },
      };
      const surface = c.needed(`${path}/surface`, 'length');
      // the height at which the pressure holds is that of the tie-in, which is taken from it afterwards
      return c.run(gravitySupplySheet, {
        surfaceHeight: surface,
        density: waterDensity(c),
        planArea: area,
        flow,
      })?.pressure;
    }
    case 'pumped': {
      const points = source!.curve ?? [];
      if (points.length === 0) c.miss(`${path}/curve`);
      if (points.length === 0) return undefined;
      const rated = c.needed(`${path}/ratedFrequency`, 'frequency');
      const regulator =
        source!.regulator === undefined ? undefined : c.needed(`${path}/regulator/set`, 'gaugePressure');
      const surface = c.numberOr(`${path}/suctionSurface`, 'length', 0);
      const height = c.number(`${path}/height`, 'length');
      return c.run(pumpedSupplySheet, {
        suctionHeight:
          height === undefined ? surface : c.run(heightAboveSheet, { surface, point: height })?.height,
        flows: points.map((_, i) => c.needed(`${path}/curve/${i}/flow`, 'volumeFlow')),
        heads: points.map((_, i) => c.needed(`${path}/curve/${i}/head`, 'length')),
        ratedFrequency: rated,
        frequency:
          c.number(`${path}/frequency`, 'frequency') ??
          c.number(`${c.floorPath}/power/frequency`, 'frequency') ??
          rated,
        ...(regulator === undefined ? {} : { regulatorPressure: regulator }),
        density: waterDensity(c),
        flow,
      })?.pressure;
    }
    case 'reading':
      c.miss(`${c.floorPath}/water/pressure`);
      return undefined;
  }
};

/** Where the pressure of the source holds and where it is wanted; nothing where no height is said. */
const heightsOf = (c: Calculation, path: string, tieInPath: string) => {
  const { source } = c.book.floors![c.floor]!.water!;
  const tieIn = c.number(`${tieInPath}/height`, 'length');
  const floor = c.number(`${c.floorPath}/standsAt`, 'length');
  const fixed: Known = { value: 0, from: { path: tieInPath, assumed: true } };
  // a tank's surface was counted from the datum already
  const own = source!.kind === 'gravity' ? fixed : c.number(`${path}/height`, 'length');
  if (own === undefined) c.assume(`${path}/height`);
  if (tieIn === undefined) c.assume(`${tieInPath}/height`);
  return own === undefined || tieIn === undefined ? {} : { from: own, to: tieIn, stands: floor ?? fixed };
};

/** Pressure of the source at a flow, brought to the height of a tie-in, behind what is lost on the way. */
export const pressureBehind = (
  c: Calculation,
  tieInPath: string,
  { flow, loss }: { readonly flow: Known | undefined; readonly loss?: Known | undefined },
): Known | undefined => {
  const path = `${c.floorPath}/water/source`;
  return c.run(tieInPressureSheet, {
    pressure: atSource(c, path, flow),
    density: waterDensity(c),
    ...heightsOf(c, path, tieInPath),
    ...(loss === undefined ? {} : { loss }),
  })?.left;
};
