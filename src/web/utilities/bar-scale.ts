import type { Figure, Finding } from '../../floor/assessment.ts';
import type { AnyFinding } from '../../floor/utilities/utility-finding.ts';

/** Kinds of which a share says nothing, with the difference that fills the length up to the tick. */
const spans: Readonly<Record<string, number>> = { temperature: 25, acidity: 5 };
/** A share of which nothing is asked but that some is left: the tolerance of a plate. */
const tolerance = 0.1;

const moved = (figure: Figure, by: number): Figure => {
  const to = (value: number | undefined) => (value === undefined ? {} : { value: value + by });
  const { value: _, low, high, ...rest } = figure;
  return {
    ...rest,
    ...to(figure.value),
    ...(low === undefined ? {} : { low: low + by }),
    ...(high === undefined ? {} : { high: high + by }),
  };
};

const put = (figure: Figure, value: number | undefined): Figure => {
  const { value: _, low: __, high: ___, ...rest } = figure;
  return value === undefined ? rest : { ...rest, value };
};

/**
 * The finding as its bar is drawn: a temperature by its distance from what is asked, words by their verdict, all others
 * as they are.
 */
export const barFinding = (finding: AnyFinding): Finding => {
  const { demand, have, said, verdict } = finding;
  if (have.value === undefined && (said !== undefined || demand.value === undefined)) {
    return {
      ...finding,
      demand: put(demand, 1),
      have: put(have, verdict === 'unknown' ? undefined : verdict === 'carries' ? 1 : 0),
    };
  }
  const span = spans[demand.kind] ?? (demand.value === 0 ? tolerance : undefined);
  if (span === undefined || demand.value === undefined) return finding;
  const by = span - demand.value;
  return { ...finding, demand: moved(demand, by), have: moved(have, by) };
};
