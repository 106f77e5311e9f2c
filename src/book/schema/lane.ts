import { claim, list, note, oneOf, part, whole, words } from './part.ts';
import { above0, least0, quantity } from './quantity.ts';
import { refersTo, tag } from './tag.ts';

export const meter = part(
  'What counts the volume.',
  {},
  {
    kind: oneOf(
      ['turbine', 'magnetic', 'oval gear', 'mass', 'time', 'other'],
      'Principle of the meter; `time`: the lane closes after a time.',
    ),
    phase: oneOf(
      ['free-running', 'reset'],
      'Whether the first pulse comes at any phase of the wheel, or the count starts at a whole pulse.',
    ),
    class: words('Accuracy class, or error over its range.'),
    lowest: quantity('volumeFlow', 'Lowest flow that it counts rightly.', least0),
    highest: quantity('volumeFlow', 'Highest flow that it counts rightly.', above0),
    leastConductivity: quantity('conductivity', 'Least conductivity that it counts on.', least0),
    note,
  },
);

export const preset = part(
  'The counts of one lane for one format.',
  { format: refersTo(['format'], 'The format.') },
  {
    preset: whole('Pulses after which the lane closes.', 1),
    changeOver: whole('Pulses after which the lane goes from fast to slow.'),
  },
);

export const lane = part(
  'One valve of the fill station with its counter.',
  { tag: tag('lane') },
  {
    name: words('Name or place of the lane.'),
    out: claim('The lane is out of use.'),
    kv: quantity(
      'flowCoefficient',
      'Flow coefficient from the manifold through valve and nozzle to the free jet: the jet is in it.',
      above0,
    ),
    kvSlow: quantity('flowCoefficient', 'The same at the slow speed, where the lane has two.', above0),
    changeOver: whole('Pulses after which the lane goes from fast to slow.'),
    pulses: quantity('pulseDensity', 'Pulses of the meter for a volume.', above0),
    preset: whole('Pulses after which the lane closes, where no format has its own.', 1),
    presets: list(preset, 'Counts by format.'),
    delay: quantity('time', 'From the last pulse to the first movement of the valve.', least0),
    closing: quantity(
      'time',
      'Stroke of the valve from open to closed, from the speed at which it closes.',
      least0,
    ),
    opening: quantity('time', 'Stroke of the valve from closed to open.', least0),
    afterDrip: quantity('volume', 'What still drops into the bottle once the valve is closed.', least0),
    nozzleBore: quantity('length', 'Bore of the nozzle where the jet leaves.', above0),
    nozzle: oneOf(
      ['top', 'bottom up'],
      '`top`: free jet at the bottle mouth. `bottom up`: the nozzle stands in the bottle and the level rises over it.',
    ),
    nozzleHeight: quantity(
      'length',
      'For `bottom up`: height of the nozzle outlet above the inside bottom of the bottle.',
      least0,
    ),
    meter,
    note,
  },
);
