import { lazy, type ReactElement, Suspense, useContext } from 'react';
import type { TrialAdvice } from '../../fill/index.ts';
import { GoContext, GoLink } from '../shell/go-link.tsx';
import { fillAddress, sheetAddress } from '../shell/route.ts';
import { ScrollRegion } from '../shell/scroll-region.tsx';
import { untilFetched } from '../shell/until-fetched.ts';
import { usePage, usePagePart, useWords } from '../state/page-context.ts';
import { BottleVolume } from './bottle-volume.tsx';
import type { FillAnswer } from './fill-answer.ts';
import { useFillPlace } from './fill-place.tsx';
import { Interval } from './interval.tsx';
import { NoAnswerLines } from './no-answer.tsx';
import { TrialDoors } from './trial-doors.tsx';
import { keepWeighing, keptWeighing } from './weigh-kept.ts';
import { useAnswer } from './with-answer.tsx';

const LaneCharts = lazy(() =>
  untilFetched(() => import('./lane-charts.tsx')).then((m) => ({ default: m.LaneCharts })),
);

/** The sheet of a straight line through a lane's bottles takes three and more. */
const fewestOnLine = 3;

/** The sheet by which one checks a lane by hand, with the lane's bottles in it. */
const lineAddress = ({ dots }: FillAnswer, lane: string, preset: number): string | undefined => {
  const own = dots.filter((dot) => dot.lane === lane && !dot.overflowed);
  if (own.length < fewestOnLine) return undefined;
  return sheetAddress('contents/lane-line', {
    counts: own.map((dot) => String(dot.preset)).join('; '),
    volumes: own.map((dot) => `${(dot.volume * 1e6).toFixed(2)} mL`).join('; '),
    preset: String(preset),
  });
};

const LaneValueTable = ({ answer }: { readonly answer: FillAnswer }): ReactElement => {
  const { say, number, percent } = useWords();
  const lanes = answer.lanes ?? [];
  return (
    <ScrollRegion label={say('trials.values')}>
      <table className="fill-table">
        <caption className="small quiet">
          {say('trials.values.confidence', { share: percent(answer.confidence) })}
        </caption>
        <thead>
          <tr>
            <th scope="col">{say('weigh.lane')}</th>
            <th scope="col">{say('trials.bottles')}</th>
            <th scope="col">{say('trials.pulses')}</th>
            <th scope="col">{say('trials.afterRun')}</th>
            <th scope="col">{say('trials.kv')}</th>
            <th scope="col">{say('trials.laneSpread')}</th>
          </tr>
        </thead>
        <tbody>
          {lanes.map(({ lane, trials, pulses, afterRun, kv, spread }) => {
            const last = answer.dots.findLast((dot) => dot.lane === lane)?.preset ?? 0;
            const address = lineAddress(answer, lane, last);
            return (
              <tr key={lane} data-lane={lane}>
                <th scope="row">
                  {address === undefined ? (
                    lane
                  ) : (
                    <GoLink to={address}>
                      {lane}
                      <span className="said"> {say('trials.line')}</span>
                    </GoLink>
                  )}
                </th>
                <td>{number(trials)}</td>
                <td>
                  <Interval of={pulses} kind="pulseDensity" unit="/L" />
                </td>
                <td>
                  <Interval of={afterRun} kind="time" unit="ms" />
                </td>
                <td>
                  <Interval of={kv} kind="flowCoefficient" />
                </td>
                <td>{spread !== undefined && <BottleVolume value={spread} digits={2} />}</td>
              </tr>
            );
          })}
        </tbody>
      </table>
    </ScrollRegion>
  );
};

const Doubts = ({ answer }: { readonly answer: FillAnswer }): ReactElement | null => {
  const { say } = useWords();
  const byCode = new Map<string, { lanes: Set<string>; n: number }>();
  for (const { code, lanes, trials } of answer.doubts) {
    const said = byCode.get(code) ?? { lanes: new Set<string>(), n: 0 };
    for (const lane of lanes) said.lanes.add(lane);
    said.n += trials.length;
    byCode.set(code, said);
  }
  if (byCode.size === 0) return null;
  return (
    <>
      <h3>{say('trials.doubts')}</h3>
      <ul className="notes">
        {[...byCode].map(([code, { lanes, n }]) => (
          <li key={code} data-doubt={code}>
            {say(`doubt.${code}`, { lanes: [...lanes].join(', '), n })}
          </li>
        ))}
      </ul>
    </>
  );
};

/** How many of the trials that could be made next are named. */
const mostNext = 3;

/** Lays a trial out at the scales: lane, preset and throttling stand there when the page comes. */
const useLayOut = (): ((trial: TrialAdvice) => void) => {
  const page = usePage();
  const go = useContext(GoContext);
  const id = usePagePart((state) => state.id);
  const { floor, format } = useFillPlace();
  return ({ lane, preset, throttled }) => {
    const of = { book: id, floor: floor.tag, format: format?.tag };
    const draft = keptWeighing(page, of, lane, 'kg');
    const texts = { ...draft.texts, preset: String(preset) };
    keepWeighing(page, of, { ...draft, lane, throttled, texts });
    go(fillAddress(id, 'weigh'));
  };
};

const NextTrials = ({ next }: { readonly next: readonly TrialAdvice[] }): ReactElement | null => {
  const { say, percent } = useWords();
  const layOut = useLayOut();
  const best = next.filter(({ narrower }) => narrower >= 0.005).slice(0, mostNext);
  if (next.length === 0) return null;
  return (
    <section className="next-trials">
      <h3>{say('trials.next')}</h3>
      {best.length === 0 && <p>{say('trials.next.none')}</p>}
      <ol>
        {best.map((trial) => (
          <li key={`${trial.lane} ${trial.preset} ${trial.throttled}`}>
            <b>
              {say('trials.next.one', {
                lane: trial.lane,
                preset: trial.preset,
                n: trial.bottles,
              })}
            </b>
            {trial.throttled && `, ${say('trials.next.throttled')}`}
            {trial.largeVessel && `, ${say('trials.next.vessel')}`}
            <span className="quiet">
              {' '}
              {say('trials.next.worth', { share: percent(trial.narrower) })}{' '}
              <BottleVolume value={trial.volumeNow} digits={2} /> {say('trials.next.to')}{' '}
              <BottleVolume value={trial.volumeThen} digits={2} />
            </span>{' '}
            <button type="button" className="link" data-act="lay-out" onClick={() => layOut(trial)}>
              {say('trials.next.weigh')}
              <span className="said"> {trial.lane}</span>
            </button>
          </li>
        ))}
      </ol>
    </section>
  );
};

/** What the trials say of each lane, what they can't tell apart, and which trial would tell most next. */
export const TrialsView = (): ReactElement => {
  const { say } = useWords();
  const { answer, working } = useAnswer();
  const { book, floor } = useFillPlace();
  return (
    <div className={working ? 'answer working' : 'answer'} data-working={working}>
      <NoAnswerLines codes={['noTrials', 'floorUnknown']} />
      {answer?.lanes !== undefined && (
        <>
          <LaneValueTable answer={answer} />
          {answer.ownSpread !== undefined && (
            <p className="small">
              {say('trials.spread')} <BottleVolume value={answer.ownSpread.value} digits={2} />
            </p>
          )}
          <Doubts answer={answer} />
          {answer.next !== undefined && <NextTrials next={answer.next} />}
          <Suspense fallback={<p className="quiet">{say('answer.working')}</p>}>
            <LaneCharts book={book} floor={floor.tag} answer={answer} />
          </Suspense>
          <TrialDoors answer={answer} />
        </>
      )}
    </div>
  );
};
