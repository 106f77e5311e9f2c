import { claim, list, name, note, oneOf, part, whole, words } from './part.ts';
import { above0, quantity } from './quantity.ts';
import { refersTo, tag } from './tag.ts';

export const packedItem = part(
  'Something in a crate, as it stands on the shipping papers.',
  {},
  {
    describes: refersTo('any', 'Thing with a tag that this row describes.'),
    what: words('What it is, described so that it is understood in any country.'),
    as: oneOf(
      ['loose part', 'change part', 'spare', 'consumable', 'tool', 'document', 'other'],
      'What it comes along as.',
    ),
    format: refersTo(['format'], 'Format for which it is a change part.'),
    count: whole('How many.', 1),
    serial: words('Serial number.'),
    mass: quantity('mass', 'Mass of all of them.', above0),
    origin: words('Country of origin.'),
    value: words('Value for the papers, with its currency.'),
    tariff: words('Number of the customs tariff, as the forwarder names it.'),
    temporary: claim('It comes back: imported for a time only.'),
    note,
  },
);

export const dangerousItem = part(
  'One row of dangerous goods, as whoever is trained to ship them declares it.',
  {},
  {
    un: words('UN number: UN 1824.'),
    name: words('Proper shipping name.'),
    class: words('Class, and division where there is one.'),
    group: words('Packing group.'),
    amount: words('Amount and packages.'),
    note,
  },
);

export const indicator = part(
  'An indicator on a crate that shows afterwards how it was handled.',
  { kind: oneOf(['tilt', 'shock', 'humidity', 'temperature'], 'What it shows.') },
  {
    number: words('Number on it.'),
    limit: words('At what it trips: 50 g, 80 degrees.'),
    side: words('Side of the crate on which it sits.'),
  },
);

export const crate = part(
  'A crate or pallet.',
  { tag: tag('crate') },
  {
    name,
    kind: oneOf(['crate', 'pallet', 'box', 'on its own feet'], 'What it travels in.'),
    mass: quantity('mass', 'Mass packed.', above0),
    tare: quantity('mass', 'Mass of the empty crate.', above0),
    length: quantity('length', 'Length.', above0),
    width: quantity('length', 'Width.', above0),
    height: quantity('length', 'Height.', above0),
    holds: list(refersTo('any', 'Thing in it.'), 'Things in it that have tags.'),
    contents: list(words('Contents.'), 'What else is in it.'),
    items: list(packedItem, 'What else is in it, row by row, as the shipping papers want it.'),
    dangerousGoods: words('Dangerous goods in it.'),
    dangerous: list(dangerousItem, 'Dangerous goods in it, row by row.'),
    origin: words('Country of origin.'),
    value: words('Value for the papers.'),
    wood: words('Mark of the treated timber (ISPM 15) as it is branded: country, number, treatment.'),
    moisture: words('What keeps it dry: barrier film, desiccant and how much.'),
    frost: words('What keeps it from frost.'),
    seal: words('Number of its seal.'),
    indicators: list(indicator, 'Indicators on it.'),
    note,
  },
);

export const transport = part(
  'The way from the builder to the site.',
  {},
  {
    carrier: words('Who carries it.'),
    frost: claim('Frost is possible on the way.'),
    term: words('Trade term of three letters by which the risk passes: FCA, CIP, DAP.'),
    place: words('Place named with the trade term: where the risk passes.'),
    edition: words('Edition of the rules that the trade term is taken from.'),
    claimDays: whole(
      'Days after receipt within which damage must be told to the carrier in writing, by the contract of carriage; the day of receipt is not counted.',
    ),
    note,
  },
);
