import type { CheckSentences, FloorProof, PlanStep, ProofWait } from '../proof/index.ts';
import { formatNumber } from '../quantity/index.ts';
import { textTable } from './text-table.ts';
import { words } from './words.ts';

const hour = 3600;
const day = 86_400;

/** What the text of a plan is told with. */
export interface DaysTelling {
  readonly waits: readonly ProofWait[];
  readonly say: CheckSentences;
  readonly locale: string;
}

/** A day of the calendar, or where none is known which day from the first. */
const dayOf = (end: number, on: string | undefined): string =>
  on ?? words.say('proof.days.nth', { n: Math.max(1, Math.ceil(end / day)) });

/** What is left of a floor in days: when each stage is over, what decides the end, what others own and how tight it is. */
export const daysText = (
  { days, checks, quarantine, floor }: FloorProof,
  telling: DaysTelling,
): readonly string[] => {
  const { waits, say, locale } = telling;
  const number = (value: number): string => formatNumber(value, locale, 3);
  const names = new Map(checks.map(({ check }) => [check.id, say.name(check)]));
  const whats = new Map(waits.map((wait) => [wait.wait, wait.what ?? wait.wait]));
  const nameOf = ({ sort, of }: Pick<PlanStep, 'sort' | 'of'>): string =>
    sort === 'wait' ? (whats.get(of) ?? of) : words.say(`proof.days.${sort}`, { name: names.get(of) ?? of });
  const steps = new Map(days.steps.filter(({ sort }) => sort === 'wait').map((step) => [step.of, step]));
  const own = waits.filter((wait) => wait.floor === floor);
  if (days.steps.length === 0 && own.length === 0) return [];
  const last = days.path.slice(-4);
  return [
    words.say('proof.days', {
      work: number(days.work / hour),
      crew: days.crew,
      hours: number(days.hours / hour),
      from: days.from ?? words.say('proof.days.nth', { n: 1 }),
      end: dayOf(days.end, days.day),
    }),
    ...(last.length === 0 ? [] : [words.say('proof.days.path', { path: last.map(nameOf).join(' → ') })]),
    textTable(
      days.stages.map(({ stage, end, day: on }) => [
        words.say(`proof.stage.${stage}`),
        words.say('proof.days.over', { day: dayOf(end, on) }),
      ]),
    ),
    ...(own.length === 0
      ? []
      : [
          words.say('proof.waits'),
          textTable(
            own.map((wait) => {
              const step = steps.get(wait.wait);
              return [
                whats.get(wait.wait) ?? wait.wait,
                wait.owner === undefined ? '' : say.thing(wait.owner),
                words.say(`proof.wait.${wait.state}`),
                wait.due ?? '',
                days.moving.includes(wait.wait)
                  ? words.say('proof.wait.moves')
                  : step === undefined
                    ? ''
                    : words.say('proof.wait.slack', { days: number(Math.floor(step.slack / day)) }),
                days.untimed.includes(wait.wait) ? words.say('proof.wait.untimed') : '',
                days.overdue.includes(wait.wait) ? words.say('proof.wait.overdue') : '',
              ];
            }),
          ),
        ]),
    ...(quarantine === undefined
      ? []
      : [words.say('proof.quarantine', { made: quarantine.made, aside: quarantine.setAside })]),
  ];
};
