import { contactWidth } from './contact-sums.ts';
import { layOut, type ShiftLayout, states, steps } from './shift-layout.ts';
import type { ShiftLine } from './shift-line.ts';
import type { Figure, LostStep, LostTime, ShiftFigures, StationState } from './shift-result.ts';
import type { ShiftTally } from './shift-tally.ts';
import { vectorPlan } from './shift-vector.ts';
import type { Owner } from './stop-cause.ts';

/** Less of a shift than this is rounding. */
const nothing = 1e-9;

const stationOfStep = (layout: ShiftLayout, step: LostStep): number =>
  ({
    load: layout.load,
    stroke: layout.washer,
    dwell: layout.washer,
    setUp: layout.discharge,
    convey: layout.closing >= 0 ? layout.closing : layout.takeOff,
    travelIn: layout.fill,
    fill: layout.fill,
    lower: layout.fill,
    clearOut: layout.fill,
    cap: layout.closing,
    sorter: layout.sorter,
    takeOff: layout.takeOff,
    start: layout.core,
  })[step];

/** Who does the work of a step. */
const ownerOfStep = (line: ShiftLine, step: LostStep): Owner => {
  if (step === 'load') return line.load?.by === 'operator' ? 'people' : 'machine';
  if (step === 'takeOff') return line.takeOff?.by === 'operator' ? 'people' : 'machine';
  return 'machine';
};

/** What the sums over shifts say, by the names of the line. */
export const shiftFigures = (line: ShiftLine, tally: ShiftTally): ShiftFigures => {
  const layout = layOut(line);
  const plan = vectorPlan(layout);
  const { shifts } = tally;
  const figure = (at: number): Figure => ({
    mean: tally.means[at]!,
    spread: shifts > 1 ? Math.sqrt(Math.max(0, tally.squares[at]!) / (shifts - 1)) : 0,
  });
  const firstCause = steps.length + layout.conveyors.length;
  const sorterSlot = firstCause + layout.causes.length;

  const minutes: LostTime[] = [];
  states.forEach((state, s) => {
    for (let slot = 0; slot <= sorterSlot; slot++) {
      const seconds = figure(plan.core + s * plan.coreWidth + slot);
      if (!(seconds.mean > nothing * line.duration)) continue;
      const cause = slot >= firstCause ? layout.causes[slot - firstCause] : undefined;
      if (cause !== undefined) {
        const station = layout.tags[cause.stations.length === 1 ? cause.stations[0]! : layout.core]!;
        minutes.push({ state, station, cause: cause.cause, owner: cause.owner, seconds });
      } else if (slot === sorterSlot) {
        const station = layout.tags[layout.sorter]!;
        minutes.push({ state, station, step: 'sorter', owner: 'machine', seconds });
      } else if (slot >= steps.length) {
        const station = layout.tags[layout.conveyors[slot - steps.length]!]!;
        minutes.push({ state, station, step: 'convey', owner: 'machine', seconds });
      } else {
        const step = steps[slot]!;
        const station = layout.tags[stationOfStep(layout, step)]!;
        minutes.push({ state, station, step, owner: ownerOfStep(line, step), seconds });
      }
    }
  });

  const zones = line.washer?.zones ?? [];
  const [put, fallen, rejected] = [figure(plan.put), figure(plan.fallen), figure(plan.rejected)];
  const good = figure(plan.good);
  return {
    shifts,
    good,
    goodCounts: tally.goods.flatMap((count, bottles) =>
      count === 0 ? [] : [{ good: bottles, shifts: count }],
    ),
    put,
    fallen,
    rejected,
    gained: put.mean - good.mean - fallen.mean - rejected.mean,
    core: layout.tags[layout.core]!,
    minutes,
    stations: layout.tags.flatMap((station, i) =>
      layout.conveyors.includes(i)
        ? []
        : [
            {
              station,
              states: Object.fromEntries(
                states.map((state, s) => [state, figure(plan.stations + i * states.length + s)]),
              ) as Record<StationState, Figure>,
              waiting: figure(plan.waiting + i),
            },
          ],
    ),
    causes: layout.causes.map(({ cause, owner, stations }, i) => ({
      cause,
      stations: stations.map((station) => layout.tags[station]!),
      owner,
      strikes: figure(plan.strikes + i),
      stood: figure(plan.stood + i),
      lost: figure(plan.lost + i),
    })),
    contacts: zones.flatMap(({ zone, rows }, i) => {
      const [bottles, least, sum, most] = tally.contacts.slice(i * contactWidth, (i + 1) * contactWidth);
      return bottles! > 0 ? [{ zone, rows, least: least!, mean: sum! / bottles!, most: most! }] : [];
    }),
    drawnMost: figure(plan.drawnMost),
    ...(figure(plan.ranDry).mean > 0
      ? {
          ranDry: {
            share: figure(plan.ranDry).mean,
            at: figure(plan.dryAt).mean / figure(plan.ranDry).mean,
            bottles: figure(plan.dryBottles).mean / figure(plan.ranDry).mean,
          },
        }
      : {}),
  };
};
