import { stationOf } from '../station-of.ts';
import type { Lever, LeverMaker } from './lever.ts';
import { scaleLever } from './supply-levers.ts';
import { roundStep, writtenAt, writtenPatch, writtenSi, writtenText } from './written-value.ts';

/** Valves of all lanes larger by the same share. */
export const laneKv: LeverMaker = (s) => {
  const lanes = s.inputs.model.lanes
    .map((lane) => writtenAt(s.book, `${lane.path}/kv`, 'flowCoefficient'))
    .filter((written) => written !== undefined);
  const first = lanes[0];
  if (first === undefined) return [];
  const times = (n: number): number => 1 + 0.05 * (n + 1);
  const lever: Lever = {
    id: 'laneKv',
    path: first.path,
    kind: 'flowCoefficient',
    steps: 60,
    candidate: (n) => ({
      value: writtenSi(first, first.number * times(n)),
      text: writtenText(first, Number((first.number * times(n)).toPrecision(3))),
      patches: lanes.map((each) =>
        writtenPatch(s.book, each, Number((each.number * times(n)).toPrecision(3))),
      ),
    }),
  };
  return [lever];
};

/** Counts of all lanes on this floor: each at which the level is just reached, and a few more. */
export const presets: LeverMaker = (s) => {
  const { level, lanes } = s.inputs.model;
  const { fill } = s.solution;
  if (level === undefined || fill === undefined || lanes.length === 0) return [];
  const settings = s.book.floors?.[s.floor]?.settings ?? [];
  const others = settings.filter((setting) => !lanes.some((lane) => lane.tag === setting.lane));
  const format = s.inputs.format?.tag;
  const needed = lanes.map((lane, i) => {
    const short = level - fill.row.lanes[i]!.volume;
    return fill.system.lanes[i]!.preset + Math.max(0, Math.ceil(short * lane.pulses - 1e-9));
  });
  const lever: Lever = {
    id: 'presets',
    path: `${s.floorPath}/settings`,
    kind: 'count',
    steps: 60,
    candidate: (n) => ({
      value: needed[0]! + n,
      text: lanes.map((lane, i) => `${lane.tag} ${needed[i]! + n}`).join(', '),
      patches: [
        {
          path: `${s.floorPath}/settings`,
          value: [
            ...others,
            ...lanes.map((lane, i) => ({
              ...settings.find((setting) => setting.lane === lane.tag),
              lane: lane.tag,
              ...(format === undefined ? {} : { format }),
              preset: needed[i]! + n,
            })),
          ],
        },
      ],
    }),
  };
  return [lever];
};

/** Nozzles of all lanes with a wider mouth, their Kv unchanged. */
export const nozzleBore: LeverMaker = (s) => {
  const lanes = s.inputs.model.lanes
    .map((lane) => writtenAt(s.book, `${lane.path}/nozzleBore`, 'length'))
    .filter((written) => written !== undefined);
  const first = lanes[0];
  if (first === undefined || lanes.some((each) => each.unit !== first.unit)) return [];
  return scaleLever(s, 'nozzleBore', lanes, roundStep(0.0005 / writtenSi(first, 1)), 80);
};

/** Valves of all lanes that close more slowly. */
export const closing: LeverMaker = (s) => {
  const lanes = s.inputs.model.lanes
    .map((lane) => writtenAt(s.book, `${lane.path}/closing`, 'time'))
    .filter((written) => written !== undefined);
  const first = lanes[0];
  if (first === undefined || lanes.some((each) => each.unit !== first.unit)) return [];
  return scaleLever(s, 'closing', lanes, roundStep(0.01 / writtenSi(first, 1)), 200);
};

/** A shorter dwell of the washer: it takes the same from every wash zone. */
export const washerDwell: LeverMaker = (s) => {
  const washer = stationOf(s.book, 'washer');
  if (washer === undefined) return [];
  const written = writtenAt(s.book, `${washer.path}/dwell`, 'time');
  if (written === undefined) return [];
  const step = roundStep(0.1 / writtenSi(written, 1));
  const steps = Math.floor(written.number / step) - 1;
  return steps < 1 ? [] : scaleLever(s, 'washerDwell', [written], -step, steps);
};

/** More heads that close at once. */
export const closingHeads: LeverMaker = (s) => {
  const station = stationOf(s.book, 'closing');
  if (station === undefined) return [];
  const now = station.station.heads ?? 1;
  const path = `${station.path}/heads`;
  return [
    {
      id: 'closingHeads',
      path,
      kind: 'count',
      steps: 8,
      candidate: (n) => ({
        value: now + n + 1,
        text: String(now + n + 1),
        patches: [{ path, value: now + n + 1 }],
      }),
    },
  ];
};
