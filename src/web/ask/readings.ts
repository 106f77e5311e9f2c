import { type Book, stepsOf } from '../../book/index.ts';

/** Who can take a reading or give an answer. */
export type Whom = 'plumber' | 'product' | 'builder' | 'electrician' | 'site' | 'customer';

/** One reading or answer: how it is taken stands in the words as `ask.how.ID`. */
export interface ReadingKind {
  readonly id: string;
  /** Who takes it at the site; on the floor where the line was built it is always that floor. */
  readonly whom: Whom;
  /**
   * How far one reading reaches: all such places of a floor or of the line at once (a flow test gives pressure and
   * flow), or one place alone (each bore wants the caliper anew).
   */
  readonly settles: 'all' | 'one';
}

interface Rule extends ReadingKind {
  /** Matches a place of the book. */
  readonly at: RegExp;
}

const rule = (id: string, whom: Whom, settles: 'all' | 'one', at: RegExp): Rule => ({
  id,
  whom,
  settles,
  at,
});

/** What a place of the book is best read by; the first rule that matches counts. Common practice of the trade. */
const rules: readonly Rule[] = [
  rule('airRegulator', 'site', 'all', /\/air\/regulator(\/|$)/),
  rule('compressorPlate', 'site', 'all', /\/air\/compressor(\/|$)/),
  rule('dryerPlate', 'site', 'all', /\/air\/dryer(\/|$)/),
  rule('airColdest', 'site', 'all', /\/air\/coldest$/),
  rule('airQuality', 'site', 'all', /\/air\/quality$/),
  rule('airPiece', 'site', 'one', /\/air\/(run|filters)(\/|$)/),
  rule('airRoom', 'site', 'all', /\/air(\/|$)/),
  rule('cylinder', 'builder', 'one', /^\/line\/(cylinders|airDrops|blowOffs)(\/|$)/),
  rule('motorPlate', 'builder', 'one', /^\/line\/(drives|heaters|loads)(\/|$)/),
  rule('feeder', 'electrician', 'all', /\/power\/feeder(\/|$)/),
  rule('voltages', 'electrician', 'all', /\/power\/readings(\/|$)/),
  rule(
    'panelPlate',
    'electrician',
    'all',
    /\/power\/(transformer|stepTransformer|protection|panelRating|faultCurrent)(\/|$)/,
  ),
  rule('earthing', 'electrician', 'all', /\/power\/earthing$/),
  rule('siteWater', 'plumber', 'all', /^\/floors\/\d+\/water(\/|$)/),
  rule('siteHeat', 'site', 'all', /^\/floors\/\d+\/heat(\/|$)/),
  rule('siteDrain', 'plumber', 'all', /^\/floors\/\d+\/drains(\/|$)/),
  rule('siteRoom', 'site', 'all', /^\/floors\/\d+\/room(\/|$)/),
  rule('bath', 'builder', 'all', /\/zones\/\d+(\/|$)/),
  rule('flowTest', 'plumber', 'all', /\/source\/(static|residual|testFlow|exponent)$/),
  rule('pumpPlate', 'plumber', 'all', /\/source\/(curve.*|curveFrequency|ratedFrequency|frequency)$/),
  rule('sourceHeight', 'plumber', 'all', /\/source\/(surface|suctionSurface|outlet|height)$/),
  rule('tankArea', 'plumber', 'all', /\/source\/(area|tank\/area)$/),
  rule('makeUp', 'product', 'all', /\/source\/(makeUp|tank\/makeUp)$/),
  rule('tankPlate', 'plumber', 'all', /\/source\/(tank|vessel)\/volume$/),
  rule('regulator', 'plumber', 'all', /\/source\/(regulator|vessel)\//),
  rule('manifoldReading', 'builder', 'all', /\/source\/readings/),
  rule('source', 'plumber', 'all', /\/supply(\/source(\/kind)?)?$/),
  rule('run', 'plumber', 'all', /\/supply\/run(\/\d+)?$/),
  rule('bore', 'plumber', 'one', /\/run\/\d+\/bore$/),
  rule('runLength', 'plumber', 'all', /\/run\/\d+\/length$/),
  rule('rise', 'plumber', 'all', /\/run\/\d+\/rise$/),
  rule('strainer', 'plumber', 'one', /\/run\/\d+\/(kv|loss)$/),
  rule('wall', 'plumber', 'all', /\/run\/\d+\/(roughness|material)$/),
  rule('fittings', 'plumber', 'all', /\/run\/\d+\/fittings/),
  rule('rating', 'builder', 'one', /\/manifoldRating$/),
  rule('rating', 'plumber', 'one', /\/rating$/),
  rule('temperature', 'product', 'all', /[tT]emperature$/),
  rule('density', 'product', 'all', /\/products\/\d+\/properties/),
  rule('froth', 'product', 'all', /\/foaming(\/|$)/),
  rule('liquid', 'product', 'all', /\/liquid/),
  rule('laneKv', 'builder', 'all', /\/lanes\/\d+\/(kv|kvSlow)$/),
  rule('laneVideo', 'builder', 'all', /\/lanes\/\d+\/(delay|closing|afterDrip)$/),
  rule('weighBottle', 'builder', 'all', /\/lanes\/\d+\/pulses$/),
  rule('preset', 'builder', 'all', /\/lanes\/\d+\/(preset|changeOver)$/),
  rule('nozzle', 'builder', 'all', /\/lanes\/\d+\/nozzleBore$/),
  rule('lanes', 'builder', 'all', /\/lanes$/),
  rule('stationHeight', 'builder', 'all', /\/(manifoldHeight|mouthHeight|nozzleHeight)$/),
  rule('row', 'builder', 'all', /\/stations\/\d+\/(row|heads)$/),
  rule('stops', 'builder', 'all', /\/stops$/),
  rule('perBottle', 'builder', 'one', /\/stations\/\d+\/(perBottle|rate)$/),
  rule('conveyor', 'builder', 'all', /\/stations\/\d+\/(length|speed|capacity)$/),
  rule(
    'cycleVideo',
    'builder',
    'all',
    /\/stations\/\d+\/(stroke|dwell|travelIn|lift|drip|lower|clearOut|time)$/,
  ),
  rule('weighLevel', 'builder', 'one', /\/formats\/\d+\/(level|brimful)$/),
  rule('agreement', 'customer', 'all', /^\/agreement/),
  rule('mains', 'electrician', 'all', /\/power/),
];

/** Whoever can answer for a place that no rule names. */
const otherWhom = (path: string): Whom => {
  if (path.includes('/supply') || path.includes('/water')) return 'plumber';
  if (path.startsWith('/line/products')) return 'product';
  return path.startsWith('/line') ? 'builder' : 'site';
};

/** What a place of the book is best read by. */
export const readingFor = (path: string): ReadingKind => {
  const found = rules.find(({ at }) => at.test(path));
  return found ?? { id: 'other', whom: otherWhom(path), settles: 'one' };
};

/** Every kind of reading: their words are looked for in a test. */
export const readingIds: readonly string[] = [...new Set(rules.map(({ id }) => id)), 'other'];

/** Where one reading reaches: the floor or the line, or the place itself. */
export const reachOf = (path: string): string => {
  const { id, settles } = readingFor(path);
  const [first, second] = stepsOf(path);
  const whole = first === 'floors' ? `/floors/${second}` : `/${first}`;
  return `${id} ${settles === 'all' ? whole : path}`;
};

/** Who takes it: on the floor where the line was built its own people do. */
export const whomFor = (book: Book, path: string): Whom => {
  const [first, second] = stepsOf(path);
  const floor = first === 'floors' ? book.floors?.[Number(second)] : undefined;
  return floor?.role === 'built on' ? 'builder' : readingFor(path).whom;
};
