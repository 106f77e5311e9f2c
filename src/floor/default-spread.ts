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

/**
 * Widths of what is said about a site over the telephone or read off a drawing: common practice, none of them from a
 * standard. The first rule that matches a place counts; a place that none matches is taken as said.
 */
const stated: readonly Rule[] = [
  // a gauge of class 1.6 read in passing, and the hours of the day
  {
    at: /\/source\/(static|residual|regulator\/set|vessel\/cut(In|Out)|readings\/\d+\/pressure)$/,
    spread: { share: 0.1 },
  },
  // bucket and watch
  { at: /\/source\/(testFlow|makeUp|tank\/makeUp|readings\/\d+\/flow)$/, spread: { share: 0.1 } },
  // a catalogue curve against the pump that stands there
  { at: /\/source\/curve\/\d+\/head$/, spread: { share: 0.05 } },
  // off a drawing: a slab, a stand or a level that came out otherwise
  { at: /\/source\/(surface|suctionSurface|height)$/, spread: { width: 0.1 } },
  { at: /\/source\/(area|tank\/area|tank\/volume)$/, spread: { share: 0.05 } },
  // a route that was walked, not measured
  { at: /\/supply\/run\/\d+\/length$/, spread: { share: 0.15 } },
  { at: /\/supply\/run\/\d+\/(kv|loss)$/, spread: { share: 0.15 } },
  { at: /\/liquid\/temperature$/, spread: { width: 3 } },
  { at: /\/stations\/\d+\/lanes\/\d+\/kv(Slow)?$/, spread: { share: 0.05 } },
  // plant air: gauges by the compressor, plates that are years old
  {
    at: /\/air\/(compressor\/(pressure|cutIn|cutOut)|drops\/\d+\/pressure|regulator\/set)$/,
    spread: { width: 2e4 },
  },
  {
    at: /\/air\/(compressor\/freeAir|receiver|otherUsers|dryer\/flow|filters\/\d+\/flow)$/,
    spread: { share: 0.1 },
  },
  { at: /\/air\/run\/\d+\/length$/, spread: { share: 0.15 } },
  { at: /\/air\/(dryer\/dewPoint|coldest)$/, spread: { width: 2 } },
  { at: /\/air\/(intake\/temperature|dryer\/inlet)$/, spread: { width: 4 } },
  // a route that was paced, and the hours of the day
  { at: /\/power\/feeder\/length$/, spread: { share: 0.1 } },
  { at: /\/power\/voltage$/, spread: { share: 0.02 } },
  { at: /\/power\/faultCurrent$/, spread: { share: 0.2 } },
  // water over a year, and what a plumber says of a tie-in point
  { at: /\/water\/temperature$/, spread: { width: 3 } },
  { at: /\/water\/hot\/temperature$/, spread: { width: 3 } },
  { at: /\/water\/((hot\/)?(pressure|flow)|backflowLoss)$/, spread: { share: 0.1 } },
  { at: /\/water\/run\/\d+\/length$/, spread: { share: 0.15 } },
  { at: /\/water\/(hardness|conductivity)$/, spread: { share: 0.1 } },
  { at: /\/heat\/(steam\/(pressure|flow)|hotWater\/flow)$/, spread: { share: 0.1 } },
  // drains whose fall nobody levelled
  { at: /\/drains\/(outlets\/\d+\/)?(flow|fall)$/, spread: { share: 0.1 } },
  // a door measured with a tape, a room paced out
  { at: /\/room\/route\/\d+\/(width|widthAfter|height)$/, spread: { width: 0.02 } },
  { at: /\/room\/(ceiling|length|width)$/, spread: { width: 0.05 } },
  { at: /\/room\/slab\/(bearing|point)$/, spread: { share: 0.1 } },
];

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

const widthOf = (rules: readonly Rule[], path: string, value: number): number | undefined => {
  const rule = rules.find((each) => each.at.test(path));
  if (rule === undefined) return undefined;
  return rule.spread.width ?? Math.abs(value) * (rule.spread.share ?? 0);
};

/** Half width that holds the truth of a stated value with 95 %, where the book gives none. */
export const statedWidth = (path: string, value: number): number | undefined => widthOf(stated, path, value);

/** Half width of a value that had to be assumed. */
export const assumedWidth = (path: string, value: number): number | undefined =>
  widthOf(assumed, path, value);

/** Share of a value that somebody put down as a guess: as wide as guesses are. */
const guessed = 0.3;

/** Half width of a value that the book itself marks as assumed. */
export const guessedWidth = (path: string, value: number): number =>
  assumedWidth(path, value) ?? Math.max(statedWidth(path, value) ?? 0, guessed * Math.abs(value));
