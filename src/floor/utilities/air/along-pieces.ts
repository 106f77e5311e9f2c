import type { RunPiece } from '../../../book/index.ts';
import { filterLossSheet } from '../../../sheets/air/filter-loss.ts';
import { fittingEquivalentSheet } from '../../../sheets/air/fitting-equivalent.ts';
import { lineLossSheet } from '../../../sheets/air/line-loss.ts';
import { restrictionOutletSheet } from '../../../sheets/air/restriction-outlet.ts';
import { sonicConductanceSheet } from '../../../sheets/air/sonic-conductance.ts';
import type { Calculation } from '../calculation.ts';
import type { Known } from '../known.ts';
import { lossSum, roughnessOf } from '../pipe-piece.ts';
import { airTemperature, atmosphereHere } from './site-air.ts';

/** Critical pressure ratio of ISO 6358: a real valve has 0.2 to 0.5, memory. */
export const usualCriticalRatio = 0.3;

const pieceOutlet = (
  c: Calculation,
  piece: RunPiece,
  at: string,
  flow: Known | undefined,
  pressure: Known | undefined,
): Known | undefined => {
  const air = { flow, pressure, atmosphere: atmosphereHere(c), temperature: airTemperature(c) };
  if (piece.kind === 'constant') {
    return c.run(filterLossSheet, {
      flow,
      pressure,
      atmosphere: air.atmosphere,
      filterLoss: c.needed(`${at}/loss`, 'pressureDifference'),
      filterFlow: flow,
      filterPressure: pressure,
    })?.outletPressure;
  }
  if (piece.kind === 'valve') {
    const criticalRatio: Known = {
      value: usualCriticalRatio,
      from: { path: `${at}/kv`, assumed: true },
    };
    const conductance = c.run(sonicConductanceSheet, {
      flowCoefficient: c.needed(`${at}/kv`, 'flowCoefficient'),
      criticalRatio,
    })?.conductance;
    return c.run(restrictionOutletSheet, { ...air, conductance, criticalRatio })?.outletPressure;
  }
  const bore = c.needed(`${at}/bore`, 'length');
  const kSum = lossSum(piece);
  return c.run(lineLossSheet, {
    ...air,
    bore,
    length: c.needed(`${at}/length`, 'length'),
    roughness: roughnessOf(c, piece, at),
    ...(kSum === 0
      ? {}
      : {
          fittings: c.run(fittingEquivalentSheet, {
            coefficient: { value: kSum, from: { path: `${at}/fittings` } },
            bore,
          })?.length,
        }),
  })?.outletPressure;
};

/** Pressure at the end of pieces in series, with the same free air through all of them. */
export const alongPieces = (
  c: Calculation,
  pieces: readonly RunPiece[],
  path: string,
  flow: Known | undefined,
  pressure: Known | undefined,
): Known | undefined =>
  pieces.reduce<Known | undefined>(
    (before, piece, i) => pieceOutlet(c, piece, `${path}/${i}`, flow, before),
    pressure,
  );
