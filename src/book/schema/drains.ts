import { list, note, part, plain, words } from './part.ts';
import { above0, least0, quantity, share } from './quantity.ts';
import { refersTo } from './tag.ts';

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
    tempering: quantity('volumeFlow', 'Cold water that is mixed into what runs all the time.', least0),
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
