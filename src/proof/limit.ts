import type { Figure, Finding, Working } from '../floor/assessment.ts';
import type { Sheet } from '../sheets/frame.ts';

/** One bound of acceptance: a figure of the book with what made it, never a number of its own. */
export interface Limit {
  /** `within`: no further from the figure than a share of it. */
  readonly sense: 'least' | 'most' | 'within';
  /** Without a value the limit is unknown, and the figure says what it waits for. */
  readonly figure: Figure;
  /** Of `within`. */
  readonly share?: number;
  /** The sheet with the numbers that made it, where a sheet did. */
  readonly working?: Working;
  /** The fields of that sheet, where the working stands in no floor's assessment: a page opens it by them. */
  readonly fields?: Sheet['inputs'];
  /** Words that the book says beside or instead of the number: `6 to 10`. */
  readonly said?: string;
}

/** A figure of a floor as a bound, with the working that it points to. */
export const withWorking = (limit: Omit<Limit, 'working'>, workings: readonly Working[]): Limit => {
  const { working: number } = limit.figure;
  const working = number === undefined ? undefined : workings[number];
  return { ...limit, ...(working === undefined ? {} : { working }) };
};

/** The limit that a finding asks, with its working. */
export const demanded = (
  { sense, demand, said }: Finding & { readonly said?: { readonly demand?: string } },
  workings: readonly Working[],
): Limit =>
  withWorking(
    { sense, figure: demand, ...(said?.demand === undefined ? {} : { said: said.demand }) },
    workings,
  );

/** How far a value is on the good side of a limit, as a share of it; undefined where the limit is unknown. */
export const marginOf = ({ sense, figure, share = 0 }: Limit, value: number): number | undefined => {
  const bound = figure.value;
  if (bound === undefined) return undefined;
  const gap =
    sense === 'least'
      ? value - bound
      : sense === 'most'
        ? bound - value
        : share * Math.abs(bound) - Math.abs(value - bound);
  return bound === 0 ? gap : gap / Math.abs(bound);
};

/** Nine digits: what was typed and what was worked out differ by rounding. */
const rounding = 1e-9;

/** Whether a value keeps a limit; undefined where the limit is unknown. */
export const keeps = (limit: Limit, value: number): boolean | undefined => {
  const margin = marginOf(limit, value);
  return margin === undefined ? undefined : margin >= -rounding;
};
