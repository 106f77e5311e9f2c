import type { AnyFinding } from '../../floor/utilities/utility-finding.ts';
import type { ShowOptions, Words } from '../words/words.ts';

/** From here on nobody thinks in per cent. */
const many = 4;

/**
 * How far a finding is on its good side, or how far it misses: a share of what is asked; of a temperature the
 * difference, because a share of it says nothing.
 */
export const marginText = (words: Words, finding: AnyFinding, show: ShowOptions): string | undefined => {
  const { margin, gap, verdict, sense, demand, have } = finding;
  if (verdict === 'unknown' || gap === undefined) return undefined;
  const way = gap >= 0 ? 'over' : `under.${sense}`;
  if (demand.kind === 'temperature' || demand.kind === 'acidity') {
    const apart =
      demand.kind === 'acidity'
        ? words.number(Math.abs(gap), 2)
        : words.quantity(Math.abs(gap), 'temperatureDifference', { ...show, digits: 2 }).text;
    return words.say(`utilities.gap.${way}`, { gap: apart });
  }
  if (margin === undefined) return undefined;
  const ratio = have.value === undefined || demand.value === undefined ? 0 : have.value / demand.value;
  if (sense === 'least' && ratio >= many) {
    return words.say('utilities.times', { n: Number(ratio.toPrecision(2)) });
  }
  return words.say(margin >= 0 ? 'working.margin.over' : `working.margin.under.${sense}`, {
    percent: words.percent(Math.abs(margin)),
  });
};
