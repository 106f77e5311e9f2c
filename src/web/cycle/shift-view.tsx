import type { ReactElement } from 'react';
import { timeByOwner } from '../../floor/shift/index.ts';
import { boundsOf, type Owner } from '../../line/shift/index.ts';
import { efficiencyByOwner } from '../../sheets/rate/efficiency-by-owner.ts';
import { meanDraw } from '../../sheets/rate/mean-draw.ts';
import { GoLink } from '../shell/go-link.tsx';
import { sheetAddress } from '../shell/route.ts';
import { ScrollRegion } from '../shell/scroll-region.tsx';
import { usePageState, useWords } from '../state/page-context.ts';
import type { Words } from '../words/words.ts';
import { LostBar } from './lost-bar.tsx';
import { type KeyedRow, keyedRows, smallShare, toldKeys } from './lost-rows.ts';
import { minutesText } from './minutes-text.ts';
import { OwnerPatterns } from './owner-patterns.tsx';
import type { ShiftAnswer } from './shift-answer.ts';
import { ShiftStrip } from './shift-strip.tsx';
import { FacingHeads, FacingRow } from './side-grid.tsx';
import { useNames } from './use-names.ts';
import { Wanted } from './wanted.tsx';
import { type SideShifts, useShifts } from './with-shifts.tsx';

const owners: readonly Owner[] = ['machine', 'supply', 'people', 'material'];

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
  const volume = (makeUp - supply.makeUp) * duration;
  return (
    <p className="problem" data-dry={Math.round(at)}>
      {say('cycle.ranDry', {
        share: words.percent(share),
        at: minutesText(words, at),
        bottles: words.number(Math.round(bottles)),
        volume: words.quantity(volume, 'volume', { units, book }).text,
      })}{' '}
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

/** What a row is called, whoever reads it. */
const rowName = (words: Words, nameOf: (tag: string) => string, row: KeyedRow): string => {
  const { say } = words;
  // a cause is the same whether it was felt as a stop or as a wait
  if (row.cause !== undefined) return nameOf(row.cause);
  if (row.state === 'caps') return say('cycle.lost.sorter');
  return say(`cycle.lost.${row.state}`, { what: nameOf(row.station) });
};

/** "the fill": what was waited for at a station. */
const stepText = (words: Words, { step }: KeyedRow): string =>
  step === undefined ? '' : words.say(words.has(`step.${step}`) ? `step.${step}` : `cycle.at.${step}`);

/** The minutes of a row; those that were lost lead to their working. */
const LostLink = ({
  row,
  of: { duration, setRate },
}: {
  readonly row: KeyedRow;
  readonly of: { readonly duration: number; readonly setRate: number | undefined };
}): ReactElement => {
  const words = useWords();
  const minutes = <b>{minutesText(words, row.seconds)}</b>;
  if (row.state === 'running' || setRate === undefined) return minutes;
  return (
    <GoLink
      to={sheetAddress('rate/time-lost', {
        duration: `${duration} s`,
        lost: `${row.seconds} s`,
        setRate: `${setRate * hour} /h`,
      })}
    >
      {minutes}
    </GoLink>
  );
};

const Minutes = (): ReactElement | null => {
  const words = useWords();
  const { say } = words;
  const nameOf = useNames();
  const { sides } = useShifts();
  const told = sides.flatMap(({ floor, answer }) =>
    answer?.figures === undefined || answer.ground.line === undefined
      ? []
      : [
          {
            tag: floor.floor,
            name: floor.name,
            rows: keyedRows(answer.figures.minutes, answer.ground.line.duration),
            duration: answer.ground.line.duration,
            setRate: answer.ground.agreedRate ?? answer.ground.runningRate,
          },
        ],
  );
  if (told.length === 0) return null;
  const all = told.flatMap(({ rows }) => rows);
  const named = [...new Map(all.toReversed().map((row) => [row.key, row])).values()].toReversed();
  const keys = new Set(toldKeys(told));
  const small = named.filter(({ key }) => !keys.has(key));
  const longest = Math.max(
    ...told.flatMap(({ rows }) => rows.filter(({ state }) => state !== 'running').map((row) => row.seconds)),
    1,
  );
  const of = (tag: string) => told.find((one) => one.tag === tag);
  return (
    <section className="cycle-part">
      <h3>{say('cycle.where')}</h3>
      <OwnerPatterns />
      <ul className="rows shift-whole">
        <FacingRow
          row="whole"
          name={say('cycle.whole')}
          said={say('cycle.whole')}
          of={({ floor }, side) => {
            const one = of(floor.floor);
            return one !== undefined && <ShiftStrip rows={one.rows} duration={one.duration} side={side} />;
          }}
        />
      </ul>
      <ul className="key owner-key">
        <li>
          <svg aria-hidden="true" className="runs">
            <rect width="30" height="16" />
          </svg>
          {say('cycle.lost.running')}
        </li>
        {owners.map((owner) => (
          <li key={owner}>
            <svg aria-hidden="true">
              <rect width="30" height="16" style={{ fill: `url(#owner-${owner})` }} />
            </svg>
            {say(`cycle.owner.${owner}`)}
          </li>
        ))}
      </ul>
      <ul className="rows">
        {named
          .filter(({ key }) => keys.has(key))
          .map((name) => (
            <FacingRow
              key={name.key}
              row={name.key}
              name={rowName(words, nameOf, name)}
              said={rowName(words, nameOf, name)}
              of={({ floor }, at) => {
                const one = of(floor.floor);
                const row = one?.rows.find(({ key }) => key === name.key);
                if (one === undefined || row === undefined)
                  return <span className="value quiet">{say('cycle.lost.none')}</span>;
                const value = (
                  <span className="value">
                    <LostLink row={row} of={one} />
                    <span className="small quiet">
                      {row.state === 'running'
                        ? words.percent(row.seconds / one.duration)
                        : say('cycle.lost.of', {
                            share: words.percent(row.seconds / one.duration),
                            owner: say(`cycle.owner.${row.owner}`),
                          })}
                    </span>
                    {row.state !== 'running' && row.cause === undefined && (
                      <span className="small quiet">{stepText(words, row)}</span>
                    )}
                  </span>
                );
                const bar =
                  row.state === 'running' ? (
                    <span className="shift-strip" />
                  ) : (
                    <LostBar row={row} longest={longest} side={at} />
                  );
                return at === 'left' ? (
                  <>
                    {value}
                    {bar}
                  </>
                ) : (
                  <>
                    {bar}
                    {value}
                  </>
                );
              }}
            />
          ))}
        {small.length > 0 && (
          <FacingRow
            row="rest"
            name={say('cycle.lost.rest', { share: words.percent(smallShare) })}
            said={say('cycle.lost.rest', { share: words.percent(smallShare) })}
            of={({ floor }) => (
              <span className="value">
                <b>
                  {minutesText(
                    words,
                    of(floor.floor)
                      ?.rows.filter(({ key }) => !keys.has(key))
                      .reduce((sum, { seconds }) => sum + seconds, 0) ?? 0,
                  )}
                </b>
              </span>
            )}
          />
        )}
      </ul>
      <details>
        <summary>{say('cycle.table')}</summary>
        <ScrollRegion label={say('cycle.table')}>
          <table className="cycle-table">
            <thead>
              <tr>
                <th scope="col">{say('cycle.table.what')}</th>
                {told.map(({ tag, name }) => (
                  <th scope="col" key={tag}>
                    {name}
                  </th>
                ))}
              </tr>
            </thead>
            <tbody>
              {named.map((name) => (
                <tr key={name.key}>
                  <th scope="row">
                    {rowName(words, nameOf, name)}{' '}
                    {name.state !== 'running' && (
                      <span className="quiet">{say(`cycle.owner.${name.owner}`)}</span>
                    )}
                  </th>
                  {told.map(({ tag, rows }) => (
                    <td key={tag}>
                      {minutesText(words, rows.find(({ key }) => key === name.key)?.seconds ?? 0)}
                    </td>
                  ))}
                </tr>
              ))}
              <tr>
                <th scope="row">{say('cycle.table.sum')}</th>
                {told.map(({ tag, rows }) => (
                  <td key={tag}>
                    {minutesText(
                      words,
                      rows.reduce((sum, { seconds }) => sum + seconds, 0),
                    )}
                  </td>
                ))}
              </tr>
            </tbody>
          </table>
        </ScrollRegion>
      </details>
    </section>
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
      <Minutes />
      <Efficiencies />
    </div>
  );
};
