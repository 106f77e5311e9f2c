import { claim, list, name, note, oneOf, part, words } from './part.ts';
import { above0, least0, quantity } from './quantity.ts';
import { refersTo, tag } from './tag.ts';

export const changePart = part(
  'A part that is changed with the format.',
  { tag: tag('change part') },
  {
    name,
    station: refersTo(['station'], 'Station in which it sits.'),
    note,
  },
);

export const profilePoint = part(
  'One point of level against volume, from the inside bottom up.',
  {},
  {
    height: quantity('length', 'Height of the liquid above the inside bottom.', least0),
    volume: quantity('volume', 'Volume up to that height.', least0),
  },
);

export const format = part(
  'A bottle with its closure and what goes in.',
  { tag: tag('format') },
  {
    name,
    brimful: quantity('volume', 'Volume to the brim.', above0),
    level: quantity(
      'volume',
      'Volume to the fill level: above it the bottle overflows into the filler.',
      above0,
    ),
    levelHeight: quantity('length', 'Height of the fill level above the inside bottom.', above0),
    label: quantity('volume', 'Contents that the label states.', above0),
    height: quantity('length', 'Height of the bottle, outside bottom to mouth.', above0),
    body: quantity('length', 'Diameter, or longest side, of the body.', above0),
    neck: quantity('length', 'Outside diameter of the neck.', above0),
    neckBore: quantity('length', 'Bore of the neck.', above0),
    closure: words('Closure and finish.'),
    closureHeight: quantity('length', 'Height of the closure.', above0),
    mass: quantity('mass', 'Mass of the empty bottle.', above0),
    closureMass: quantity('mass', 'Mass of the closure.', above0),
    material: oneOf(
      ['glass', 'PET', 'HDPE', 'PP', 'polycarbonate', 'aluminium', 'steel', 'other'],
      'Material of the bottle.',
    ),
    returnable: claim('The bottle comes back and is washed.'),
    thermalStep: quantity(
      'temperatureDifference',
      'Largest sudden step in temperature that the bottle takes.',
      above0,
    ),
    highestTemperature: quantity('temperature', 'Highest temperature that the bottle takes.'),
    topLoad: quantity('force', 'Highest load from above.', above0),
    applicationTorque: quantity('torque', 'Torque with which the closure goes on.', above0),
    removalTorque: quantity('torque', 'Torque that opens it again after a rest.', above0),
    profile: list(profilePoint, 'Level against volume, for nozzles that fill from the bottom up.'),
    product: refersTo(['product'], 'What goes in.'),
    changeParts: list(changePart, 'Parts that are changed with this format.'),
    note,
  },
  [
    ['level', '<=', 'brimful'],
    ['neckBore', '<', 'neck'],
    ['neck', '<=', 'body'],
  ],
);
