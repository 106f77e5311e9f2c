import * as z from 'zod';
import { lane } from './lane.ts';
import { claim, list, name, note, oneOf, part, plain, whole, words } from './part.ts';
import { above0, least0, quantity, share } from './quantity.ts';
import { comesAfter, refersTo, tag } from './tag.ts';

export const stopCause = part(
  'Something that makes a station stand now and then.',
  { tag: tag('stop cause') },
  {
    name,
    between: quantity('time', 'Mean running time between two stops.', above0),
    clear: quantity('time', 'Mean time to clear one.', above0),
    owner: oneOf(['machine', 'supply', 'people', 'material'], 'To whom the lost time is counted.'),
    counts: oneOf(
      ['working', 'clock'],
      'Whether the time between two stops counts while the station works, or by the clock. Absent: while it works.',
    ),
    pattern: oneOf(
      ['chance', 'regular'],
      'Whether these times vary like those between chance events, or are always the same. Absent: by chance.',
    ),
    note,
  },
);

const base = {
  name,
  after: list(
    comesAfter('station', 'Tag of the station before.'),
    'Stations that feed this one. Absent: the one before it in the list. Empty: it starts the line.',
  ),
  capacity: whole('Bottles that find room in it.', 1),
  room: whole('Free places for bottles just before it.'),
  stops: list(stopCause, 'What makes it stand, as declared or from a log. Empty: nothing does.'),
  note,
};

export const loadStation = part(
  'Where bottles are put on the line.',
  { kind: z.literal('load'), tag: tag('station') },
  {
    ...base,
    by: oneOf(['operator', 'automatic'], 'Who or what puts them on.'),
    rate: quantity('rate', 'Bottles that can be put on in a time.', above0),
    missing: quantity('ratio', 'Share of places that stay empty.', share),
  },
);

export const washNeed = part(
  'What washing in a zone must reach, by the rule that holds.',
  {},
  {
    rule: words('Rule and edition that asks for it.'),
    contact: quantity('time', 'Least time of contact.', above0),
    temperature: quantity('temperature', 'Least temperature.'),
    concentration: quantity('massFraction', 'Least concentration.', share),
    pressure: quantity('gaugePressure', 'Least spray pressure.', least0),
  },
);

export const zone = part(
  'One zone of the washer.',
  { tag: tag('zone') },
  {
    name,
    rows: whole('Rows of bottles that stand in it at once.', 1),
    medium: oneOf(
      ['water', 'recovered water', 'detergent', 'sanitiser', 'steam', 'air', 'none'],
      'What is sprayed.',
    ),
    temperature: quantity('temperature', 'Temperature of the medium.'),
    concentration: quantity('massFraction', 'Concentration of the medium.', share),
    alkali: quantity('massFraction', 'All alkali together, where it is not caustic alone.', share),
    agent: oneOf(['chlorine', 'ozone', 'other'], 'What sanitises.'),
    acidity: plain('pH.', 0, 14),
    flow: quantity('volumeFlow', 'Fresh flow into the zone while it runs.', least0),
    sprayFlow: quantity('volumeFlow', 'Flow through the spray nozzles.', least0),
    sprayFraction: z.number().min(0).max(1).describe('Share of the dwell in which a bottle is wetted.'),
    dead: quantity(
      'time',
      'Time in each index in which a bottle is not wetted: the transfer, the valve, the jet settling. Instead of the share.',
      least0,
    ),
    timeOut: quantity('time', 'Time after which the spray shuts while the row stands.', above0),
    soaks: claim('Bottles are immersed instead of sprayed.'),
    emptying: quantity(
      'time',
      'Time for which an immersed bottle drains or stands above the liquid.',
      least0,
    ),
    longestStay: quantity('time', 'Longest stay that bottle or label takes.', above0),
    pressure: quantity('gaugePressure', 'Spray pressure at the nozzles.', least0),
    tank: quantity('volume', 'Volume of the tank of the zone.', above0),
    depth: quantity('length', 'Depth of its bath when full.', above0),
    surface: quantity('area', 'Open surface of its bath.', least0),
    walls: quantity('area', 'Walls of its bath that lose heat.', least0),
    insulation: oneOf(['none', '25 mm', '50 mm', '75 mm'], 'Insulation of these walls. Absent: none.'),
    metal: quantity('mass', 'Steel that gets warm with its bath.', least0),
    outlet: quantity('length', 'Bore through which its bath is let go.', above0),
    dumpEvery: quantity('time', 'Time between two dumps of its bath.', above0),
    collected: claim('Its bath is taken away or treated elsewhere, and never let go into a drain here.'),
    letGo: part(
      'What is done to its bath before it is let go.',
      {},
      {
        temperature: quantity('temperature', 'Temperature to which it is cooled.'),
        acidity: quantity('acidity', 'pH to which it is brought.', { least: 0, most: 14 }),
        water: quantity('ratio', 'Water that thins it, over its own volume.', least0),
      },
    ),
    pump: refersTo(['drive'], 'Drive of the spray pump.'),
    tieIn: refersTo(['tie-in'], 'Tie-in point that feeds it.'),
    from: refersTo(['zone'], 'Zone whose water runs on into it, instead of fresh water.'),
    drain: refersTo(['tie-in'], 'Tie-in point that it drains to.'),
    need: washNeed,
    note,
  },
);

export const washer = part(
  'A washer that moves rows of bottles on by an index.',
  { kind: z.literal('washer'), tag: tag('station') },
  {
    ...base,
    row: whole('Bottles in a row.', 1),
    rows: whole('Rows in the machine.', 1),
    stroke: quantity(
      'time',
      'Time in which the rows move on, at the nominal frequency of its drive.',
      least0,
    ),
    dwell: quantity('time', 'Time for which the rows stand between two strokes.', least0),
    dwellBy: oneOf(
      ['timer', 'drive'],
      'Whether the dwell is timed, or comes from the cam and so goes with the frequency. Absent: timer.',
    ),
    pitch: quantity('length', 'Way that a row moves in one index.', above0),
    drive: refersTo(['drive'], 'Drive of the index.'),
    cylinders: list(
      refersTo(['cylinder'], 'Cylinder of the index.'),
      'Cylinders whose strokes are in the index.',
    ),
    carryOver: quantity('volume', 'Liquid that a bottle carries into the next zone.', least0),
    highestHardness: quantity('waterHardness', 'Hardness of its water that must not be passed.', least0),
    zones: list(zone, 'Zones in the order in which the bottles pass.'),
  },
);

export const discharge = part(
  'Where bottles leave the washer and are set up.',
  { kind: z.literal('discharge'), tag: tag('station') },
  {
    ...base,
    time: quantity('time', 'Time for a row.', least0),
    fallen: quantity('ratio', 'Share of bottles that fall.', share),
  },
);

export const conveyor = part(
  'A conveyor.',
  { kind: z.literal('conveyor'), tag: tag('station') },
  {
    ...base,
    length: quantity('length', 'Length that a bottle travels.', above0),
    speed: quantity('velocity', 'Speed at the nominal frequency of its drive.', above0),
    drive: refersTo(['drive'], 'Its drive.'),
    accumulates: claim('Bottles may stand against each other while it runs on.'),
  },
);

export const fillStation = part(
  'The fill station: a row of bottles under its lanes.',
  { kind: z.literal('fill'), tag: tag('station') },
  {
    ...base,
    travelIn: quantity('time', 'From release of a row to standing under the lanes.', least0),
    lift: quantity('time', 'Lift under the nozzles.', least0),
    drip: quantity('time', 'Wait for the last drops after the longest lane has closed.', least0),
    lower: quantity('time', 'Lowering.', least0),
    clearOut: quantity('time', 'Until the row has left.', least0),
    cylinders: list(
      refersTo(['cylinder'], 'Cylinder.'),
      'Cylinders whose strokes are in the fill-station time.',
    ),
    manifoldHeight: quantity('length', 'Height of the manifold above the floor under the line.'),
    mouthHeight: quantity(
      'length',
      'Height of the bottle mouths at the nozzles above the floor under the line.',
    ),
    manifoldRating: quantity('gaugePressure', 'Highest pressure that the manifold may see.', above0),
    manifoldBore: quantity('length', 'Bore of the manifold.', above0),
    manifoldVolume: quantity('volume', 'Volume of manifold and hoses to the lanes.', above0),
    overflowTo: words('Where overflow goes.'),
    lanes: list(lane, 'Lanes, as they stand in the row.'),
  },
);

export const chute = part(
  'Cap chute with its two sensors.',
  {},
  {
    capsBetweenSensors: whole('Caps between the low and the high sensor.', 1),
    capsBelowLow: whole('Caps between the low sensor and the closing head.'),
    capsBelowHigh: whole(
      'Caps between the high sensor and the closing head. Instead of those between the sensors.',
      1,
    ),
    highSensor: refersTo(['device'], 'Sensor that stops the sorter when covered.'),
    lowSensor: refersTo(['device'], 'Sensor that starts the sorter when clear.'),
    sorterRate: quantity('rate', 'Caps that the sorter gives in a time.', above0),
    runUp: quantity('time', 'Time from the signal of the low sensor to the first cap in the chute.', least0),
    sorter: refersTo(['drive'], 'Drive of the sorter.'),
    stops: list(stopCause, 'What makes the sorter stand. Empty: nothing does.'),
  },
  [['capsBelowLow', '<', 'capsBelowHigh']],
);

export const closing = part(
  'The closing station.',
  { kind: z.literal('closing'), tag: tag('station') },
  {
    ...base,
    heads: whole('Heads that close at once.', 1),
    perBottle: quantity('time', 'Time that one head takes for a bottle.', above0),
    rejected: quantity('ratio', 'Share of closed bottles that are rejected.', share),
    chute,
    note,
  },
);

export const takeOff = part(
  'Where closed bottles leave the line.',
  { kind: z.literal('take-off'), tag: tag('station') },
  {
    ...base,
    by: oneOf(['operator', 'automatic'], 'Who or what takes them.'),
    rate: quantity('rate', 'Bottles that can be taken in a time.', above0),
  },
);

export const station = z
  .discriminatedUnion('kind', [loadStation, washer, discharge, conveyor, fillStation, closing, takeOff])
  .describe('A station, in flow order.');

export const holdRule = part(
  'One station waits for another.',
  {
    tag: tag('hold rule'),
    holds: refersTo(['station'], 'Station that is held.'),
    while: refersTo(['station'], 'Station that holds it.'),
  },
  {
    until: oneOf(
      ['release', 'fill end'],
      'What frees it: `release`, the row has left; `fill end`, the last lane has closed.',
    ),
    name,
    note,
  },
);
