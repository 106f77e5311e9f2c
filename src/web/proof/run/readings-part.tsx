import { type ReactElement, useId } from 'react';
import { GoLink } from '../../shell/go-link.tsx';
import { usePagePart, useWords } from '../../state/page-context.ts';
import { workingAddress } from '../../working/working-address.ts';
import { useCheckSays } from '../check-says.ts';
import { LimitDoor } from '../limit-door.tsx';
import { useProof } from '../with-proof.tsx';
import { LimitBar } from './limit-bar.tsx';
import { readingFigures } from './reading-figures.ts';
import { TapTimer } from './tap-timer.tsx';
import { TypedCell } from './typed-cell.tsx';
import { UnitChoice } from './unit-choice.tsx';
import type { Run } from './use-run.ts';

/** s; a tap is no better */
const tapDigits = 2;

/** What the readings say together, by the sheet behind it; of few kinds only their ends. */
const Together = ({ run }: { readonly run: Run }): ReactElement | null => {
  const words = useWords();
  const { say } = words;
  const units = usePagePart((state) => state.units);
  const { book } = useProof();
  const { kind } = run;
  if (kind === undefined) return null;
  const { values, spread } = readingFigures(run.made.body.readings ?? [], kind);
  const text = (value: number): string =>
    words.quantity(value, kind, { units, book, unit: run.unitOf(kind), digits: 5 }).text;
  return (
    <p className="together" data-readings={values.length}>
      {say('proving.run.count', { n: values.length, wanted: run.one.check.readings })}{' '}
      {spread !== undefined ? (
        <GoLink to={workingAddress(words, spread.working, spread.fields)}>
          {say('proving.run.mean', {
            mean: text(spread.mean),
            low: text(spread.meanLow),
            high: text(spread.meanHigh),
            spread: words.quantity(spread.spread, kind, { units, book, digits: 2 }).text,
          })}
        </GoLink>
      ) : (
        values.length > 1 &&
        say('proving.run.ends', { low: text(Math.min(...values)), high: text(Math.max(...values)) })
      )}
    </p>
  );
};

/** The readings of a check: typed or tapped, each against the limit. */
export const ReadingsPart = ({ run }: { readonly run: Run }): ReactElement | null => {
  const words = useWords();
  const { say } = words;
  const says = useCheckSays();
  const id = useId();
  const { kind, draft, verdict, made } = run;
  const { check } = run.one;
  if (kind === undefined) return null;
  const several = check.readings > 1;
  const { values } = readingFigures(made.body.readings ?? [], kind);
  const lap = (seconds: number): void => run.addReading(`${seconds.toFixed(tapDigits)} s`);
  const has = words.has(`proving.run.tap.${check.sort}`);
  return (
    <section className="proof-part run-readings" aria-labelledby="run-readings-title">
      <h3 id="run-readings-title">
        {say(several ? 'proving.run.readings.several' : 'proving.run.readings', { n: check.readings })}
      </h3>
      {check.limits.map((limit, i) => (
        <div key={limit.figure.id + limit.sense} className="run-limit">
          <LimitDoor limit={limit} />
          <LimitBar held={verdict?.limits[i] ?? { limit }} values={values} />
        </div>
      ))}
      {check.ownLimit !== undefined && <p className="small">{check.ownLimit}</p>}
      {kind === 'time' && check.instrument !== 'stopTimeMeter' && (
        <TapTimer
          what={several ? say(has ? `proving.run.tap.${check.sort}` : 'proving.run.tap.other') : undefined}
          clock={() => performance.now()}
          lap={lap}
        />
      )}
      <TypedCell
        id={id}
        label={say('proving.run.reading', { n: draft.readings.length + 1 })}
        name="reading"
        text={draft.reading}
        active={run.active === 'reading'}
        problem={made.wrong.reading ?? run.problems.reading}
        change={run.typeReading}
        enter={run.takeReading}
        focus={() => run.focus('reading')}
      >
        <UnitChoice
          kind={kind}
          unit={run.unitOf(kind)}
          of={says.name(check)}
          choose={(unit) => run.chooseUnit(kind, unit)}
        />
        {several && (
          <button
            type="button"
            className="take-reading"
            data-act="take-reading"
            disabled={draft.reading.trim() === '' || made.wrong.reading !== undefined}
            onClick={run.takeReading}
          >
            {say('proving.run.take')}
          </button>
        )}
      </TypedCell>
      {draft.readings.length > 0 && (
        <ol className="run-list">
          {draft.readings.map((reading, i) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: a reading is told from an equal one by its place alone
            <li key={i}>
              <span>{reading}</span>
              <button
                type="button"
                className="link"
                aria-label={say('proving.run.drop.one', { reading, n: i + 1 })}
                onClick={() => run.dropReading(i)}
              >
                {say('proving.run.drop')}
              </button>
            </li>
          ))}
        </ol>
      )}
      <Together run={run} />
    </section>
  );
};
