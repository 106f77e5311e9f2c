/** How far the truth may lie from a value that somebody said without saying how sure, 95 %. */
export interface DefaultSpread {
  /** Share of the value. */
  readonly share?: number;
  /** In the SI unit of the kind. */
  readonly width?: number;
}

interface Rule {
  /** Matches a place in the book. */
  readonly at: RegExp;
  readonly spread: DefaultSpread;
}

/** Fields of one sort of part of which is said with the same width. */
interface SaidRule {
  /** Matches the place of the part that they stand in. */
  readonly part: RegExp;
  readonly fields: readonly string[];
  readonly spread: DefaultSpread;
}

/**
 * Widths of what is said about a site over the telephone or read off a drawing: common practice, none of them from a
 * standard. The first rule that matches a place counts; a place that none matches is taken as said.
 */
const stated: readonly SaidRule[] = [
  // a gauge of class 1.6 read in passing, and the hours of the day
  { part: /\/source$/, fields: ['static', 'residual'], spread: { share: 0.1 } },
  { part: /\/source\/regulator$/, fields: ['set'], spread: { share: 0.1 } },
  { part: /\/source\/vessel$/, fields: ['cutIn', 'cutOut'], spread: { share: 0.1 } },
  { part: /\/source\/readings\/\d+$/, fields: ['pressure'], spread: { share: 0.1 } },
  // bucket and watch
  { part: /\/source$/, fields: ['testFlow', 'makeUp'], spread: { share: 0.1 } },
  { part: /\/source\/tank$/, fields: ['makeUp'], spread: { share: 0.1 } },
  { part: /\/source\/readings\/\d+$/, fields: ['flow'], spread: { share: 0.1 } },
  // a catalogue curve against the pump that stands there
  { part: /\/source\/curve\/\d+$/, fields: ['head'], spread: { share: 0.05 } },
  // off a drawing: a slab, a stand or a level that came out otherwise
  { part: /\/source$/, fields: ['surface', 'suctionSurface', 'height'], spread: { width: 0.1 } },
  { part: /\/source$/, fields: ['area'], spread: { share: 0.05 } },
  { part: /\/source\/tank$/, fields: ['area', 'volume'], spread: { share: 0.05 } },
  // a route that was walked, not measured
  { part: /\/supply\/run\/\d+$/, fields: ['length', 'kv', 'loss'], spread: { share: 0.15 } },
  { part: /\/liquid$/, fields: ['temperature'], spread: { width: 3 } },
  { part: /\/stations\/\d+\/lanes\/\d+$/, fields: ['kv', 'kvSlow'], spread: { share: 0.05 } },
  // plant air: gauges by the compressor, plates that are years old
  { part: /\/air\/compressor$/, fields: ['pressure', 'cutIn', 'cutOut'], spread: { width: 2e4 } },
  { part: /\/air\/drops\/\d+$/, fields: ['pressure'], spread: { width: 2e4 } },
  { part: /\/air\/regulator$/, fields: ['set'], spread: { width: 2e4 } },
  { part: /\/air\/compressor$/, fields: ['freeAir'], spread: { share: 0.1 } },
  { part: /\/air$/, fields: ['receiver', 'otherUsers'], spread: { share: 0.1 } },
  { part: /\/air\/(dryer|filters\/\d+)$/, fields: ['flow'], spread: { share: 0.1 } },
  { part: /\/air\/run\/\d+$/, fields: ['length'], spread: { share: 0.15 } },
  { part: /\/air\/dryer$/, fields: ['dewPoint'], spread: { width: 2 } },
  { part: /\/air$/, fields: ['coldest'], spread: { width: 2 } },
  { part: /\/air\/intake$/, fields: ['temperature'], spread: { width: 4 } },
  { part: /\/air\/dryer$/, fields: ['inlet'], spread: { width: 4 } },
  // a route that was paced, and the hours of the day
  { part: /\/power\/feeder$/, fields: ['length'], spread: { share: 0.1 } },
  { part: /\/power$/, fields: ['voltage'], spread: { share: 0.02 } },
  { part: /\/power$/, fields: ['faultCurrent'], spread: { share: 0.2 } },
  // water over a year, and what a plumber says of a tie-in point
  { part: /\/water(\/hot)?$/, fields: ['temperature'], spread: { width: 3 } },
  { part: /\/water(\/hot)?$/, fields: ['pressure', 'flow'], spread: { share: 0.1 } },
  { part: /\/water$/, fields: ['backflowLoss'], spread: { share: 0.1 } },
  { part: /\/water\/run\/\d+$/, fields: ['length'], spread: { share: 0.15 } },
  { part: /\/water$/, fields: ['hardness', 'conductivity'], spread: { share: 0.1 } },
  { part: /\/heat\/steam$/, fields: ['pressure', 'flow'], spread: { share: 0.1 } },
  { part: /\/heat\/hotWater$/, fields: ['flow'], spread: { share: 0.1 } },
  // drains whose fall nobody levelled
  { part: /\/drains(\/outlets\/\d+)?$/, fields: ['flow', 'fall'], spread: { share: 0.1 } },
  // a door measured with a tape, a room paced out
  { part: /\/room\/route\/\d+$/, fields: ['width', 'widthAfter', 'height'], spread: { width: 0.02 } },
  { part: /\/room$/, fields: ['ceiling', 'length', 'width'], spread: { width: 0.05 } },
  { part: /\/room\/slab$/, fields: ['bearing', 'point'], spread: { share: 0.1 } },
];

/** The rules by the name of the field: of a hundred places each is held against two or three. */
const statedOf: ReadonlyMap<string, readonly SaidRule[]> = new Map(
  stated
    .flatMap(({ fields }) => fields)
    .map((field) => [field, stated.filter(({ fields }) => fields.includes(field))]),
);

/** Half widths of what the program had to assume: wide, since nobody said anything. */
const assumed: readonly Rule[] = [
  { at: /\/(mouthHeight|manifoldHeight)$/, spread: { width: 0.2 } },
  { at: /\/lanes\/\d+\/(delay|closing)$/, spread: { share: 0.6 } },
  { at: /\/source\/(height|suctionSurface)$/, spread: { width: 1 } },
  { at: /\/run\/\d+\/roughness$/, spread: { share: 0.9 } },
  { at: /[tT]emperature$/, spread: { width: 5 } },
  // the whole index is known; only how it is parted is not
  { at: /\/stroke$/, spread: { share: 0.1 } },
  // counts are set by each meter itself, so that what its pulses are worth does not matter before it is there
  { at: /\/pulses$/, spread: { width: 0 } },
];

const widthBy = (spread: DefaultSpread | undefined, value: number): number | undefined =>
  spread === undefined ? undefined : (spread.width ?? Math.abs(value) * (spread.share ?? 0));

/** Half width that holds the truth of a stated value with 95 %, where the book gives none. */
export const statedWidth = (path: string, value: number): number | undefined => {
  const end = path.lastIndexOf('/');
  const rules = statedOf.get(path.slice(end + 1));
  if (rules === undefined) return undefined;
  const part = path.slice(0, end);
  return widthBy(rules.find((rule) => rule.part.test(part))?.spread, value);
};

/** Half width of a value that had to be assumed. */
export const assumedWidth = (path: string, value: number): number | undefined =>
  widthBy(assumed.find(({ at }) => at.test(path))?.spread, value);

/** Share of a value that somebody put down as a guess: as wide as guesses are. */
const guessed = 0.3;

/** Half width of a value that the book itself marks as assumed. */
export const guessedWidth = (path: string, value: number): number =>
  assumedWidth(path, value) ?? Math.max(statedWidth(path, value) ?? 0, guessed * Math.abs(value));
