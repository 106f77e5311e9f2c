import type { Kind } from '../../quantity/kinds.ts';
import { day, list, name, note, oneOf, part, unitOf, words } from './part.ts';
import { tag } from './tag.ts';

const unit = (kind: Kind, of: string) =>
  unitOf(kind, `Unit in which ${of} is shown, as written in a quantity.`);

export const units = part(
  'Units in which figures are shown, by what they measure.',
  {},
  {
    pressure: unit('gaugePressure', 'a pressure'),
    flow: unit('volumeFlow', 'a flow'),
    volume: unit('volume', 'a volume'),
    length: unit('length', 'a length or height'),
    bore: unit('length', 'a bore or other small size'),
    level: unit('length', 'a level in a bottle'),
    temperature: unit('temperature', 'a temperature'),
    velocity: unit('velocity', 'a velocity'),
    mass: unit('mass', 'a mass'),
    force: unit('force', 'a force'),
    torque: unit('torque', 'a torque'),
    density: unit('density', 'a density'),
    viscosity: unit('dynamicViscosity', 'a viscosity'),
    airFlow: unit('normalAirFlow', 'an air flow'),
    airVolume: unit('normalAirVolume', 'an air volume'),
    power: unit('power', 'a power'),
    energy: unit('energy', 'an energy'),
    rate: unit('rate', 'a rate'),
    flowCoefficient: unit('flowCoefficient', 'a flow coefficient'),
  },
);

export const person = part(
  'Someone who takes part in the hand-over.',
  { tag: tag('person') },
  {
    name,
    firm: words('Firm that the person speaks for.'),
    role: words('What the person does in this hand-over.'),
    contact: words('How to reach the person.'),
    note,
  },
);

export const about = part(
  'What this book is about.',
  {},
  {
    title: words('Title of the book.'),
    serial: words('Serial number of the line.'),
    demonstration: words('Present in a demonstration book: says that nothing in it is real.'),
    builder: words('Firm that builds the line.'),
    customer: words('Firm that will run the line.'),
    project: words('Order or project number.'),
    dates: part(
      'Days that matter.',
      {},
      {
        runOff: day,
        ship: day,
        arrive: day,
        visit: day,
        acceptance: day,
        warrantyStart: day,
        warrantyEnd: day,
      },
    ),
    languages: list(words('Language tag, BCP 47.'), 'Languages of the papers, first one leading.'),
    units,
    system: oneOf(['metric', 'us'], 'System of units for what `units` does not name.'),
    paper: oneOf(['A4', 'Letter'], 'Paper size.'),
    people: list(person, 'People who take part.'),
    note,
  },
);
