import type { Bundle } from '../../text/index.ts';

/** Words of the operator's card. Orders of start and stop and what to look for are common practice. */
export const cardText: Bundle = {
  en: {
    'card.title': 'Set-up card',
    'card.of': 'Set-up card, {format}',
    'card.at': 'at {floor}',
    'card.foot':
      'Values as left by the crew that handed the line over. The local rules of the plant come first.',
    'card.presets': 'Counts of the lanes',
    'card.from.asleft': 'as left',
    'card.from.shipped': 'as shipped',
    'card.from.runoff': 'run-off',
    'card.from.book': 'the book',
    'card.from.worked': 'worked out',
    'card.settings.warmth': 'Baths and temperatures',
    'card.settings.gauge': 'Pressures',
    'card.settings.clock': 'Timers',
    'card.start': 'Start',
    'card.start.look': 'Walk round it: guards shut, nobody inside, no bottle, glass or tool left on it.',
    'card.start.supplies': 'Open water and air; read the gauges against this card before anything runs.',
    'card.start.bath': 'Heat the bath and titrate it; no bottle goes in before both are as on this card.',
    'card.start.nozzles': 'Run the sprays: every nozzle gives its jet.',
    'card.start.caps': 'Fill the cap hopper; the chute is full before the first bottle comes.',
    'card.start.first': 'Look at the first row from every lane: at the level, a trace over, closed straight.',
    'card.stop': 'Stop',
    'card.stop.load': 'Stop loading.',
    'card.stop.empty': 'Let the washer run empty, and the last bottles through filler and heads.',
    'card.stop.supplies': 'Stop the line, then shut water, air and heat.',
    'card.stop.emergency':
      'In danger: the nearest red button. After it, find out why before it is let go; bottles that stood in the caustic are washed anew.',
    'card.waits': 'When the line waits',
    'card.wait.normal': 'Up to {seconds} in every cycle is how the line runs here.',
    'card.seen.washer': 'The washer waits for the filler',
    'card.look.washer': 'Longer: a lane is slow or its bottle is not released. See the next two.',
    'card.seen.low': 'All lanes fill slowly',
    'card.look.low':
      'Pressure at the manifold against this card; strainer; a valve not fully open; another user drawing.',
    'card.seen.lane': 'One lane is slow, short or runs over',
    'card.look.lane':
      'Its hose, valve and counter. Weigh one bottle before its count is changed, and write the change down.',
    'card.seen.filler': 'Full bottles wait under the filler',
    'card.look.filler': 'Room before the heads: a fallen bottle, a cap across, the heads waiting.',
    'card.seen.caps': 'The heads wait for caps',
    'card.look.caps': 'Hopper empty, a cap across in the chute, the low sensor dirty.',
    'card.seen.full': 'The take-off is full',
    'card.look.full': 'Take bottles off; the line goes on by itself when there is room.',
    'card.clean': 'Clean',
    'card.clean.strainer': '{name} of the supply: every day at first, then as it fouls.',
    'card.clean.screens': 'Screens and spray pipes of the washer: every shift; labels and glass out.',
    'card.clean.chute': 'Cap chute and both its sensors: every shift.',
    'card.clean.nozzles': 'Filling nozzles and drip tray: every shift, as the plant’s hygiene plan asks.',
    'card.clean.lock': 'Before hands go in: off, locked, pressure let down, hot parts cold.',
    'card.common':
      'Orders and what to look for: common practice; the manual and the plant’s rules come first.',
    'card.caution':
      'Moving parts, pressure and glass. Guards stay shut; no stop device is bypassed; only trained people set or clear the line.',
    'card.caution.bath':
      'Hot caustic, moving parts, pressure and glass. Eyes, hands and face protected at the bath; guards stay shut; no stop device is bypassed; only trained people set or clear the line.',
    'card.signed': 'Set as on this card',
    'card.signed.by': 'name',
    'card.signed.day': 'day',
  },
};
