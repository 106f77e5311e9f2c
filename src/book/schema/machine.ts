import * as z from 'zod';
import { claim, list, name, note, oneOf, part, plain, whole, words } from './part.ts';
import { above0, least0, quantity, share } from './quantity.ts';
import { refersTo, tag } from './tag.ts';

const station = refersTo(['station'], 'Station that it belongs to.');
const voltage = quantity('voltage', 'Rated voltage, line to line.', above0);
const phases = oneOf(['1', '3', 'dc'], 'Phases.');

export const pumpPoint = part(
  'One point of a pump curve.',
  {},
  {
    flow: quantity('volumeFlow', 'Flow.', least0),
    head: quantity('length', 'Head that the pump gives.', least0),
    npsh: quantity('length', 'Net positive suction head that the pump requires.', least0),
    shaftPower: quantity('power', 'Power at its shaft.', least0),
  },
);

export const drive = part(
  'A motor and what it moves.',
  { tag: tag('drive') },
  {
    name,
    power: quantity('power', 'Rated power at the shaft.', above0),
    poles: whole('Poles.', 2),
    speed: quantity('rotationalSpeed', 'Rated speed.', above0),
    voltage,
    frequency: quantity('frequency', 'Rated frequency.', above0),
    phases,
    current: quantity('current', 'Full-load current of the nameplate.', above0),
    startingCurrent: quantity('current', 'Current at the start.', above0),
    efficiency: quantity('ratio', 'Efficiency.', share),
    powerFactor: quantity('ratio', 'Power factor.', share),
    serviceFactor: plain('Service factor of the nameplate.', 0.5, 3),
    starter: oneOf(
      ['direct on line', 'star-delta', 'soft starter'],
      'How it is started, where it runs on the supply itself.',
    ),
    overload: part(
      'Setting range of its overload relay.',
      {},
      {
        least: quantity('current', 'Lowest setting.', above0),
        most: quantity('current', 'Highest setting.', above0),
        set: quantity('current', 'Setting.', above0),
      },
    ),
    load: oneOf(['constant torque', 'square torque', 'constant power'], 'How its torque goes with speed.'),
    shaftPower: quantity('power', 'Power that the load takes at rated speed.', least0),
    duty: quantity('ratio', 'Share of the time in which it runs.', share),
    suction: quantity('length', 'Height of the liquid above the pump when its tank is lowest.'),
    pump: list(pumpPoint, 'Curve of the pump on its shaft, at the rated frequency.'),
    inverter: claim(
      'Its speed comes from an inverter and not from the frequency of the floor. Absent: it follows the floor.',
    ),
    fed: words('What it drives through: gearbox, cam, belt.'),
    station,
    note,
  },
);

export const heater = part(
  'A heater.',
  { tag: tag('heater') },
  {
    name,
    kind: oneOf(['electric', 'steam', 'hot water', 'gas'], 'What heats. Absent: electric.'),
    power: quantity('power', 'Rated power.', above0),
    voltage,
    phases,
    tank: quantity('volume', 'Volume that it heats.', above0),
    target: quantity('temperature', 'Temperature that it holds.'),
    zone: refersTo(['zone'], 'Wash zone that it heats.'),
    station,
    note,
  },
);

export const load = part(
  'Another electrical load: controls, lighting, a cooler.',
  { tag: tag('load') },
  {
    name,
    power: quantity('power', 'Active power.', least0),
    apparentPower: quantity('apparentPower', 'Apparent power.', least0),
    current: quantity('current', 'Current.', least0),
    voltage,
    phases,
    duty: quantity('ratio', 'Share of the time in which it draws.', share),
    station,
    note,
  },
);

export const cylinder = part(
  'A pneumatic cylinder.',
  { tag: tag('cylinder') },
  {
    name,
    bore: quantity('length', 'Bore.', above0),
    rod: quantity('length', 'Diameter of the rod.', least0),
    stroke: quantity('length', 'Stroke.', above0),
    strokesPerCycle: plain('Strokes, out and back counted each, in one cycle of its station.', 0, 1000),
    pressure: quantity('gaugePressure', 'Pressure that it needs.', least0),
    force: quantity('force', 'Force of the load against its stroke.', least0),
    mass: quantity('mass', 'Mass that it moves.', least0),
    friction: quantity('force', 'Friction of its seals and guides.', least0),
    out: quantity('time', 'Stroke time out, as built.', above0),
    back: quantity('time', 'Stroke time back, as built.', above0),
    valve: part(
      'Valve that feeds it.',
      {},
      {
        name,
        kv: quantity('flowCoefficient', 'Flow coefficient.', above0),
        conductance: quantity('sonicConductance', 'Sonic conductance of ISO 6358.', above0),
        criticalRatio: plain('Critical pressure ratio of ISO 6358.', 0, 1),
      },
    ),
    tube: part(
      'Tube between valve and cylinder.',
      {},
      {
        bore: quantity('length', 'Bore.', above0),
        length: quantity('length', 'Length.', least0),
      },
    ),
    drop: refersTo(['air drop'], 'Air drop that feeds it.'),
    station,
    note,
  },
  [['rod', '<', 'bore']],
);

export const airDrop = part(
  'A point where the line takes compressed air.',
  { tag: tag('air drop') },
  {
    name,
    pressure: quantity('gaugePressure', 'Least pressure that the line needs there, moving.', least0),
    regulated: quantity('gaugePressure', 'Set pressure of the regulator behind it.', least0),
    quality: words('Purity class that the line needs, ISO 8573-1.'),
    leak: quantity('ratio', 'Allowance for leaks, as a share of the demand.', least0),
    tieIn: refersTo(['tie-in'], 'Tie-in point that it hangs on.'),
    note,
  },
);

export const blowOff = part(
  'A user of air that is not a cylinder.',
  { tag: tag('blow-off') },
  {
    name,
    flow: quantity('normalAirFlow', 'Flow while it blows.', least0),
    bore: quantity('length', 'Bore of its nozzle.', above0),
    pressure: quantity('gaugePressure', 'Pressure that it needs.', least0),
    time: quantity('time', 'Time for which it blows in one cycle.', least0),
    productContact: claim('Its air touches the product or the inside of a bottle.'),
    drop: refersTo(['air drop'], 'Air drop that feeds it.'),
    station,
    note,
  },
);

export const device = part(
  'An input or output of the control.',
  { tag: tag('device') },
  {
    name,
    kind: oneOf(['input', 'output'], 'Seen from the control.'),
    states: list(words('State.'), 'Its two states, the active one first.'),
    terminal: words('Terminal that it is wired to.'),
    address: words('Address in the control.'),
    signal: words('Signal: 24 V dc, PNP, 4-20 mA.'),
    station,
    note,
  },
);

export const effect = part(
  'What must happen to one thing.',
  { on: refersTo('any', 'Thing on which it acts.') },
  {
    effect: words('What happens to it: stops, lowers, closes.'),
    category: z.union([z.literal(0), z.literal(1), z.literal(2)]).describe('Stop category of IEC 60204-1.'),
    within: quantity('time', 'Longest time in which it must have happened.', above0),
    note,
  },
);

export const stopDevice = part(
  'A stop button or guard, as the cause of its row.',
  { tag: tag('stop device') },
  {
    name,
    kind: oneOf(
      [
        'emergency stop',
        'interlocked guard',
        'locked guard',
        'light curtain',
        'scanner',
        'two-hand',
        'pull cord',
        'enabling switch',
        'other',
      ],
      'What it is.',
    ),
    station,
    reset: words('How it is reset, and what starts the line again.'),
    performance: words('Performance level or safety integrity level that is asked.'),
    distance: quantity('length', 'Distance from the device to the danger.', least0),
    reach: quantity(
      'length',
      'How far a hand or an arm is in before the stop signal comes: through the gap of a guard, or through a field by its resolution. 0 where the signal comes at once.',
      least0,
    ),
    stopTime: quantity('time', 'Stop time as built.', least0),
    between: quantity('time', 'Mean time by the clock between two uses of it while the line runs.', above0),
    restart: quantity('time', 'Mean time from its use until the line runs again.', above0),
    owner: oneOf(['machine', 'supply', 'people', 'material'], 'To whom the time lost by it is counted.'),
    effects: list(effect, 'What must happen, thing by thing.'),
    note,
  },
);

export const interlock = part(
  'A row of the cause-and-effect table that is not a stop device.',
  { tag: tag('interlock') },
  {
    name,
    causes: list(
      part(
        'One cause; all of them together act.',
        { on: refersTo('any', 'Thing that is in a state.') },
        {
          state: words('The state.'),
          for: quantity('time', 'Time for which it must have been so.', least0),
        },
      ),
      'What must be so.',
    ),
    effects: list(effect, 'What must happen.'),
    note,
  },
);
