import { type HeldStation, waitsForBottles } from '../hold-rule.ts';
import type { LineTimes } from '../line-times.ts';
import { BeltWay, beltsOf, roomOf, secondsOf } from './belt-way.ts';

/**
 * The same line once more, without events that wait for each other: machines with states and bottles that are counted,
 * moved on by a clock. Nothing here knows of blocks, lags or loops.
 *
 * Symbols  sets      count  sets of bottles to wait for
 *          fillTime  s of the slowest lane, by the number of the set
 *          stroke    told of every stroke as it begins
 * Returns  s from the first stroke at which each set of bottles left the last station; fewer than asked where the line
 *          stands still for good
 */
export const simulatedLine = (
  times: LineTimes,
  sets: number,
  fillTime: (set: number) => number = () => times.fill?.filling ?? 0,
  stroke: (at: number) => void = () => undefined,
): number[] => {
  const { washer, fill, closing, takeOff } = times;
  if (washer === undefined || fill === undefined) throw new Error('a washer and a fill station are needed');
  const { row } = washer;
  const { lanes } = fill;
  const wayRoom = Math.max(times.wayRoom, row);
  const setsBefore = (room: number): number => Math.max(1, Math.floor(room / lanes));

  let clock = 0;
  const due: { at: number; happens: () => void }[] = [];
  const after = (seconds: number, happens: () => void): void => {
    due.push({ at: clock + seconds, happens });
  };

  const { first, last } = beltsOf(times.way);
  const before = secondsOf(times.way.slice(0, first));
  const behind = times.way.slice(last + 1);
  const way = new BeltWay({
    row,
    seconds: times.way.slice(first, last + 1).map(({ seconds }) => seconds),
    rowsBefore: first === 0 ? 0 : Math.max(1, Math.floor(roomOf(times.way.slice(0, first)) / row)),
    roomBehind: behind.length === 0 ? 0 : Math.max(row, roomOf(behind)),
    secondsBehind: secondsOf(behind),
    after: (seconds, happens) => after(seconds, happens),
    now: () => clock,
    arrive: () => {
      arrived += row;
    },
    // bottles that are no set yet stand under the lanes once these are empty
    takes: (bottles, gone) => bottles <= taken || (filler === 'empty' && gone - taken < lanes),
  });

  let strokes = 0;
  let washerReady = true;
  let discharged = 0;
  let arrived = 0;
  let taken = 0;
  let filler: 'empty' | 'busy' | 'may clear out' = 'empty';
  let fillsEnded = 0;
  let fillsReleased = 0;
  let clearing = 0;
  let beforeHeads = 0;
  let heads: 'empty' | 'busy' | 'closed' = 'empty';
  let setsClosed = 0;
  let beforeTakeOff = 0;
  let taking = false;
  let setsTaken = 0;
  const out: number[] = [];

  const roomAtTakeOff = (given: number): boolean =>
    takeOff === undefined || given - setsTaken < setsBefore(takeOff.room);

  /** Sets that are past everything that holds a station. */
  const passedFor = (station: HeldStation): number =>
    Math.min(
      Number.POSITIVE_INFINITY,
      ...times.holds
        .filter((hold) => waitsForBottles(hold) && (hold.holds ?? 'washer') === station)
        .map(({ by = 'fill', until }) => {
          if (by !== 'fill') return by === 'closing' ? setsClosed : setsTaken;
          return until === 'release' ? fillsReleased : fillsEnded;
        }),
    );

  /** Whether what is behind a station is full, or can't get rid of what it has, where that keeps it. */
  const isKept = (station: HeldStation): boolean =>
    times.holds.some(({ holds = 'washer', by = 'fill', until }) => {
      if (holds !== station) return false;
      const isFull = closing !== undefined && clearing - setsClosed >= setsBefore(closing.room);
      if (until === 'room') return by === 'closing' ? isFull : !roomAtTakeOff(setsClosed);
      return until === 'way out' && (by === 'fill' ? filler === 'may clear out' : heads === 'closed');
    });

  /** Everything that may start now, what is behind before what comes to it; true where something did. */
  const start = (): boolean => {
    if (way.step()) return true;
    if (filler === 'may clear out') {
      const free =
        closing !== undefined ? clearing - setsClosed < setsBefore(closing.room) : roomAtTakeOff(clearing);
      if (free) {
        filler = 'busy';
        clearing += 1;
        after(fill.clearOut, () => {
          filler = 'empty';
          if (closing !== undefined) beforeHeads += 1;
          else if (takeOff !== undefined) beforeTakeOff += 1;
          else out.push(clock);
        });
        return true;
      }
    }
    if (heads === 'closed' && roomAtTakeOff(setsClosed)) {
      heads = 'empty';
      setsClosed += 1;
      if (takeOff !== undefined) beforeTakeOff += 1;
      else out.push(clock);
      return true;
    }
    if (takeOff !== undefined && !taking && beforeTakeOff > 0) {
      taking = true;
      beforeTakeOff -= 1;
      after(lanes / takeOff.rate, () => {
        taking = false;
        setsTaken += 1;
        out.push(clock);
      });
      return true;
    }
    if (
      closing !== undefined &&
      heads === 'empty' &&
      beforeHeads > 0 &&
      setsClosed <= passedFor('closing') &&
      !isKept('closing')
    ) {
      heads = 'busy';
      beforeHeads -= 1;
      let turns = 0;
      for (let left = lanes; left > 0; left -= closing.heads) turns += 1;
      after(turns * closing.perBottle, () => {
        heads = 'closed';
      });
      return true;
    }
    if (
      filler === 'empty' &&
      arrived - taken >= lanes &&
      taken / lanes <= passedFor('fill') &&
      !isKept('fill')
    ) {
      filler = 'busy';
      taken += lanes;
      after(fill.travelIn + fill.lift + fill.lag + fillTime(fillsEnded), () => {
        fillsEnded += 1;
        after(fill.drip + fill.lower, () => {
          fillsReleased += 1;
          filler = 'may clear out';
        });
      });
      return true;
    }
    if (washerReady) {
      const isHeld = Math.floor(discharged / lanes) > passedFor('washer');
      if (!isHeld && !isKept('washer') && discharged + row - taken <= wayRoom && way.lets(strokes)) {
        washerReady = false;
        discharged += row;
        strokes += 1;
        stroke(clock);
        after(washer.stroke + before, () => {
          way.bring();
        });
        after(washer.stroke + washer.dwell, () => {
          washerReady = true;
        });
        return true;
      }
    }
    return false;
  };

  while (out.length < sets) {
    while (start());
    due.sort((a, b) => a.at - b.at);
    const moves = clock + way.nextIn();
    const at = Math.min(moves, due[0]?.at ?? Number.POSITIVE_INFINITY);
    if (at === Number.POSITIVE_INFINITY) return out;
    way.move(at - clock);
    clock = at;
    if (due[0] !== undefined && due[0].at <= at) due.shift()!.happens();
  }
  return out;
};
