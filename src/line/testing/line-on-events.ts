import { randomFrom } from '../../fill/testing/random.ts';
import type { ShiftLine } from '../shift/shift-line.ts';
import type { StopCause } from '../shift/stop-cause.ts';

/** The part of the package that is used here; it ships no types, and hangs itself on `window`. */
interface Request {
  done(callback: () => void): Request;
}
interface Entity {
  setTimer(seconds: number): Request;
  getBuffer(buffer: object, amount: number): Request;
  putBuffer(buffer: object, amount: number): Request;
}
interface Library {
  readonly Sim: new () => {
    addEntity(kind: new (sim: object, name: string) => Entity, name: string): Entity;
    simulate(until: number): boolean;
  };
  readonly Entity: new (sim: object, name: string) => Entity;
  readonly Buffer: new (name: string, capacity: number, initial: number) => object;
}

/** simjs, a general library of discrete events: entities that wait for timers and for tokens in buffers. */
const load = async (): Promise<Library> => {
  const place: { Sim?: Library } = {};
  Object.assign(globalThis, { window: place });
  // @ts-expect-error: the package has no types
  await import('simjs');
  Reflect.deleteProperty(globalThis, 'window');
  return place.Sim!;
};

export const eventLibrary: Promise<Library> = load();

/**
 * A line whose rows are its sets, written on that library: stations that run by themselves and pass tokens. It knows the
 * washer, its hold until release, the way, fill station, heads and take-off with their room, and stops that count
 * working time like the gaps between chance events; nothing of it is shared with the recursion.
 *
 * Returns  good bottles of a shift
 */
export const lineOnEvents = (library: Library, line: ShiftLine, seed: number): number => {
  const { washer, fill, closing, takeOff, conveyors, discharge } = line;
  if (washer === undefined || fill === undefined || closing === undefined || takeOff === undefined)
    throw new Error('a whole line is wanted');
  const random = randomFrom(seed);
  const exponential = (mean: number): number => -mean * Math.log(1 - random.uniform(0, 1));
  const sim = new library.Sim();
  const tokens = (name: string, initial: number): object => new library.Buffer(name, 1e6, initial);
  const lanes = fill.lanes;
  const wayFree = tokens('way', Math.floor(line.wayRoom / lanes));
  const released = tokens('released', 1);
  const arrived = tokens('arrived', 0);
  const headRoom = tokens('room before heads', Math.floor(closing.room / lanes));
  const atHeads = tokens('at heads', 0);
  const takeRoom = tokens('room at take-off', Math.floor(takeOff.room / lanes));
  const atTakeOff = tokens('at take-off', 0);
  const way = (discharge?.seconds ?? 0) + conveyors.reduce((sum, { seconds }) => sum + seconds, 0);
  let good = 0;

  class Station extends library.Entity {
    private readonly stops: readonly StopCause[];
    private readonly left: number[];
    constructor(of: object, name: string, stops: readonly StopCause[] = []) {
      super(of, name);
      this.stops = stops;
      this.left = stops.map(({ between }) => exponential(between));
    }
    work(seconds: number, then: () => void): void {
      let first = -1;
      for (let i = 0; i < this.left.length; i++) {
        if (this.left[i]! < seconds && (first < 0 || this.left[i]! < this.left[first]!)) first = i;
      }
      const piece = first < 0 ? seconds : this.left[first]!;
      for (let i = 0; i < this.left.length; i++) this.left[i]! -= piece;
      this.setTimer(piece).done(() => {
        if (first < 0) {
          then();
          return;
        }
        const { between, clear } = this.stops[first]!;
        this.left[first] = exponential(between);
        this.setTimer(exponential(clear)).done(() => this.work(seconds - piece, then));
      });
    }
    /** Bottle after bottle. */
    each(bottles: number, seconds: number, then: () => void): void {
      if (bottles === 0) then();
      else this.work(seconds, () => this.each(bottles - 1, seconds, then));
    }
  }
  class Belt extends library.Entity {
    start(): void {}
  }
  const belt = sim.addEntity(Belt, 'belt');
  class Washer extends Station {
    constructor(of: object, name: string) {
      super(of, name, washer!.stops);
    }
    start(): void {
      this.getBuffer(wayFree, 1).done(() =>
        this.getBuffer(released, 1).done(() =>
          this.work(washer!.stroke, () => {
            belt.setTimer(way).done(() => {
              belt.putBuffer(arrived, 1);
            });
            this.work(washer!.dwell, () => this.start());
          }),
        ),
      );
    }
  }
  class Filler extends Station {
    constructor(of: object, name: string) {
      super(of, name, fill!.stops);
    }
    start(): void {
      this.getBuffer(arrived, 1).done(() => {
        this.putBuffer(wayFree, 1);
        const { filling } = fill!;
        const seconds =
          typeof filling === 'number'
            ? filling
            : filling.kind === 'exponential'
              ? exponential(filling.mean)
              : filling.kind === 'uniform'
                ? random.uniform(filling.low, filling.high)
                : Number.NaN;
        const opening = fill!.travelIn + fill!.lift + fill!.lag;
        this.work(opening + seconds + fill!.drip + fill!.lower, () => {
          this.putBuffer(released, 1);
          this.getBuffer(headRoom, 1).done(() =>
            this.work(fill!.clearOut, () => {
              this.putBuffer(atHeads, 1);
              this.start();
            }),
          );
        });
      });
    }
  }
  class Heads extends Station {
    constructor(of: object, name: string) {
      super(of, name, closing!.stops);
    }
    start(): void {
      this.getBuffer(atHeads, 1).done(() =>
        this.each(lanes, closing!.perBottle as number, () =>
          this.getBuffer(takeRoom, 1).done(() => {
            this.putBuffer(headRoom, 1);
            this.putBuffer(atTakeOff, 1);
            this.start();
          }),
        ),
      );
    }
  }
  class TakeOff extends Station {
    constructor(of: object, name: string) {
      super(of, name, takeOff!.stops);
    }
    start(): void {
      this.getBuffer(atTakeOff, 1).done(() =>
        this.each(lanes, takeOff!.perBottle as number, () => {
          good += lanes;
          this.putBuffer(takeRoom, 1);
          this.start();
        }),
      );
    }
  }
  sim.addEntity(Washer, 'washer');
  sim.addEntity(Filler, 'filler');
  sim.addEntity(Heads, 'heads');
  sim.addEntity(TakeOff, 'take-off');
  sim.simulate(line.duration);
  return good;
};
