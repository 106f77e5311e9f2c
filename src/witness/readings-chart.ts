import type { Limit, ProvedCheck } from '../proof/index.ts';
import type { Kind } from '../quantity/kinds.ts';
import { readEntry } from '../quantity/read-entry.ts';
import { html, type Markup } from './markup.ts';
import type { Telling } from './telling.ts';

const width = 360;
const tall = 44;
const axis = 30;
/** Room at both ends for a dot and half of a text. */
const inset = 40;

interface Dot {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** The stretches of the axis where a limit is not kept, as far as the drawing reaches. */
const refused = (
  { sense, share = 0 }: Limit,
  bound: number,
  [from, to]: readonly [number, number],
): readonly (readonly [number, number])[] => {
  if (sense === 'least') return [[from, bound]];
  if (sense === 'most') return [[bound, to]];
  const near = share * Math.abs(bound);
  return [
    [from, bound - near],
    [bound + near, to],
  ];
};

const boundsOf = ({ sense, share = 0 }: Limit, bound: number): readonly number[] => {
  const near = share * Math.abs(bound);
  return sense === 'within' ? [bound - near, bound + near] : [bound];
};

/** The lowest and the highest reading, which get their numbers. */
const extremes = (dots: readonly Dot[]): readonly number[] => {
  const values = dots.map(({ value }) => value);
  return [...new Set([Math.min(...values), Math.max(...values)])];
};

/** Text of every dot and limit, for readers who hear it. */
const aloud = (check: ProvedCheck, { say, checks }: Telling): string =>
  say('witness.chart', {
    name: checks.name(check.check),
    readings: (check.inForce?.result.readings ?? []).join(', '),
    limits: checks.limits(check.check),
  });

/**
 * The readings of the last try of a check along its limits: a dot each with its spread, hatched where the limit is not
 * kept. Nothing where there is no reading, or no limit to draw them against.
 */
export const readingsChart = (one: ProvedCheck, telling: Telling): Markup | undefined => {
  const { check, inForce } = one;
  const kind: Kind | undefined = check.limits[0]?.figure.kind;
  if (kind === undefined || inForce === undefined) return undefined;
  const dots = (inForce.result.readings ?? []).flatMap((text): readonly Dot[] => {
    const read = readEntry(text, kind, { path: '' });
    return read.ok ? [read.value] : [];
  });
  const known = check.limits.flatMap((limit) =>
    limit.figure.value === undefined ? [] : [{ limit, bound: limit.figure.value }],
  );
  if (dots.length === 0 || known.length === 0) return undefined;
  const ends = [
    ...dots.flatMap(({ low, high }) => [low, high]),
    ...known.flatMap(({ limit, bound }) => boundsOf(limit, bound)),
  ];
  const [least, most] = [Math.min(...ends), Math.max(...ends)];
  // one value alone gets some room beside it
  const around = most > least ? 0.15 * (most - least) : 0.1 * Math.abs(most) || 1;
  const from = least - around;
  const to = most + around;
  const x = (value: number): string =>
    (inset + ((value - from) / (to - from)) * (width - 2 * inset)).toFixed(1);
  return html`<svg class="readings" viewBox="0 0 ${width} ${tall}" width="${width}" height="${tall}" role="img" aria-label="${aloud(one, telling)}">${known.flatMap(
    ({ limit, bound }) =>
      refused(limit, bound, [from, to]).map(
        ([a, b]) =>
          html`<rect class="hatched" x="${x(a)}" y="14" width="${(Number(x(b)) - Number(x(a))).toFixed(1)}" height="${axis - 14}"/>`,
      ),
  )}<path class="axis" d="M${x(from)} ${axis}H${x(to)}"/>${known.flatMap(({ limit, bound }) =>
    boundsOf(limit, bound).map(
      (at) =>
        html`<path class="tick" d="M${x(at)} 10V${axis + 4}"/><text x="${x(at)}" y="9" text-anchor="middle">${telling.quantity(at, kind)}</text>`,
    ),
  )}${dots.map(
    ({ value, low, high }) =>
      html`${high > low && html`<path class="whisker" d="M${x(low)} 22H${x(high)}"/>`}<circle cx="${x(value)}" cy="22" r="4"/>`,
  )}${extremes(dots).map(
    (at) =>
      html`<text x="${x(at)}" y="${tall - 1}" text-anchor="middle">${telling.quantity(at, kind)}</text>`,
  )}</svg>`;
};
