import { type ReactElement, useState } from 'react';
import { type ProofPlan, proofPlan, runShown } from '../../floor/shift/index.ts';
import { makeTracer } from '../../floor/tracer.ts';
import { GoLink } from '../shell/go-link.tsx';
import { bookPageAddress, sheetAddress } from '../shell/route.ts';
import { usePagePart, useWords } from '../state/page-context.ts';
import { minutesText } from './minutes-text.ts';
import { NumberField } from './number-field.tsx';
import { FacingHeads, FacingRow } from './side-grid.tsx';
import { type SideShifts, useShifts } from './with-shifts.tsx';

const minute = 60;
const hour = 3600;

/** A share that was typed in per cent; undefined where it leaves nothing to doubt or to show. */
const shareOf = (percent: number | undefined): number | undefined =>
  percent !== undefined && percent >= 50 && percent < 100 ? percent / 100 : undefined;

interface Agreed {
  /** Bottles a second. */
  readonly rate?: number;
  readonly efficiency?: number;
}

/** The plan of one floor with the confidence that was typed; undefined while its shifts are not there. */
const planOf = ({ answer }: SideShifts, confidence: number): ProofPlan | undefined =>
  answer?.figures === undefined
    ? undefined
    : proofPlan(makeTracer(), { ...answer.ground, confidence }, answer.figures);

/** Run lengths by the stops allowed, with the chance that each floor's line passes. */
const Plan = ({
  agreed,
  confidence,
}: {
  readonly agreed: Agreed;
  readonly confidence: number;
}): ReactElement => {
  const words = useWords();
  const { say, number, percent } = words;
  const id = usePagePart((state) => state.id);
  const { sides } = useShifts();
  const { efficiency } = agreed;
  if (efficiency === undefined || efficiency >= 1) {
    return (
      <p>
        {say('cycle.proof.noAgreed')}{' '}
        <GoLink to={bookPageAddress(id, '/agreement')}>{say('cycle.proof.write')}</GoLink>
      </p>
    );
  }
  const plans = new Map(sides.map((side) => [side, planOf(side, confidence)]));
  const runs = [...plans.values()].find((plan) => plan !== undefined)?.runs;
  if (runs === undefined) return <p>{say('cycle.proof.noStops')}</p>;
  return (
    <section className="cycle-part">
      <h3>{say('cycle.proof.plan')}</h3>
      <FacingHeads
        middle={say('cycle.proof.allowed')}
        of={(side) => {
          const plan = plans.get(side);
          return (
            <p className="small">
              {plan === undefined
                ? say('cycle.unknown')
                : say('cycle.proof.own', {
                    between: minutesText(words, plan.between),
                    efficiency: percent(efficiency),
                    clear: minutesText(words, plan.clear),
                    wanted: minutesText(words, plan.agreedBetween),
                  })}
            </p>
          );
        }}
      />
      <ul className="rows">
        {runs.map(({ allowed }, i) => {
          const name = say('cycle.proof.run', { n: allowed });
          return (
            <FacingRow
              key={allowed}
              row={`allowed ${allowed}`}
              name={name}
              said={name}
              of={(side) => {
                const plan = plans.get(side);
                const run = plan?.runs[i];
                if (plan === undefined || run === undefined)
                  return <span className="value quiet">{say('cycle.unknown')}</span>;
                return (
                  <span className="value">
                    <GoLink
                      to={sheetAddress('rate/run-to-show-mean-time', {
                        agreed: `${plan.agreedBetween} s`,
                        allowed: String(allowed),
                        confidence: String(confidence),
                        expected: `${plan.between} s`,
                      })}
                    >
                      {say('cycle.proof.passes', {
                        hours: number(run.running / hour, 3),
                        share: percent(run.passing),
                      })}
                    </GoLink>
                  </span>
                );
              }}
            />
          );
        })}
      </ul>
      <p className="small quiet">{say('cycle.proof.clock')}</p>
    </section>
  );
};

const runFields = ['minutes', 'stood', 'good', 'stops'] as const;
type RunField = (typeof runFields)[number];

/** What a run that took place shows: typed in, answered at once. */
const Reached = ({
  agreed,
  confidence,
}: {
  readonly agreed: Agreed;
  readonly confidence: number;
}): ReactElement => {
  const words = useWords();
  const { say, number, percent } = words;
  const [texts, setTexts] = useState<Readonly<Record<RunField, string>>>({
    minutes: '',
    stood: '0',
    good: '',
    stops: '0',
  });
  const values = Object.fromEntries(
    runFields.map((field) => [field, words.readNumber(texts[field])]),
  ) as Readonly<Record<RunField, number | undefined>>;
  const { minutes, stood, good, stops } = values;
  const wrong = (field: RunField): string | undefined => {
    const value = values[field];
    if (texts[field].trim() === '') return undefined;
    if (value === undefined || value < 0) return say('cycle.proof.wrong.number');
    if ((field === 'stops' || field === 'good') && !Number.isInteger(value))
      return say('cycle.proof.wrong.whole');
    if (field === 'minutes' && value === 0) return say('cycle.proof.wrong.number');
    if (field === 'stood' && minutes !== undefined && value >= minutes) return say('cycle.proof.wrong.stood');
    return undefined;
  };
  const known = runFields.every((field) => values[field] !== undefined && wrong(field) === undefined);
  const reached =
    known && minutes !== undefined && stood !== undefined && good !== undefined && stops !== undefined
      ? runShown(makeTracer(), { seconds: minutes * minute, stood: stood * minute, good, stops }, confidence)
      : undefined;
  const asked = agreed.rate === undefined ? undefined : agreed.rate * (agreed.efficiency ?? 1) * hour;
  return (
    <section className="cycle-part">
      <h3>{say('cycle.proof.after')}</h3>
      <div className="run-fields">
        {runFields.map((field) => (
          <NumberField
            key={field}
            name={field}
            label={say(`cycle.proof.field.${field}`)}
            text={texts[field]}
            problem={wrong(field)}
            type={(text) => setTexts({ ...texts, [field]: text })}
          />
        ))}
      </div>
      <div role="status" className="reached">
        {reached === undefined ? (
          <p className="quiet">{say('cycle.proof.after.about')}</p>
        ) : (
          <ul>
            <li data-reached="rate">
              {say('cycle.proof.reached.rate', { n: number(reached.rate.value * hour) })}
              {asked !== undefined &&
                ` ${say(
                  reached.rate.value * hour >= asked
                    ? 'cycle.proof.reached.meets'
                    : 'cycle.proof.reached.under',
                  { n: number(asked) },
                )}`}
            </li>
            {reached.between !== undefined && (
              <li data-reached="between">
                <GoLink
                  to={sheetAddress('rate/mean-time-shown', {
                    running: `${((minutes ?? 0) - (stood ?? 0)) * minute} s`,
                    stops: String(stops),
                    endedBy: 'time',
                    confidence: String(confidence),
                  })}
                >
                  {say('cycle.proof.reached.between', {
                    between: minutesText(words, reached.between.value),
                    share: percent(confidence),
                  })}
                </GoLink>
              </li>
            )}
            {reached.availability !== undefined && (
              <li data-reached="availability">
                <GoLink
                  to={sheetAddress('rate/availability-from-stops', {
                    running: `${((minutes ?? 0) - (stood ?? 0)) * minute} s`,
                    stopped: `${(stood ?? 0) * minute} s`,
                    stops: String(stops),
                    confidence: String(confidence),
                  })}
                >
                  {say('cycle.proof.reached.availability', {
                    availability: percent(reached.availability.value),
                    share: percent(confidence),
                  })}
                </GoLink>
              </li>
            )}
          </ul>
        )}
      </div>
    </section>
  );
};

/** How long the proof run must be, and what a run that took place has shown. */
export const ProofView = (): ReactElement => {
  const words = useWords();
  const { say, number, percent } = words;
  const { sides, working } = useShifts();
  const ground = sides.map(({ answer }) => answer?.ground).find((one) => one !== undefined);
  // that of the agreement until another is typed
  const [typed, setTyped] = useState<string>();
  const text = typed ?? (ground === undefined ? '' : number(ground.confidence * 100));
  const confidence = shareOf(words.readNumber(text));
  const { agreedRate: rate, agreedEfficiency: efficiency } = ground ?? {};
  const agreed: Agreed = {
    ...(rate === undefined ? {} : { rate }),
    ...(efficiency === undefined ? {} : { efficiency }),
  };
  return (
    <div className="spine cycle-answer" data-working={working}>
      <p>
        {rate === undefined
          ? say('cycle.proof.agreed.none')
          : efficiency === undefined
            ? say('cycle.proof.agreed.rate', { n: number(rate * hour) })
            : say('cycle.proof.agreed', { n: number(rate * hour), efficiency: percent(efficiency) })}
      </p>
      <NumberField
        name="confidence"
        label={say('cycle.proof.confidence')}
        text={text}
        type={setTyped}
        problem={confidence === undefined && text !== '' ? say('cycle.proof.confidence.wrong') : undefined}
      />
      {confidence !== undefined && (
        <>
          <Plan agreed={agreed} confidence={confidence} />
          <Reached agreed={agreed} confidence={confidence} />
        </>
      )}
    </div>
  );
};
