import type { ReactElement } from 'react';
import { timeByOwner } from '../../floor/shift/index.ts';
import { boundsOf, owners } from '../../line/shift/index.ts';
import { efficiencyByOwner } from '../../sheets/rate/efficiency-by-owner.ts';
import { meanDraw } from '../../sheets/rate/mean-draw.ts';
import { tankForRun } from '../../sheets/rate/tank-for-run.ts';
import { GoLink } from '../shell/go-link.tsx';
import { sheetAddress } from '../shell/route.ts';
import { usePageState, useWords } from '../state/page-context.ts';
import { GroundLines } from './ground-lines.tsx';
import { LostMinutes } from './lost-minutes.tsx';
import { minutesText } from './minutes-text.ts';
import type { ShiftAnswer } from './shift-answer.ts';
import { FacingHeads, FacingRow } from './side-grid.tsx';
import { Wanted } from './wanted.tsx';
import { type SideShifts, useShifts } from './with-shifts.tsx';

const hour = 3600;

/** When the tank runs dry, and what would carry it. */
const RanDry = ({ answer: { ground, figures } }: { readonly answer: ShiftAnswer }): ReactElement | null => {
  const words = useWords();
  const { units } = usePageState();
  const { book } = useShifts();
  const { say } = words;
  const supply = ground.line?.fill?.supply;
  const { runningRate, duration } = ground;
  if (figures?.ranDry === undefined || supply === undefined || runningRate === undefined) return null;
  const { share, at, bottles } = figures.ranDry;
  const makeUp = meanDraw(runningRate, supply.perBottle);
  const volume = tankForRun(makeUp, supply.makeUp, duration);
  const flow = (value: number) => `${value} m3/s`;
  return (
    <p className="problem" data-dry={Math.round(at)}>
      {say('cycle.ranDry', {
        share: words.percent(share),
        at: minutesText(words, at),
        bottles: words.number(Math.round(bottles)),
      })}{' '}
      <GoLink
        to={sheetAddress('rate/tank-for-run', {
          draw: flow(makeUp),
          makeUp: flow(supply.makeUp),
          duration: `${duration} s`,
        })}
      >
        {say('cycle.ranDry.tank', { volume: words.quantity(volume, 'volume', { units, book }).text })}
      </GoLink>
      {'; '}
      <GoLink
        to={sheetAddress('rate/mean-draw', {
          rate: `${runningRate * hour} /h`,
          volume: `${supply.perBottle} m3`,
        })}
      >
        {say('cycle.ranDry.makeUp', {
          makeUp: words.quantity(makeUp, 'volumeFlow', { units, book }).text,
        })}
      </GoLink>
    </p>
  );
};

const Head = ({ side }: { readonly side: SideShifts }): ReactElement => {
  const words = useWords();
  const { say, number } = words;
  const { answer, failed } = side;
  if (failed) return <p className="problem">{say('cycle.failed')}</p>;
  if (answer === undefined) return <p className="quiet">{say('cycle.wait')}</p>;
  const { ground, figures, firstGoods } = answer;
  const { runningRate, confidence } = ground;
  const running =
    runningRate === undefined ? undefined : say('cycle.rate', { n: number(runningRate * hour) });
  if (figures === undefined) {
    return (
      <>
        <p className="shift-good">{running ?? say('cycle.unknown')}</p>
        {running !== undefined && <p className="small quiet">{say('cycle.rate.only')}</p>}
        <Wanted side={side} />
      </>
    );
  }
  const bounds = boundsOf(figures.good, figures.shifts, confidence);
  return (
    <>
      <p className="shift-good" data-good={Math.round(figures.good.mean)}>
        {number(Math.round(figures.good.mean))} <span className="unit">{say('cycle.bottles')}</span>
      </p>
      {bounds !== undefined && (
        <p className="small quiet" data-interval={bounds.high - bounds.low}>
          {say('cycle.mean', {
            low: number(Math.floor(bounds.low)),
            high: number(Math.ceil(bounds.high)),
            share: words.percent(confidence),
          })}
        </p>
      )}
      <p className="small quiet">
        {say('cycle.single', {
          low: number(figures.goodCounts[0]?.good ?? 0),
          high: number(figures.goodCounts.at(-1)?.good ?? 0),
        })}
      </p>
      <GroundLines ground={ground} />
      <RanDry answer={answer} />
      {firstGoods !== undefined && firstGoods.length > 1 && (
        <p className="small">
          <GoLink
            to={sheetAddress('rate/interval-of-runs', {
              values: firstGoods.join('; '),
              confidence: String(confidence),
            })}
          >
            {say('cycle.byHand', { n: firstGoods.length })}
          </GoLink>
        </p>
      )}
    </>
  );
};

/** As the plant sees it, and as the machine answers for it: two figures that never share a label. */
const Efficiencies = (): ReactElement | null => {
  const words = useWords();
  const { say, percent } = words;
  const { sides } = useShifts();
  const of = ({ answer }: SideShifts) => {
    const { figures, ground } = answer ?? {};
    if (figures === undefined || ground?.line === undefined || ground.runningRate === undefined)
      return undefined;
    const inputs = {
      duration: ground.line.duration,
      setRate: ground.agreedRate ?? ground.runningRate,
      good: figures.good.mean,
      ...timeByOwner(figures.minutes),
    };
    return { inputs, efficiency: efficiencyByOwner(inputs) };
  };
  if (sides.every((side) => of(side) === undefined)) return null;
  return (
    <section className="cycle-part">
      <h3>{say('cycle.efficiency')}</h3>
      <p className="small quiet">{say('cycle.efficiency.about')}</p>
      <ul className="rows">
        {(['overall', 'technical'] as const).map((which) => (
          <FacingRow
            key={which}
            row={which}
            name={say(`cycle.efficiency.${which}`)}
            said={say(`cycle.efficiency.${which}`)}
            of={(side) => {
              const one = of(side);
              if (one === undefined) return <span className="value quiet">{say('cycle.unknown')}</span>;
              const { inputs, efficiency } = one;
              return (
                <span className="value">
                  <GoLink
                    to={sheetAddress('rate/efficiency-by-owner', {
                      duration: `${inputs.duration} s`,
                      setRate: `${inputs.setRate * hour} /h`,
                      good: String(inputs.good),
                      ...Object.fromEntries(owners.map((owner) => [owner, `${inputs[owner]} s`])),
                    })}
                  >
                    <b>{percent(efficiency[which])}</b>
                  </GoLink>
                </span>
              );
            }}
          />
        ))}
      </ul>
    </section>
  );
};

/** How many good bottles in a shift, and where its minutes go. */
export const ShiftView = (): ReactElement => {
  const { say } = useWords();
  const { sides, working } = useShifts();
  const duration = sides.map(({ answer }) => answer?.ground.line?.duration).find((one) => one !== undefined);
  return (
    <div className="spine cycle-answer" data-working={working}>
      <FacingHeads
        middle={
          duration === undefined
            ? say('cycle.good')
            : say('cycle.good.of', { hours: Math.round((duration / hour) * 10) / 10 })
        }
        of={(side) => <Head side={side} />}
      />
      <LostMinutes />
      <Efficiencies />
    </div>
  );
};
