import { note, oneOf, part } from './part.ts';
import { least0, quantity, share } from './quantity.ts';

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
