import { claim, list, name, note, oneOf, part, whole, words } from './part.ts';
import { above0, least0, quantity, share } from './quantity.ts';
import { runPiece } from './run.ts';
import { refersTo } from './tag.ts';

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
        duty: quantity('ratio', 'Share of the time for which it may run loaded.', share),
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
        loss: quantity('pressureDifference', 'Loss at its rated flow.', least0),
        purge: quantity('ratio', 'Share of the air that it blows off.', share),
        place: oneOf(
          ['before receiver', 'after receiver'],
          'Where it stands: after the receiver it sees the peak of the draw. Absent: after.',
        ),
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
