import { air } from './air.ts';
import { drains } from './drains.ts';
import { heat } from './heat.ts';
import { list, name, note, oneOf, part, whole, words } from './part.ts';
import { power } from './power.ts';
import { quantity } from './quantity.ts';
import { room } from './room.ts';
import { stopCause } from './station.ts';
import { supply } from './supply.ts';
import { refersTo, tag } from './tag.ts';
import { atHand, workHere } from './wait.ts';
import { water } from './water.ts';

export const liquid = part(
  'What the line is run on.',
  {},
  {
    product: refersTo(['product'], 'The product.'),
    temperature: quantity(
      'temperature',
      'Temperature at the filler. Absent: the fill temperature of the product.',
    ),
  },
);

export const laneSetting = part(
  'How one lane is set on this floor, where it differs from the line.',
  { lane: refersTo(['lane'], 'The lane.') },
  {
    format: refersTo(['format'], 'Format for which it holds. Absent: all.'),
    preset: whole('Pulses after which the lane closes.', 1),
    changeOver: whole('Pulses after which it goes from fast to slow.'),
  },
);

export const stopsHere = part(
  'What makes one station stand on this floor, where it differs from the line.',
  { station: refersTo(['station'], 'The station.') },
  { stops: list(stopCause, 'What makes it stand here, instead of what the line says. Empty: nothing does.') },
);

export const floor = part(
  'A place where the line runs.',
  { tag: tag('floor') },
  {
    name,
    role: oneOf(['built on', 'bound for', 'other'], 'Which floor it is in this hand-over.'),
    datum: words('What the heights of this floor are measured from. Absent: the floor under the line.'),
    standsAt: quantity('length', 'Height of the floor under the line above the datum. Absent: 0.'),
    liquid,
    supply,
    temporarySupply: supply.describe('A supply that is there for the visit only.'),
    settings: list(laneSetting, 'Settings of the lanes on this floor.'),
    stops: list(stopsHere, 'What makes the stations stand on this floor.'),
    water,
    power,
    air,
    drains,
    heat,
    room,
    work: workHere,
    atHand,
    people: list(refersTo(['person'], 'Person.'), 'People who answer for this floor.'),
    note,
  },
);
