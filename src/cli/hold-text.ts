import type { FloorAssessment } from '../floor/assessment.ts';
import { shown } from '../quantity/shown.ts';
import type { Told } from './told.ts';
import { words } from './words.ts';

/** What sets the pace on a floor, and the chain of steps that makes up the cycle. */
export const holdText = ({ name, hold }: FloorAssessment, { world }: Told): string => {
  if (hold === undefined) return `  ${name}: ${words.say('hold.none')}`;
  const seconds = (value: number) => shown(value, 'time', { byKind: { time: 's' } }, world.locale, 3);
  const known = words.has(`hold.by.${hold.by}`) ? hold.by : 'other';
  const by = words.say(`hold.by.${known}`, { seconds: seconds(hold.waits), station: hold.station });
  const steps = hold.chain
    .filter((step) => step.seconds > 0)
    .map((step) => {
      const key = step.lane === undefined ? `step.${step.step}` : 'step.lane';
      const what = words.has(key) ? words.say(key, { lane: step.lane ?? '' }) : step.step;
      return words.say('hold.step', { what, seconds: seconds(step.seconds) });
    });
  return `  ${name}: ${by}\n    ${steps.join('; ')}`;
};
