import type { Book } from '../../../book/index.ts';
import { actualFlowSheet } from '../../../sheets/air/actual-flow.ts';
import { aftercoolerOutletSheet } from '../../../sheets/air/aftercooler-outlet.ts';
import { condensateSheet } from '../../../sheets/air/condensate.ts';
import type { Calculation } from '../calculation.ts';
import type { Draw } from '../need.ts';
import { shiftTime } from '../shift-time.ts';
import { airDemand } from './air-demand.ts';
import { compressorAt } from './air-needs.ts';
import { intakeState, treatedDewPoint } from './air-quality.ts';
import { dropPressure, receiverLow } from './drop-pressure.ts';
import { airTemperature, atmosphereHere } from './site-air.ts';
import { strokeAt } from './stroke-here.ts';

const condensed = (c: Calculation) =>
  c.once('condensed', (c) => {
    const { temperature, humidity } = intakeState(c);
    const room = airTemperature(c);
    const inlet = c.number(`${c.floorPath}/air/dryer/inlet`, 'temperature');
    if (inlet === undefined) c.assume(`${c.floorPath}/air/dryer/inlet`);
    return c.run(condensateSheet, {
      intakeFlow: compressorAt(c)?.freeAirNeeded,
      temperature,
      relativeHumidity: humidity,
      atmosphere: atmosphereHere(c),
      pressure: receiverLow(c),
      aftercooler: inlet ?? c.run(aftercoolerOutletSheet, { room })?.temperature,
      dryerDewPoint: treatedDewPoint(c),
      time: shiftTime(c),
    });
  });

/** Figures of the air that nothing is held against. */
export const airDraws = (book: Book): readonly Draw[] => {
  const first = book.line?.airDrops?.[0];
  if (first === undefined) return [];
  return [
    {
      id: 'airAverage',
      utility: 'air',
      kind: 'normalAirFlow',
      answer: (c) => airDemand(c)?.averageFlow,
    },
    { id: 'airPeak', utility: 'air', kind: 'normalAirFlow', answer: (c) => airDemand(c)?.peakFlow },
    {
      id: 'airPeakActual',
      utility: 'air',
      kind: 'actualAirFlow',
      answer: (c) =>
        c.run(actualFlowSheet, {
          flow: airDemand(c)?.peakFlow,
          pressure: c.needed('/line/airDrops/0/pressure', 'gaugePressure'),
          atmosphere: atmosphereHere(c),
          temperature: airTemperature(c),
          bore: c.needed(`${c.floorPath}/air/run/0/bore`, 'length'),
        })?.actualFlow,
    },
    { id: 'airLoadShare', utility: 'air', kind: 'ratio', answer: (c) => compressorAt(c)?.loadShare },
    {
      id: 'airCondensate',
      utility: 'air',
      kind: 'mass',
      answer: (c) => condensed(c)?.condensedInAftercooler,
    },
    { id: 'airCondensateDryer', utility: 'air', kind: 'mass', answer: (c) => condensed(c)?.condensedInDryer },
    { id: 'airWaterLeft', utility: 'air', kind: 'mass', answer: (c) => condensed(c)?.leftAfterDryer },
    ...(book.line?.cylinders ?? []).map(
      (cylinder, i): Draw => ({
        id: 'strokeOut',
        of: cylinder.tag,
        utility: 'air',
        kind: 'time',
        answer: (c) => strokeAt(c, i, 'extend', dropPressure(c, cylinder.drop ?? first.tag))?.longest,
      }),
    ),
  ];
};
