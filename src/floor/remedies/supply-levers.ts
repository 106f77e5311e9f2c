import type { Patch } from '../../book/index.ts';
import { toSi } from '../../quantity/index.ts';
import type { Kind } from '../../quantity/kinds.ts';
import { standardGravity } from '../../sheets/standard-gravity.ts';
import type { Lever, LeverMaker, Situation } from './lever.ts';
import { seriesFor } from './pipe-series.ts';
import {
  plainNumber,
  roundStep,
  type Written,
  writtenAt,
  writtenPatch,
  writtenSi,
  writtenText,
} from './written-value.ts';

/** Steps in a lever that moves along a scale; enough for a search by halves to end on a step people would name. */
const scaleSteps = 200;

/** A lever along a scale: one or more quantities moved together by equal steps. */
export const scaleLever = (
  situation: Situation,
  id: string,
  moved: readonly Written[],
  step: number,
  steps = scaleSteps,
): readonly Lever[] => {
  const first = moved[0];
  if (first === undefined) return [];
  // the first step ends on a round number, so that the answer reads like one
  const base = step > 0 ? Math.floor(first.number / step + 1e-9) : Math.ceil(first.number / -step - 1e-9);
  const moveTo = (n: number): number => (step > 0 ? (base + n + 1) * step : (base - n - 1) * -step);
  return [
    {
      id,
      path: first.path,
      kind: first.kind,
      steps,
      candidate: (n) => {
        const number = moveTo(n);
        return {
          value: writtenSi(first, number),
          text: writtenText(first, number),
          patches: moved.map((each) =>
            writtenPatch(situation.book, each, each.number + (number - first.number)),
          ),
        };
      },
    },
  ];
};

const supplyPath = ({ floorPath }: Situation): string => `${floorPath}/supply`;
const sourceOf = (s: Situation) => s.book.floors?.[s.floor]?.supply?.source;

/** Surface of the tank higher: its outlet is taken along, since a tank is raised as a whole. */
export const surface: LeverMaker = (s) => {
  const source = sourceOf(s);
  if (source?.kind !== 'gravity') return [];
  const path = `${supplyPath(s)}/source`;
  const written = writtenAt(s.book, `${path}/surface`, 'length');
  if (written === undefined) return [];
  const outlet = writtenAt(s.book, `${path}/outlet`, 'length');
  const moved = outlet !== undefined && outlet.unit === written.unit ? [written, outlet] : [written];
  const metres = writtenSi(written, 1);
  return scaleLever(s, 'surface', moved, roundStep(0.05 / metres), 400);
};

/** Main with more pressure: static and residual rise together, as behind a booster at the meter. */
export const staticPressure: LeverMaker = (s) => {
  if (sourceOf(s)?.kind !== 'main') return [];
  const path = `${supplyPath(s)}/source`;
  const fixed = writtenAt(s.book, `${path}/static`, 'gaugePressure');
  const residual = writtenAt(s.book, `${path}/residual`, 'gaugePressure');
  if (fixed === undefined || residual === undefined || fixed.unit !== residual.unit) return [];
  return scaleLever(s, 'staticPressure', [fixed, residual], roundStep(0.1e5 / writtenSi(fixed, 1)));
};

export const regulator: LeverMaker = (s) => {
  const source = sourceOf(s);
  if (source?.kind !== 'pumped' || source.regulator === undefined) return [];
  const written = writtenAt(s.book, `${supplyPath(s)}/source/regulator/set`, 'gaugePressure');
  return written === undefined
    ? []
    : scaleLever(s, 'regulator', [written], roundStep(0.05e5 / writtenSi(written, 1)));
};

/** Pump run faster by an inverter, up to a fifth over its rated frequency. */
export const pumpFrequency: LeverMaker = (s) => {
  const source = sourceOf(s);
  if (source?.kind !== 'pumped') return [];
  const path = `${supplyPath(s)}/source`;
  const rated =
    writtenAt(s.book, `${path}/curveFrequency`, 'frequency') ??
    writtenAt(s.book, `${path}/ratedFrequency`, 'frequency');
  const site = writtenAt(s.book, `${s.floorPath}/power/frequency`, 'frequency');
  const start = site ?? rated;
  if (rated === undefined || start === undefined) return [];
  const own = writtenAt(s.book, `${path}/frequency`, 'frequency', { unit: 'Hz', number: start.number });
  if (own === undefined || own.unit !== 'Hz') return [];
  const steps = Math.floor(1.2 * rated.number - own.number);
  return steps < 1 ? [] : scaleLever(s, 'pumpFrequency', [own], 1, steps);
};

/** One pipe or hose of the run wider, and all of them together. */
export const bore: LeverMaker = (s) => {
  const run = s.book.floors?.[s.floor]?.supply?.run ?? [];
  const widen = (i: number, least: number): { patch: Patch; name: string; bore: number } | undefined => {
    const piece = run[i];
    if (piece?.kind !== 'pipe') return undefined;
    const path = `${supplyPath(s)}/run/${i}/bore`;
    const written = writtenAt(s.book, path, 'length');
    const next = seriesFor(piece.material, piece.name).bores.find((size) => size.bore >= least - 1e-5);
    if (written === undefined || next === undefined) return undefined;
    // a true bore is written in millimetres, where its decimals mean something
    const unit = written.unit === 'in' ? 'in' : 'mm';
    const number = unit === 'in' ? next.bore / 0.0254 : next.bore * 1000;
    return { patch: writtenPatch(s.book, { ...written, unit }, number), name: next.name, bore: next.bore };
  };
  const pipes = run.flatMap((piece, i) => {
    if (piece.kind !== 'pipe') return [];
    const path = `${supplyPath(s)}/run/${i}/bore`;
    const written = writtenAt(s.book, path, 'length');
    return written === undefined ? [] : [{ i, path, now: writtenSi(written, written.number), piece }];
  });
  const lever = (id: string, members: typeof pipes): readonly Lever[] => {
    const first = members[0];
    if (first === undefined) return [];
    const sizes = seriesFor(first.piece.material, first.piece.name).bores.filter(
      (size) => size.bore > Math.max(...members.map((member) => member.now)) + 1e-5,
    );
    if (sizes.length === 0) return [];
    return [
      {
        id,
        path: first.path,
        kind: 'length',
        steps: sizes.length,
        candidate: (n) => {
          const size = sizes[n]!;
          const changes = members
            .map((member) => widen(member.i, size.bore))
            .filter((change) => change !== undefined);
          return {
            value: size.bore,
            text: `${size.name} (${plainNumber(size.bore * 1000)} mm)`,
            patches: changes.map((change) => change.patch),
          };
        },
      },
    ];
  };
  const long = pipes.filter(({ path }) => {
    const length = writtenAt(s.book, path.replace(/bore$/, 'length'), 'length');
    return length !== undefined && writtenSi(length, length.number) > 1;
  });
  return [
    ...long.flatMap((pipe) => lever('bore', [pipe])),
    ...(pipes.length > 1 ? lever('runBore', pipes) : []),
  ];
};

/** Preferred numbers R10 of ISO 3: the steps in which valves and strainers grow. */
const preferred = [1.25, 1.6, 2, 2.5, 3.15, 4, 5, 6.3, 8, 10];

/** A strainer, filter or valve of the run in a larger size. */
export const pieceKv: LeverMaker = (s) =>
  (s.book.floors?.[s.floor]?.supply?.run ?? []).flatMap((piece, i): readonly Lever[] => {
    if (piece.kind !== 'valve') return [];
    const written = writtenAt(s.book, `${supplyPath(s)}/run/${i}/kv`, 'flowCoefficient');
    if (written === undefined) return [];
    const sizeAt = (n: number): number => Number((written.number * preferred[n]!).toPrecision(3));
    return [
      {
        id: 'pieceKv',
        path: written.path,
        kind: 'flowCoefficient',
        steps: preferred.length,
        candidate: (n) => ({
          value: writtenSi(written, sizeAt(n)),
          text: writtenText(written, sizeAt(n)),
          patches: [writtenPatch(s.book, written, sizeAt(n))],
        }),
      },
    ];
  });

/** A pump between a tank that feeds by its height and the run, given by its duty point. */
export const boosterPump: LeverMaker = (s) => {
  const source = sourceOf(s);
  const { fill } = s.solution;
  if (source?.kind !== 'gravity' || fill === undefined) return [];
  const { agreedRate, level } = s.inputs.model;
  const station = s.solution.line?.times.fill;
  if (agreedRate === undefined || station === undefined) return [];
  // what the lanes together pass while they fill at the agreed pace: the pump must give that, not the mean
  const filling = Math.max(
    1,
    (s.inputs.model.lanes.length / agreedRate) * (fill.row.fillTime / s.solution.line!.period),
  );
  const volume = level ?? fill.row.drawn / fill.row.lanes.length;
  const duty = Math.ceil(((volume * fill.row.lanes.length) / filling) * 60_000);
  const path = `${supplyPath(s)}/source`;
  const weight = fill.system.liquid.density * standardGravity;
  const headAt = (n: number): number => 0.25 * (n + 1);
  const { surface: height, area, makeUp, outlet } = source;
  if (height === undefined) return [];
  const usable = s.inputs.supply?.source.kind === 'gravity' ? s.inputs.supply.source.tank.usable : 0;
  return [
    {
      id: 'boosterPump',
      path,
      kind: 'pressureDifference' as Kind,
      steps: 200,
      candidate: (n) => ({
        value: weight * headAt(n),
        text: `${plainNumber(duty)} L/min, ${plainNumber(headAt(n))} m`,
        patches: [
          {
            path,
            value: {
              kind: 'pumped',
              ...(source.name === undefined ? {} : { name: source.name }),
              curve: [{ flow: `${duty} L/min`, head: `${plainNumber(headAt(n))} m` }],
              suctionSurface: height,
              ...(area === undefined
                ? {}
                : {
                    tank: {
                      area,
                      ...(makeUp === undefined ? {} : { makeUp }),
                      ...(outlet === undefined || !Number.isFinite(usable) || !(usable > 0)
                        ? {}
                        : { volume: `${plainNumber(usable * 1000)} L` }),
                    },
                  }),
            },
          },
        ],
      }),
    },
  ];
};

export const makeUp: LeverMaker = (s) => {
  const source = sourceOf(s);
  const path =
    source?.kind === 'gravity'
      ? `${supplyPath(s)}/source/makeUp`
      : source?.kind === 'pumped' && source.tank !== undefined
        ? `${supplyPath(s)}/source/tank/makeUp`
        : undefined;
  if (path === undefined) return [];
  const written = writtenAt(s.book, path, 'volumeFlow', { unit: 'L/min', number: 0 });
  if (written === undefined) return [];
  return scaleLever(
    s,
    'makeUp',
    [written],
    roundStep(toSi(1, 'volumeFlow', 'L/min') / writtenSi(written, 1)),
    300,
  );
};

export const tankArea: LeverMaker = (s) => {
  if (sourceOf(s)?.kind !== 'gravity') return [];
  const written = writtenAt(s.book, `${supplyPath(s)}/source/area`, 'area');
  return written === undefined
    ? []
    : scaleLever(s, 'tankArea', [written], roundStep(0.1 / writtenSi(written, 1)), 300);
};

export const tankVolume: LeverMaker = (s) => {
  const source = sourceOf(s);
  if (source?.kind !== 'pumped' || source.tank?.volume === undefined) return [];
  const written = writtenAt(s.book, `${supplyPath(s)}/source/tank/volume`, 'volume');
  return written === undefined
    ? []
    : scaleLever(s, 'tankVolume', [written], roundStep(0.05 / writtenSi(written, 1)), 400);
};
