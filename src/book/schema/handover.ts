import * as z from 'zod';
import { checkSorts } from './check-sorts.ts';
import { stages } from './milestones.ts';
import { claim, list, name, note, oneOf, part, whole, words } from './part.ts';
import { above0, least0, quantity } from './quantity.ts';
import { comesAfter, refersTo, tag } from './tag.ts';

export const tieIn = part(
  'A point where the line is tied in to the site.',
  { tag: tag('tie-in') },
  {
    name,
    kind: oneOf(
      [
        'product',
        'water',
        'hot water',
        'air',
        'power',
        'drain',
        'steam',
        'hot water return',
        'condensate',
        'vent',
        'gas',
        'data',
      ],
      'What is tied in.',
    ),
    connection: words('Size and kind of the connection.'),
    bore: quantity('length', 'Bore of the connection.', above0),
    section: refersTo(['section'], 'Section on which it sits.'),
    x: quantity('length', 'Place on the plan, along the section from its corner.'),
    y: quantity('length', 'Place on the plan, across the section from its corner.'),
    height: quantity('length', 'Height above the floor under the line.'),
    flow: quantity('volumeFlow', 'Flow that it asks, where the book says no better.', least0),
    pressure: quantity('gaugePressure', 'Pressure that it asks, where the book says no better.', least0),
    temperature: quantity('temperature', 'Temperature that it asks.'),
    quality: words('Quality that it asks.'),
    note,
  },
);

export const transportGear = part(
  'What it is moved on, from the lorry to its place.',
  {},
  {
    name,
    mass: quantity('mass', 'Mass of the gear.', least0),
    height: quantity('length', 'How much higher it makes the section.', least0),
    base: quantity(
      'length',
      'Outer wheels apart, along the section; the gear stands centred under it.',
      above0,
    ),
    track: quantity('length', 'Outer wheels apart, across the section.', above0),
    wheels: whole('Wheels, or rollers, in all.', 1),
    carrying: whole('Wheels that carry where the floor is uneven. Absent: all but one.', 1),
    contactLength: quantity('length', 'Contact of one wheel with the floor, in its way.', above0),
    contactWidth: quantity('length', 'Contact of one wheel with the floor, across.', above0),
    wheelCapacity: quantity('mass', 'Mass that one wheel may carry.', above0),
    clearance: quantity('length', 'Room that must stay on each side while it moves.', least0),
  },
);

/** What two supports weigh, and where they stand. */
const twoSupports = (description: string) =>
  part(
    description,
    {},
    {
      first: quantity('mass', 'Weighed at the first support.', above0),
      second: quantity('mass', 'Weighed at the second support.', above0),
      distance: quantity('length', 'Distance of the supports.', above0),
      from: quantity('length', 'Place of the first support, from the corner of the section.'),
    },
  );

export const weighing = part(
  'How its centre of gravity was found.',
  {},
  {
    along: twoSupports('Weighed on two supports along the section.'),
    across: twoSupports('Weighed on two supports across it.'),
    corners: part(
      'Weighed on four supports at one time, first and second end along the section, left and right across it.',
      {},
      {
        firstLeft: quantity('mass', 'Weighed at the first end, left.', above0),
        firstRight: quantity('mass', 'Weighed at the first end, right.', above0),
        secondLeft: quantity('mass', 'Weighed at the second end, left.', above0),
        secondRight: quantity('mass', 'Weighed at the second end, right.', above0),
        base: quantity('length', 'Distance of the supports along.', above0),
        track: quantity('length', 'Distance of the supports across.', above0),
        x: quantity('length', 'Place of the first supports along, from the corner of the section.'),
        y: quantity('length', 'Place of the left supports across, from the corner of the section.'),
      },
    ),
  },
);

export const sling = part(
  'The sling that it hangs on, from one hook.',
  {},
  {
    legs: oneOf(['2', '4'], 'Legs.'),
    height: quantity('length', 'Height of the hook above the lifting points.', above0),
    x: quantity('length', 'Place of the first lifting points along, from the corner of the section.'),
    y: quantity('length', 'Place of the first lifting points across, from the corner of the section.'),
    along: quantity('length', 'Lifting points apart, along the section.', above0),
    across: quantity('length', 'Lifting points apart, across the section.', least0),
    level: quantity('length', 'Height of the lifting points above its feet.', least0),
    legCapacity: quantity('mass', 'What one leg carries straight, by its plate.', above0),
    gear: list(words('Piece of gear.'), 'What is rigged: legs, shackles, edge protectors, beams.'),
  },
);

export const section = part(
  'A part of the line that travels in one piece.',
  { tag: tag('section') },
  {
    name,
    mass: quantity('mass', 'Mass as it travels.', above0),
    full: quantity('mass', 'Mass as it stands, with full baths and product.', above0),
    length: quantity('length', 'Length.', above0),
    width: quantity('length', 'Width.', above0),
    height: quantity('length', 'Height.', above0),
    clearance: quantity('length', 'Free way that must stay around it for work and service.', least0),
    overhead: quantity('length', 'Free height that must stay above it.', least0),
    gear: transportGear,
    holds: list(refersTo(['station'], 'Station.'), 'Stations that stand on it.'),
    feet: whole('Feet that it stands on.', 1),
    foot: quantity('area', 'Area of one foot.', above0),
    x: quantity('length', 'Place of its corner on the plan of the line.'),
    y: quantity('length', 'Place of its corner on the plan of the line.'),
    turned: quantity('angle', 'Angle to which it is turned on the plan.'),
    centre: part(
      'Centre of gravity, from its corner.',
      {},
      {
        x: quantity('length', 'Along.'),
        y: quantity('length', 'Across.'),
        z: quantity('length', 'Up.'),
      },
    ),
    weighing,
    liftingPoints: whole('Lifting points.'),
    lifting: words('How it may be lifted, and by what.'),
    sling,
    frost: claim('It must be drained before it travels in frost.'),
    note,
  },
);

export const split = part(
  'Where the line is parted for shipping.',
  {
    tag: tag('split'),
    between: z
      .tuple([
        refersTo(['section'], 'Section on one side.'),
        refersTo(['section'], 'Section on the other side.'),
      ])
      .describe('The two sections.'),
  },
  { name, note },
);

export const terminals = part(
  'Terminals or ports of one kind.',
  { name: words('As their label says: X1 for a strip, X1:14 for one terminal.') },
  { wires: whole('Wires or tubes that one of them is made for.', 1), note },
);

export const box = part(
  'A junction box, panel or valve island in which joins are made.',
  { tag: tag('box') },
  {
    name,
    section: refersTo(['section'], 'Section on which it sits.'),
    x: quantity('length', 'Place on the plan, along the section from its corner.'),
    y: quantity('length', 'Place on the plan, across the section from its corner.'),
    height: quantity('length', 'Height above the floor under the line.'),
    terminals: list(terminals, 'Its terminals and ports.'),
    note,
  },
);

export const joinEnd = part(
  'One end of a join.',
  {},
  {
    on: refersTo('any', 'Thing that it belongs to.'),
    section: refersTo(['section'], 'Section on which it is.'),
    size: words('Size as marked at this end, where it is marked at each.'),
    colour: words('Colour at this end, where the two are read apart.'),
  },
);

export const join = part(
  'One thing that is parted at a split and made again, or that is done before the way and undone after it.',
  { tag: tag('join') },
  {
    split: refersTo(['split'], 'Split at which it is parted.'),
    kind: oneOf(
      [
        'conductor',
        'tube',
        'hose',
        'drain',
        'duct',
        'bond',
        'mechanical',
        'belt',
        'guard',
        'transport lock',
        'protective film',
        'drained',
        'blown out',
        'dried',
        'other',
      ],
      'What it is. Drained, blown out and dried are for what frost would burst on the way.',
    ),
    name,
    label: words('What its marker says: number of the wire, tube or cable.'),
    code: words('Code on its label, where it is not the one that its tag gives.'),
    from: words('One end: terminal, port or part, as its label says.'),
    to: words('Other end.'),
    fromEnd: joinEnd,
    toEnd: joinEnd,
    size: words('Size, as marked.'),
    colour: words('Colour.'),
    cable: words('Cable in which it runs.'),
    core: words('Core of that cable.'),
    potential: words('Potential that it carries.'),
    torque: quantity('torque', 'Torque with which it is made.', above0),
    length: quantity('length', 'Length.', above0),
    box: words('Junction box in which it is made.'),
    after: list(comesAfter('join', 'Tag of the join before.'), 'Joins that must be made before.'),
    test: words('How it is tested once made.'),
    note,
  },
);

export const setting = part(
  'One thing that can be turned, typed or moved, beside those that the book knows by itself.',
  { tag: tag('setting') },
  {
    name,
    on: refersTo('any', 'Thing that it belongs to.'),
    of: words('Place within that thing at which its value stands: dwell, overload/set.'),
    format: refersTo(['format'], 'Format for which it holds.'),
    unit: words(
      'Unit in which it is read: mm, s, turns, hole. Absent: that of its place, else it is read as words.',
    ),
    least: words('Lowest allowed.'),
    most: words('Highest allowed.'),
    value: words('Value that it is to have.'),
    note,
  },
);

export const spare = part(
  'A spare or wear part that is handed over.',
  { tag: tag('spare') },
  {
    name,
    count: whole('How many.'),
    on: refersTo('any', 'Thing that it is for.'),
    note,
  },
);

export const instrument = part(
  'An instrument with which is measured.',
  { tag: tag('instrument') },
  {
    name,
    serial: words('Serial number.'),
    range: words('Range.'),
    resolution: words('Resolution.'),
    calibrated: words('Day of the last calibration.'),
    due: words('Day of the next calibration.'),
    note,
  },
);

export const check = part(
  'A check that is added to those which the book makes by itself, or changes one.',
  { tag: tag('check') },
  {
    name,
    sort: oneOf(
      checkSorts,
      'Sort of check that it changes, on every thing. Absent: the one with its tag, else a new one.',
    ),
    stage: oneOf(stages, 'Stage in which it is done.'),
    on: list(refersTo('any', 'Thing.'), 'Things that it proves.'),
    floors: list(refersTo(['floor'], 'Floor.'), 'Floors on which it is done. Absent: all.'),
    point: oneOf(['none', 'witness', 'hold'], 'Whether the other side may, or must, be there.'),
    after: list(comesAfter('check', 'Tag of the check before.'), 'Checks that come before.'),
    instrument: refersTo(['instrument'], 'Instrument.'),
    readings: whole('How many readings are taken.', 1),
    limit: words('Limit of acceptance.'),
    conditions: list(words('Condition.'), 'What must be so for a result to count.'),
    duration: quantity('time', 'Time that it takes.', above0),
    note,
  },
);
