import * as z from 'zod';
import { list, name, note, part, whole } from './part.ts';
import { above0, least0, quantity } from './quantity.ts';
import { runPiece } from './run.ts';

const gaugeHeight = quantity('length', 'Height above the datum at which its pressure holds.');

export const mainSource = part(
  'A town main, from a flow test: static and residual at the same gauge.',
  { kind: z.literal('main') },
  {
    name,
    static: quantity('gaugePressure', 'Pressure with no flow.', least0),
    residual: quantity('gaugePressure', 'Pressure at the test flow.', least0),
    testFlow: quantity('volumeFlow', 'Flow in the test.', above0),
    exponent: z
      .union([z.literal(1.85), z.literal(2)])
      .describe('1.85 where long mains make the loss, 2 where a meter, valve or short service pipe does.'),
    height: gaugeHeight,
    note,
  },
  [['residual', '<', 'static']],
);

export const gravitySource = part(
  'A tank that stands higher than the manifold.',
  { kind: z.literal('gravity') },
  {
    name,
    surface: quantity('length', 'Height of the liquid surface above the datum.'),
    outlet: quantity('length', 'Height of the outlet above the datum: below it the tank is empty.'),
    area: quantity('area', 'Plan area of the tank. Absent: the surface does not fall.', above0),
    makeUp: quantity('volumeFlow', 'Flow into the tank while the line runs.', least0),
    note,
  },
);

export const sourcePumpPoint = part(
  'One point of the pump curve.',
  {},
  {
    flow: quantity('volumeFlow', 'Flow.', least0),
    head: quantity('length', 'Head that the pump gives.', least0),
    npsh: quantity('length', 'Net positive suction head that it requires.', least0),
  },
);

export const pumpedSource = part(
  'A pump.',
  { kind: z.literal('pumped') },
  {
    name,
    curve: list(sourcePumpPoint, 'Three or more points of its curve, or one duty point.'),
    curveFrequency: quantity(
      'frequency',
      'Supply frequency at which the curve holds. Absent: the rated one.',
      above0,
    ),
    ratedFrequency: quantity('frequency', 'Rated frequency of its motor.', above0),
    frequency: quantity(
      'frequency',
      'Frequency at which it is run here, by an inverter. Absent: that of the floor.',
      above0,
    ),
    height: quantity('length', 'Height of its outlet gauge above the datum.'),
    suctionSurface: quantity(
      'length',
      'Height of the liquid surface that it draws from, above the datum. Absent: 0.',
    ),
    tank: part(
      'Tank that it draws from.',
      {},
      {
        volume: quantity('volume', 'Volume that it can give.', above0),
        makeUp: quantity('volumeFlow', 'Flow into it while the line runs.', least0),
        area: quantity('area', 'Plan area.', above0),
      },
    ),
    regulator: part(
      'Pressure regulator behind the pump.',
      {},
      {
        set: quantity('gaugePressure', 'Set pressure.', least0),
        height: quantity('length', 'Height of its gauge above the datum. Absent: that of the pump.'),
      },
    ),
    vessel: part(
      'Hydropneumatic vessel and the switch that starts and stops the pump.',
      {},
      {
        volume: quantity('volume', 'Volume of the vessel.', above0),
        precharge: quantity('gaugePressure', 'Pressure of its air when empty of liquid.', least0),
        cutIn: quantity('gaugePressure', 'Pressure at which the pump starts.', least0),
        cutOut: quantity('gaugePressure', 'Pressure at which it stops.', least0),
      },
      [['cutIn', '<', 'cutOut']],
    ),
    note,
  },
);

export const manifoldReading = part(
  'One reading.',
  {},
  {
    lanesOpen: whole('Lanes that were open.'),
    pressure: quantity('gaugePressure', 'Pressure at the manifold.'),
    flow: quantity('volumeFlow', 'Flow, where it was read.', least0),
  },
);

export const readingSource = part(
  'Readings at the manifold: what lies before it is not known.',
  { kind: z.literal('reading') },
  {
    name,
    readings: list(manifoldReading, 'Readings with more or fewer lanes open.'),
    note,
  },
);

export const source = z
  .discriminatedUnion('kind', [mainSource, gravitySource, pumpedSource, readingSource])
  .meta({ id: 'source', description: 'Where the liquid comes from.' });

export const supply = part(
  'The way of the liquid to the manifold.',
  {},
  {
    source,
    run: list(runPiece, 'Pieces between source and manifold, in the order of the flow.'),
    note,
  },
);
