import { list, note, part, plain, words } from './part.ts';
import { least0, quantity } from './quantity.ts';
import { runPiece } from './run.ts';
import { supply } from './supply.ts';

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
    hardness: quantity('waterHardness', 'Hardness, counted as calcium carbonate.', least0),
    iron: quantity('soluteConcentration', 'Iron, mass in a volume.', least0),
    manganese: quantity('soluteConcentration', 'Manganese, mass in a volume.', least0),
    chlorine: quantity('soluteConcentration', 'Free chlorine, mass in a volume.', least0),
    acidity: plain('pH.', 0, 14),
    backflow: words('Backflow protection that is asked or fitted.'),
    backflowLoss: quantity('pressureDifference', 'Pressure that it takes.', least0),
    flushing: quantity('volume', 'Volume to be flushed before connection.', least0),
    note,
  },
);
