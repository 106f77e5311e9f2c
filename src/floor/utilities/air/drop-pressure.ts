import { cutInPressureSheet } from '../../../sheets/air/cut-in-pressure.ts';
import { filterLossSheet } from '../../../sheets/air/filter-loss.ts';
import { regulatorOutletSheet } from '../../../sheets/air/regulator-outlet.ts';
import type { Calculation } from '../calculation.ts';
import type { Known } from '../known.ts';
import { airDemand, allDraw } from './air-demand.ts';
import { alongPieces } from './along-pieces.ts';
import { atmosphereHere } from './site-air.ts';

/** Band between loading and unloading, and losses of what nobody gave a loss for; memory. */
export const usualBand = 1e5;
const usualDryerLoss = 0.2e5;
const usualFilterLoss = 0.2e5;

/** Lowest pressure at the receiver: where the compressor loads. */
export const receiverLow = (c: Calculation): Known | undefined => {
  const path = `${c.floorPath}/air/compressor`;
  const cutIn = c.number(`${path}/cutIn`, 'gaugePressure');
  if (cutIn !== undefined) return cutIn;
  const delivered = c.needed(`${path}/pressure`, 'gaugePressure');
  c.assume(`${path}/cutIn`);
  return c.run(cutInPressureSheet, { cutOut: delivered })?.cutIn;
};

const afterTreatment = (c: Calculation, flow: Known | undefined): Known | undefined => {
  const { air } = c.book.floors![c.floor]!;
  const path = `${c.floorPath}/air`;
  let pressure = receiverLow(c);
  const through = (loss: Known, rated: Known | undefined): void => {
    pressure = c.run(filterLossSheet, {
      flow,
      pressure,
      atmosphere: atmosphereHere(c),
      filterLoss: loss,
      filterFlow: rated ?? flow,
      filterPressure: pressure,
    })?.outletPressure;
  };
  if (air?.dryer !== undefined && air.dryer.kind !== 'none') {
    through(
      c.numberOr(`${path}/dryer/loss`, 'pressureDifference', usualDryerLoss),
      c.number(`${path}/dryer/flow`, 'normalAirFlow'),
    );
  }
  for (const i of (air?.filters ?? []).keys()) {
    through(
      c.numberOr(`${path}/filters/${i}/loss`, 'pressureDifference', usualFilterLoss),
      c.number(`${path}/filters/${i}/flow`, 'normalAirFlow'),
    );
  }
  return pressure;
};

/** Pressure behind the regulator of the line, with everything on it moving. */
const linePressure = (c: Calculation): Known | undefined =>
  c.once('linePressure', (c) => {
    const { air } = c.book.floors![c.floor]!;
    const path = `${c.floorPath}/air`;
    if ((air?.run ?? []).length === 0) {
      c.miss(`${path}/run`);
      return undefined;
    }
    const all = airDemand(c)?.peakFlow;
    const flow = allDraw(c, 'peakFlow');
    const pressure = alongPieces(c, air?.run ?? [], `${path}/run`, flow, afterTreatment(c, flow));
    if (air?.regulator?.set === undefined) return pressure;
    return c.run(regulatorOutletSheet, {
      flow: all,
      pressure,
      setPressure: c.needed(`${path}/regulator/set`, 'gaugePressure'),
      ...(air.regulator.droop === undefined
        ? {}
        : { droop: c.needed(`${path}/regulator/droop`, 'pressureDifference') }),
      droopFlow: all,
    })?.outletPressure;
  });

/**
 * Pressure at an air drop while everything moves that can: from where the compressor loads, through treatment, run and
 * regulator, at the peak draw of the line and with what others draw; or what the site says that arrives there.
 */
export const dropPressure = (c: Calculation, drop: string): Known | undefined =>
  c.once(`dropPressure ${drop}`, (c) => {
    const path = `${c.floorPath}/air/drops`;
    const drops = c.book.floors![c.floor]!.air?.drops ?? [];
    const own = drops.findIndex((each) => each.drop === drop);
    const said = own < 0 ? undefined : c.number(`${path}/${own}/pressure`, 'gaugePressure');
    if (said !== undefined) return said;
    const pieces = drops[own]?.run ?? [];
    const pressure = linePressure(c);
    if (pieces.length === 0) return pressure;
    return alongPieces(c, pieces, `${path}/${own}/run`, airDemand(c, drop)?.peakFlow, pressure);
  });
