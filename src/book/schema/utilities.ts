import * as z from 'zod';
import { claim, list, name, note, oneOf, part, plain, whole, words } from './part.ts';
import { above0, least0, quantity, share } from './quantity.ts';
import { runPiece } from './run.ts';
import { supply } from './supply.ts';
import { refersTo, tag } from './tag.ts';

export const water = part(
  'Water for washing and rinsing.',
  {},
  {
    source: supply.shape.source.unwrap(),
    run: list(runPiece, 'Pieces between source and tie-in point.'),
    temperature: quantity('temperature', 'Temperature.'),
    pressure: quantity('gaugePressure', 'Pressure at the tie-in point.', least0),
    flow: quantity('volumeFlow', 'Flow that may be drawn.', least0),
    hot: part(
      'Hot water.',
      {},
      {
        temperature: quantity('temperature', 'Temperature.'),
        pressure: quantity('gaugePressure', 'Pressure.', least0),
        flow: quantity('volumeFlow', 'Flow that may be drawn.', least0),
        storage: quantity('volume', 'Stored volume.', least0),
      },
    ),
    conductivity: quantity('conductivity', 'Electrical conductivity.', least0),
    hardness: quantity('density', 'Hardness as mass of calcium carbonate in a volume.', least0),
    iron: quantity('density', 'Iron, mass in a volume.', least0),
    chlorine: quantity('density', 'Free chlorine, mass in a volume.', least0),
    acidity: plain('pH.', 0, 14),
    backflow: words('Backflow protection that is asked or fitted.'),
    flushing: quantity('volume', 'Volume to be flushed before connection.', least0),
    note,
  },
);

export const transformer = part(
  'Transformer that feeds the line.',
  {},
  {
    rating: quantity('apparentPower', 'Rated power.', above0),
    impedance: quantity('ratio', 'Short-circuit impedance.', share),
    primary: quantity('voltage', 'Primary voltage.', above0),
    secondary: quantity('voltage', 'Secondary voltage.', above0),
    note,
  },
);

export const feeder = part(
  'Conductors between the site panel and the line.',
  {},
  {
    length: quantity('length', 'Length one way.', least0),
    size: words('Size of the conductor, in mm2, AWG or kcmil.'),
    material: oneOf(['copper', 'aluminium'], 'Material of the conductor.'),
    insulation: words('Insulation and its rated temperature.'),
    parallel: whole('Conductors in parallel for each phase.', 1),
    grouped: whole('Current-carrying conductors laid together.', 1),
    ambient: quantity('temperature', 'Ambient temperature along it.'),
    laid: words('How it is laid.'),
    note,
  },
);

export const power = part(
  'Electrical supply.',
  {},
  {
    system: words('System: voltage, phases, frequency, earthing.'),
    voltage: quantity('voltage', 'Voltage, line to line.', above0),
    frequency: quantity('frequency', 'Frequency.', above0),
    phases: oneOf(['1', '3'], 'Phases.'),
    earthing: oneOf(
      [
        'TN-S',
        'TN-C',
        'TN-C-S',
        'TT',
        'IT',
        'solidly grounded wye',
        'corner-grounded delta',
        'high-leg delta',
        'ungrounded delta',
        'other',
      ],
      'Earthing and phase arrangement.',
    ),
    faultCurrent: quantity('current', 'Prospective fault current at the panel.', least0),
    sourceFaultPower: quantity('apparentPower', 'Fault level upstream of the transformer.', above0),
    panelRating: quantity('current', 'Short-circuit rating of the panel of the line.', above0),
    transformer,
    stepTransformer: transformer.describe(
      'Transformer between the voltage of the floor and that of the line.',
    ),
    feeder,
    protection: part(
      'Overcurrent device that the site declares.',
      {},
      {
        kind: words('Kind and class.'),
        rating: quantity('current', 'Rated current.', above0),
        interrupting: quantity('current', 'Interrupting rating.', above0),
        residualCurrent: quantity('current', 'Rated residual current, where there is such a device.', above0),
      },
    ),
    readings: list(
      part(
        'Voltages read at one moment.',
        {},
        {
          between: z
            .tuple([
              quantity('voltage', 'L1 to L2.', least0),
              quantity('voltage', 'L2 to L3.', least0),
              quantity('voltage', 'L3 to L1.', least0),
            ])
            .describe('Line to line, in the order L1-L2, L2-L3, L3-L1.'),
          when: words('When, and what was running.'),
        },
      ),
      'What the site says that it reads. Readings taken with us are records.',
    ),
    note,
  },
);

export const air = part(
  'Compressed air.',
  {},
  {
    compressor: part(
      'Compressor.',
      {},
      {
        name,
        kind: words('Kind.'),
        pressure: quantity('gaugePressure', 'Pressure that it delivers.', above0),
        cutIn: quantity('gaugePressure', 'Pressure at which it loads.', least0),
        cutOut: quantity('gaugePressure', 'Pressure at which it unloads.', least0),
        freeAir: quantity(
          'actualAirFlow',
          'Free air delivered, at the intake conditions of its test.',
          above0,
        ),
        power: quantity('power', 'Rated power.', above0),
        count: whole('How many of them run.', 1),
        oilFree: claim('No oil in its compression.'),
        startsPerHour: whole('Starts in an hour that it allows.', 1),
      },
      [['cutIn', '<', 'cutOut']],
    ),
    otherUsers: quantity('normalAirFlow', 'What others draw at the same time.', least0),
    receiver: quantity('volume', 'Volume of the receiver.', least0),
    intake: part(
      'State of the air at the intake.',
      {},
      {
        temperature: quantity('temperature', 'Temperature.'),
        relativeHumidity: quantity('relativeHumidity', 'Relative humidity.', share),
        pressure: quantity('absolutePressure', 'Pressure.', above0),
      },
    ),
    dryer: part(
      'Dryer.',
      {},
      {
        kind: oneOf(['none', 'refrigerated', 'desiccant', 'membrane'], 'Kind.'),
        dewPoint: quantity('temperature', 'Pressure dew point at its rating.'),
        flow: quantity('normalAirFlow', 'Rated flow.', above0),
        ratedInlet: quantity('temperature', 'Inlet temperature of its rating.'),
        ratedAmbient: quantity('temperature', 'Ambient temperature of its rating.'),
        ratedPressure: quantity('gaugePressure', 'Pressure of its rating.', above0),
        inlet: quantity('temperature', 'Inlet temperature here.'),
      },
    ),
    filters: list(
      part(
        'A filter.',
        {},
        {
          name,
          grade: words('Grade.'),
          loss: quantity('pressureDifference', 'Loss at its rated flow.', least0),
          flow: quantity('normalAirFlow', 'Its rated flow.', above0),
        },
      ),
      'Treatment chain, in order.',
    ),
    run: list(runPiece, 'Pieces between receiver and tie-in point.'),
    coldest: quantity('temperature', 'Coldest point along the pipe route.'),
    regulator: part(
      'Regulator at the line.',
      {},
      {
        set: quantity('gaugePressure', 'Set pressure.', least0),
        droop: quantity('pressureDifference', 'Fall from no flow to the flow of the line.', least0),
      },
    ),
    drops: list(
      part(
        'What arrives at one air drop.',
        { drop: refersTo(['air drop'], 'The air drop.') },
        {
          pressure: quantity('gaugePressure', 'Pressure there.', least0),
          run: list(runPiece, 'Pieces that lead to it alone.'),
        },
      ),
      'Air drop by air drop, where they differ.',
    ),
    quality: words('Purity class that arrives, ISO 8573-1.'),
    note,
  },
);

export const drains = part(
  'Drains.',
  {},
  {
    flow: quantity('volumeFlow', 'Flow that they take.', least0),
    bore: quantity('length', 'Bore of the drain.', above0),
    fall: quantity('ratio', 'Fall along its length.', share),
    roughness: plain('Roughness coefficient of Manning.', 0.001, 0.1),
    filling: quantity('ratio', 'Highest filling, depth over bore.', share),
    height: quantity('length', 'Height of the drain above the datum.'),
    highestTemperature: quantity('temperature', 'Highest temperature that may be discharged.'),
    acidity: words('Range of pH that may be discharged.'),
    outlets: list(
      part(
        'One drain.',
        { tieIn: refersTo(['tie-in'], 'Tie-in point that it serves.') },
        {
          flow: quantity('volumeFlow', 'Flow that it takes.', least0),
          bore: quantity('length', 'Bore.', above0),
          fall: quantity('ratio', 'Fall along its length.', share),
          distance: quantity('length', 'Way from the tie-in point.', least0),
        },
      ),
      'Drain by drain, where they differ.',
    ),
    note,
  },
);

export const heat = part(
  'Heat for washing.',
  {},
  {
    kind: oneOf(['electric', 'steam', 'hot water', 'gas', 'none'], 'What heats.'),
    power: quantity('power', 'Power that may be drawn.', least0),
    steam: part(
      'Steam.',
      {},
      {
        pressure: quantity('gaugePressure', 'Pressure.', least0),
        flow: quantity('massFlow', 'Flow that may be drawn.', least0),
        dryness: quantity('ratio', 'Dryness.', share),
      },
    ),
    hotWater: part(
      'Heating water.',
      {},
      {
        supply: quantity('temperature', 'Temperature out.'),
        return: quantity('temperature', 'Temperature back.'),
        flow: quantity('volumeFlow', 'Flow that may be drawn.', least0),
      },
    ),
    note,
  },
);

export const routePiece = part(
  'One place that a section passes on its way in.',
  {},
  {
    tag: tag('route piece'),
    name,
    kind: oneOf(['door', 'corridor', 'turn', 'ramp', 'lift', 'floor', 'crane', 'other'], 'What it is.'),
    width: quantity('length', 'Clear width.', above0),
    height: quantity('length', 'Clear height.', above0),
    length: quantity('length', 'Length.', above0),
    slope: quantity('ratio', 'Slope.', share),
    mass: quantity('mass', 'Highest mass that it takes.', above0),
    bearing: quantity('pressureDifference', 'Highest pressure that its floor takes.', above0),
    note,
  },
);

export const room = part(
  'The room.',
  {},
  {
    ambient: quantity('temperature', 'Usual temperature.'),
    lowest: quantity('temperature', 'Lowest temperature.'),
    highest: quantity('temperature', 'Highest temperature.'),
    relativeHumidity: quantity('relativeHumidity', 'Relative humidity.', share),
    altitude: quantity('length', 'Height above sea level.', { least: -500, most: 6000 }),
    pressure: quantity(
      'absolutePressure',
      'Air pressure, where it is known better than by the altitude.',
      above0,
    ),
    slab: part(
      'The floor slab.',
      {},
      {
        bearing: quantity('pressureDifference', 'Highest pressure that it takes.', above0),
        point: quantity('force', 'Highest load on one point.', above0),
        thickness: quantity('length', 'Thickness.', above0),
        slope: quantity('ratio', 'Slope.', share),
        surface: words('Surface.'),
      },
    ),
    ceiling: quantity('length', 'Clear height.', above0),
    length: quantity('length', 'Length of the place for the line.', above0),
    width: quantity('length', 'Width of the place for the line.', above0),
    ventilation: words('Ventilation.'),
    route: list(routePiece, 'Way of the sections from the lorry to their place.'),
    note,
  },
);
