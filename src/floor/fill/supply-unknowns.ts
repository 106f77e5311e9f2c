import type { SupplyUnknown } from '../../fill/uncertain-floor.ts';
import type { FillSystem } from '../../hydraulics/system.ts';
import { fitPumpCurve } from '../../sheets/water/pump-curve.ts';
import type { BookReader } from '../book-reader.ts';
import { type FloorInputs, readFloor } from '../read-floor.ts';
import { type Doubt, type UncertainPlace, uncertainPlaces } from '../uncertain-places.ts';

/** Half width of 95 % of a normal distribution, and of all of an even one, in standard deviations. */
const normal95 = 1.959963984540054;
const even = Math.sqrt(3);

/** What a floor gives to its lanes: all of the system but the lanes themselves. */
type Given = Pick<FillSystem, 'liquid' | 'source' | 'run' | 'manifold'>;

/** By how much one number of it moves. */
interface Move {
  /** Way to the number: `source.static`, `run.1.length`. */
  readonly at: readonly string[];
  readonly by: number;
}

const heights = new Set(['surface', 'height', 'suction', 'manifold']);
/** Numbers that nothing can bring to nought or below. */
const positive = new Set([
  'testFlow',
  'length',
  'kv',
  'bore',
  'roughness',
  'area',
  'density',
  'viscosity',
  'volume',
  'precharge',
  'factor',
  'speedRatio',
]);
const notNegative = new Set(['loss', 'usable', 'makeUp', 'kSum']);
/** What is left of a number that a wide spread would take below nought. */
const least = 0.02;

const givenOf = ({ liquid: { density, viscosity }, source, run, manifold }: FillSystem): Given => ({
  liquid: { density, viscosity },
  source,
  run,
  manifold,
});

/** Half of the difference of two like trees of numbers, leaf by leaf. */
const halfDifference = (high: unknown, low: unknown, at: readonly string[] = []): readonly Move[] => {
  if (typeof high === 'number' && typeof low === 'number') {
    const by = (high - low) / 2;
    return Number.isFinite(by) && by !== 0 ? [{ at, by }] : [];
  }
  if (typeof high !== 'object' || high === null || typeof low !== 'object' || low === null) return [];
  return Object.keys(high).flatMap((key) =>
    halfDifference(
      (high as Readonly<Record<string, unknown>>)[key],
      (low as Readonly<Record<string, unknown>>)[key],
      [...at, key],
    ),
  );
};

const limited = (name: string, before: number, after: number): number => {
  if (positive.has(name) && before > 0) return Math.max(least * before, after);
  return notNegative.has(name) ? Math.max(0, after) : after;
};

const movedTree = (tree: unknown, at: readonly string[], by: number): unknown => {
  const [key, ...rest] = at;
  if (key === undefined) return (tree as number) + by;
  const branch = (tree as Readonly<Record<string, unknown>>)[key];
  const next =
    rest.length === 0 ? limited(key, branch as number, (branch as number) + by) : movedTree(branch, rest, by);
  return Array.isArray(tree)
    ? tree.map((one, i) => (String(i) === key ? next : one))
    : { ...(tree as object), [key]: next };
};

type Curve = Extract<FillSystem['source'], { readonly kind: 'pumped' }>['curve'];

/** The head of a curve falls by at least this share of itself over its flows: a flat one has no exponent. */
const leastFall = 1e-3;

/** Flows that say what a curve is where it is used: none, and half and all of what takes the head away. */
const flowsOf = ({ shutOffHead, factor, exponent }: Curve): readonly [number, number] => {
  const all = factor > 0 ? (0.8 * shutOffHead * factor ** -1) ** (1 / exponent) : 1;
  return [0.5 * all, all];
};

const headAt = ({ shutOffHead, factor, exponent }: Curve, flow: number): number =>
  shutOffHead - factor * flow ** exponent;

/**
 * A pump curve with its heads moved at three flows.
 *
 * Method   the moves of a head are in proportion where those of an exponent are not: a curve is fitted anew through the
 *          three moved heads, each at most as high as the one before
 */
const movedCurve = (curve: Curve, high: Curve, low: Curve, base: Curve, deviations: number): Curve => {
  const flows = flowsOf(base);
  const move = (flow: number): number => ((headAt(high, flow) - headAt(low, flow)) / 2) * deviations;
  const first = Math.max(0, headAt(curve, 0) + move(0));
  const fall = leastFall * Math.max(first, 1e-6);
  const second = Math.min(first - fall, headAt(curve, flows[0]) + move(flows[0]));
  const third = Math.min(second - fall, headAt(curve, flows[1]) + move(flows[1]));
  return fitPumpCurve([
    { flow: 0, head: first },
    { flow: flows[0], head: second },
    { flow: flows[1], head: third },
  ]);
};

/** A spread may carry residual and static past each other; the loss is then none, never a gain. */
const mended = (system: FillSystem): FillSystem => {
  const { source } = system;
  return source.kind === 'main' && source.residual > source.static
    ? { ...system, source: { ...source, residual: source.static } }
    : system;
};

interface Curves {
  readonly base: Curve;
  readonly high: Curve;
  readonly low: Curve;
}

/** The curve of a pump and what one deviation makes of it; nothing where it stays. */
const curvesOf = (base: FillSystem, high: FillSystem, low: FillSystem): Curves | undefined => {
  const [own, up, down] = [base, high, low].map(({ source }) =>
    source.kind === 'pumped' ? source.curve : undefined,
  );
  if (own === undefined || up === undefined || down === undefined) return undefined;
  return halfDifference(up, down).length === 0 ? undefined : { base: own, high: up, low: down };
};

const withCurve = (system: FillSystem, { base, high, low }: Curves, deviations: number): FillSystem =>
  system.source.kind !== 'pumped'
    ? system
    : {
        ...system,
        source: { ...system.source, curve: movedCurve(system.source.curve, high, low, base, deviations) },
      };

/** Places that belong to the lanes: the trials tell of them. */
const ofLanes = /\/lanes\/\d+\/|^\/line\/formats\//;

/** What is not sure of a floor's supply, with what it moves. */
export interface SupplyDoubt extends SupplyUnknown {
  readonly doubt: Doubt;
}

const deviationOf = ({ ends: [low, high] }: UncertainPlace, shape: string | undefined): number =>
  (high - low) / 2 / (shape === 'range' ? even : normal95);

/**
 * The unknowns of a floor's supply.
 *
 * Method   each uncertain place of the book that is no lane's is put one standard deviation up and down and the floor is
 *          read again; what moves between the two is kept as numbers, so that several may move at once. Where the lanes
 *          themselves are lifted, everything else is lowered instead: only differences of height count
 * Returns  those that move anything
 * Assumes  the numbers move in proportion within the spread; normal, as a spread of a book is
 * Cost     two readings of the floor a place
 */
export const supplyUnknowns = (
  reader: BookReader,
  floor: number,
  format: string | undefined,
  inputs: FloorInputs,
): readonly SupplyDoubt[] => {
  const { system } = inputs.fillPart;
  if (system === undefined) return [];
  const places = uncertainPlaces([inputs.forFill.account]).filter(({ path }) => !ofLanes.test(path));
  const outlet = system.lanes[0]?.outlet ?? 0;
  return places.flatMap((place): readonly SupplyDoubt[] => {
    const { path, ends, doubt } = place;
    const deviation = deviationOf(place, inputs.forFill.account.used.get(path)?.shape);
    const middle = (ends[0] + ends[1]) / 2;
    const [high, low] = [1, -1].map((sign) => {
      const changed = reader.vary(new Map([[path, middle + sign * deviation]]));
      return readFloor(changed, floor, format, { inputs, path }).fillPart.system;
    });
    if (high === undefined || low === undefined) return [];
    const lift = ((high.lanes[0]?.outlet ?? outlet) - (low.lanes[0]?.outlet ?? outlet)) / 2;
    const curves = curvesOf(system, high, low);
    const moves = halfDifference(givenOf(high), givenOf(low)).filter(
      ({ at }) => curves === undefined || at[1] !== 'curve',
    );
    const all =
      lift === 0
        ? moves
        : [
            ...moves,
            ...[
              ['manifold'],
              ...Object.keys(system.source)
                .filter((key) => heights.has(key))
                .map((key) => ['source', key]),
            ].map((at) => ({ at, by: -lift })),
          ];
    if (all.length === 0 && curves === undefined) return [];
    return [
      {
        place: path,
        doubt,
        moved: (before, deviations) => {
          const system = all.reduce(
            (tree, { at, by }) => movedTree(tree, at, by * deviations) as FillSystem,
            before,
          );
          return mended(curves === undefined ? system : withCurve(system, curves, deviations));
        },
      },
    ];
  });
};
