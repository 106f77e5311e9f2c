import { type EnteredBottle, netOf, type SlipGround } from './entered-bottle.ts';
import { type Compared, type Expectation, expectedNet, expectedTare, expectedTime } from './expectation.ts';
import { type Candidate, likelyMasses, likelyTimes, turnedDigits } from './likely-values.ts';
import { overflows, type SeenBottles, seenBottles } from './seen-bottles.ts';
import type { Slip } from './slip.ts';

const fits = (value: number, { expected, within }: Expectation): boolean =>
  Math.abs(value - expected) <= within;

/** How often its width a value without explanation must lie off before it is questioned all the same. */
const farOff = 2;

/** The candidate nearest to what is expected among those that fit. */
const best = (
  candidates: readonly Candidate[],
  expectation: Expectation,
  of: (value: number) => number = (value) => value,
): Candidate | undefined =>
  candidates
    .filter(({ value }) => fits(of(value), expectation))
    .toSorted(
      (a, b) => Math.abs(of(a.value) - expectation.expected) - Math.abs(of(b.value) - expectation.expected),
    )[0];

const netCompared = (net: number | undefined, e: Expectation): Slip['compared'] => ({
  of: 'net',
  ...(net === undefined ? {} : { given: net }),
  ...e,
});

/** Whether the other bottles are weighed without their own tare here: then none is missed. */
const byCommonTare = ({ bottle, seen, standing }: Compared): boolean => {
  const self = standing.among && bottle.gross !== undefined;
  const weighed = seen.weighed - (self ? 1 : 0);
  const withTare = seen.withTare - (self && bottle.tare !== undefined ? 1 : 0);
  return weighed > 0 && 2 * withTare <= weighed;
};

/** The other bottles, in order. */
const othersOf = ({ seen, standing: { at, among } }: Compared): readonly EnteredBottle[] =>
  among ? seen.bottles.toSpliced(at, 1) : seen.bottles;

/** The tare that is not there, or as good as not. */
const missingTare = (compared: Compared): Slip | undefined => {
  const { bottle } = compared;
  const { gross, tare, lane, preset } = bottle;
  if (gross === undefined || (tare !== undefined && tare.value > 0)) return undefined;
  const usual = expectedTare(compared);
  if (usual === undefined || (tare === undefined && byCommonTare(compared))) return undefined;
  const net = expectedNet(lane, preset, compared);
  // a balance that was set to nought shows the contents alone: then no tare is wanted
  if (tare !== undefined && net !== undefined && fits(gross.value, net)) return undefined;
  return {
    code: 'tareForgotten',
    field: 'tare',
    ...(tare === undefined ? {} : { entered: tare.value }),
    likely: usual.expected,
    compared: { of: 'tare', ...(tare === undefined ? {} : { given: tare.value }), ...usual },
  };
};

/** Slips that would explain a mass of contents unlike that of the others. */
const massSlips = (compared: Compared, wanted: Expectation | undefined): readonly Slip[] => {
  const { bottle } = compared;
  const { gross, tare } = bottle;
  const net = netOf(bottle);
  if (gross === undefined || tare === undefined || net === undefined) return [];
  const found: Slip[] = [];
  const about = (of: Expectation) => netCompared(net, of);
  if (net < 0 && (wanted === undefined || fits(-net, wanted))) {
    const e = wanted ?? { expected: -net, within: 0, bottles: 0 };
    return [
      {
        code: 'grossTareSwapped',
        field: 'gross',
        entered: gross.value,
        likely: tare.value,
        compared: about(e),
      },
    ];
  }
  if (wanted === undefined || fits(net, wanted)) return [];
  const usual = expectedTare(compared);
  if (usual !== undefined && fits(gross.value, wanted) && fits(tare.value, usual)) {
    found.push({
      code: 'alreadyNet',
      field: 'gross',
      entered: gross.value,
      likely: gross.value + tare.value,
      compared: about(wanted),
    });
  }
  // a tare unlike the others is looked at first: it is the one of both that hardly changes
  const tareIsOdd = usual !== undefined && !fits(tare.value, usual);
  if (tareIsOdd) {
    const likely = best(likelyMasses(tare), usual);
    if (likely !== undefined && fits(gross.value - likely.value, wanted)) {
      found.push({
        code: likely.code,
        field: 'tare',
        entered: tare.value,
        likely: likely.value,
        compared: { of: 'tare', given: tare.value, ...usual },
      });
    }
  }
  const likelyGross = best(likelyMasses(gross), wanted, (value) => value - tare.value);
  if (likelyGross !== undefined) {
    found.push({
      code: likelyGross.code,
      field: 'gross',
      entered: gross.value,
      likely: likelyGross.value,
      compared: about(wanted),
    });
  }
  return found;
};

/** A count that the lane never had, and at which the bottle does not fit. */
const presetSlips = (compared: Compared, wanted: Expectation | undefined): readonly Slip[] => {
  const { bottle } = compared;
  const { lane, preset } = bottle;
  const net = netOf(bottle);
  if (net === undefined || overflows(bottle)) return [];
  // only bottles of the lane itself say this closely what a count gives
  if (wanted === undefined || wanted.bottles === 0 || fits(net, wanted)) return [];
  const others = othersOf(compared);
  const own = others.filter((one) => one.lane === lane).map((one) => one.preset);
  const meantIs = (other: number): boolean => {
    const then = expectedNet(lane, other, compared);
    return then !== undefined && fits(net, then);
  };
  const told = netCompared(net, wanted);
  const last = own.at(-1);
  if (last !== undefined && last !== preset && meantIs(last)) {
    const neighbours = others.some((one) => one.lane !== lane && one.preset === preset);
    if (neighbours && !own.includes(preset)) {
      return [{ code: 'neighbourPreset', field: 'preset', entered: preset, likely: last, compared: told }];
    }
  }
  const turned = turnedDigits({ value: preset, typed: String(preset) })
    .map(({ value }) => Math.round(value))
    .find(meantIs);
  if (turned !== undefined)
    return [{ code: 'digitsTurned', field: 'preset', entered: preset, likely: turned, compared: told }];
  const tenfold = [preset * 10, preset / 10].find((other) => Number.isInteger(other) && meantIs(other));
  return tenfold === undefined
    ? []
    : [{ code: 'decimalPoint', field: 'preset', entered: preset, likely: tenfold, compared: told }];
};

/** Another lane that the bottle fits in mass and time, where it does not fit its own. */
const laneSlips = (compared: Compared, doubted: readonly ('net' | 'time')[]): readonly Slip[] => {
  const { bottle } = compared;
  const others = othersOf(compared);
  const net = netOf(bottle);
  const time = bottle.time?.value;
  const lanes = [...new Set(others.map((one) => one.lane))].filter((lane) => lane !== bottle.lane);
  for (const lane of lanes) {
    // the count shown is that of the lane it was entered under; the other lane ran at its own
    const preset = others.findLast((one) => one.lane === lane)!.preset;
    const there = expectedNet(lane, preset, compared);
    const then = expectedTime(lane, preset, compared);
    const netFits = net === undefined || (there !== undefined && there.bottles > 0 && fits(net, there));
    const timeFits = time === undefined || (then !== undefined && fits(time, then));
    const told = doubted.includes('net') ? there : then;
    if (!netFits || !timeFits || told === undefined) continue;
    const of = doubted.includes('net') ? ('net' as const) : ('time' as const);
    const given = of === 'net' ? net : time;
    return [
      {
        code: 'laneSwapped',
        field: 'lane',
        entered: bottle.lane,
        likely: lane,
        compared: { of, ...(given === undefined ? {} : { given }), ...told },
      },
    ];
  }
  return [];
};

const timeSlips = (bottle: EnteredBottle, wanted: Expectation | undefined): readonly Slip[] => {
  const { time } = bottle;
  if (time === undefined || wanted === undefined || fits(time.value, wanted)) return [];
  const likely = best(likelyTimes(time), wanted);
  return likely === undefined
    ? []
    : [
        {
          code: likely.code,
          field: 'time',
          entered: time.value,
          likely: likely.value,
          compared: { of: 'time', given: time.value, ...wanted },
        },
      ];
};

const isFar = (value: number, { expected, within }: Expectation): boolean =>
  Math.abs(value - expected) > farOff * within;

/**
 * Slips that would explain what was entered for one bottle, the likeliest first.
 *
 * Method   what the bottle holds and how long it took is compared with the bottles of the same lane nearest in order,
 *          carried to its count in proportion; where it lies outside, each usual slip is undone in turn, and those
 *          are named that bring it back inside. Where none does and it lies far outside, that alone is said
 * Returns  none for a bottle like the others
 * Assumes  most of the others are good; a first bottle after a stop is not judged
 * Cost     a dozen bottles each; all of its floor for one that does not fit
 * Source   common practice
 */
const slipsOf = (compared: Compared): readonly Slip[] => {
  const { bottle } = compared;
  const tare = missingTare(compared);
  if (tare !== undefined) return [tare];
  if (bottle.afterStop === true) return [];
  const net = netOf(bottle);
  const wantedNet = net === undefined ? undefined : expectedNet(bottle.lane, bottle.preset, compared);
  const netIsOff = net !== undefined && wantedNet !== undefined && !fits(net, wantedNet);
  const time = bottle.time?.value;
  const wantedTime = time === undefined ? undefined : expectedTime(bottle.lane, bottle.preset, compared);
  const timeIsOff = time !== undefined && wantedTime !== undefined && !fits(time, wantedTime);
  const masses = massSlips(compared, wantedNet);
  const presets = presetSlips(compared, wantedNet);
  const times = timeSlips(bottle, wantedTime);
  const doubted = [...(netIsOff ? (['net'] as const) : []), ...(timeIsOff ? (['time'] as const) : [])];
  const lanes = doubted.length === 0 ? [] : laneSlips(compared, doubted);
  // two things that don't fit have one cause rather than two
  const found =
    netIsOff && timeIsOff
      ? [...presets, ...lanes, ...masses, ...times]
      : [...masses, ...times, ...presets, ...lanes];
  if (found.length > 0) return found;
  return [
    ...(netIsOff && isFar(net, wantedNet)
      ? [
          {
            code: 'unlikeOthers' as const,
            field: 'gross' as const,
            entered: bottle.gross!.value,
            compared: netCompared(net, wantedNet),
          },
        ]
      : []),
    ...(timeIsOff && isFar(time, wantedTime)
      ? [
          {
            code: 'unlikeOthers' as const,
            field: 'time' as const,
            entered: time,
            compared: { of: 'time' as const, given: time, ...wantedTime },
          },
        ]
      : []),
  ];
};

/** The same of a bottle that is entered after the others. */
export const likelySlips = (
  bottle: EnteredBottle,
  others: readonly EnteredBottle[],
  ground: SlipGround,
): readonly Slip[] =>
  slipsOf({ bottle, seen: seenBottles(others), standing: { at: others.length, among: false }, ground });

/** The slips of each of several bottles, each compared with all the others. */
export const slipsAmong = (
  bottles: readonly EnteredBottle[],
  ground: SlipGround,
): readonly { readonly bottle: number; readonly slips: readonly Slip[] }[] => {
  const seen: SeenBottles = seenBottles(bottles);
  return bottles.flatMap((bottle, at) => {
    const slips = slipsOf({ bottle, seen, standing: { at, among: true }, ground });
    return slips.length === 0 ? [] : [{ bottle: at, slips }];
  });
};
