import { list, name, note, oneOf, part, whole, words } from './part.ts';
import { above0, least0, quantity, share } from './quantity.ts';
import { tag } from './tag.ts';

export const routePiece = part(
  'One place that a section passes on its way in.',
  {},
  {
    tag: tag('route piece'),
    name,
    kind: oneOf(['door', 'corridor', 'turn', 'ramp', 'lift', 'floor', 'crane', 'other'], 'What it is.'),
    width: quantity('length', 'Clear width.', above0),
    widthAfter: quantity('length', 'Clear width behind a turn. Absent: as before it.', above0),
    height: quantity('length', 'Clear height.', above0),
    length: quantity('length', 'Length.', above0),
    slope: quantity('ratio', 'Slope.', share),
    mass: quantity('mass', 'Highest mass that it takes.', above0),
    car: part(
      'Car of a lift, inside; clear width and height of its door stand beside it.',
      {},
      {
        depth: quantity('length', 'Depth.', above0),
        width: quantity('length', 'Width.', above0),
        height: quantity('length', 'Height.', above0),
      },
    ),
    people: whole('People who ride along in a lift. Absent: one.', 0),
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
    air: quantity('actualAirFlow', 'Air that the ventilation moves.', least0),
    outside: part(
      'Air that comes in, at its most humid.',
      {},
      {
        temperature: quantity('temperature', 'Temperature.'),
        relativeHumidity: quantity('relativeHumidity', 'Relative humidity.', share),
      },
    ),
    route: list(routePiece, 'Way of the sections from the lorry to their place.'),
    note,
  },
);
