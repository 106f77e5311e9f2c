import type { ReactElement } from 'react';
import { owners } from '../../line/shift/index.ts';
import { GoLink } from '../shell/go-link.tsx';
import { sheetAddress } from '../shell/route.ts';
import { ScrollRegion } from '../shell/scroll-region.tsx';
import { useWords } from '../state/page-context.ts';
import type { Words } from '../words/words.ts';
import { LostBar } from './lost-bar.tsx';
import { type KeyedRow, keyedRows, smallShare, toldKeys } from './lost-rows.ts';
import { minutesText } from './minutes-text.ts';
import { OwnerPatterns } from './owner-patterns.tsx';
import { ShiftStrip } from './shift-strip.tsx';
import { FacingRow } from './side-grid.tsx';
import { useNames } from './use-names.ts';
import { useShifts } from './with-shifts.tsx';

const hour = 3600;

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

/** Where the minutes of a shift go on each floor. */
export const LostMinutes = (): ReactElement | null => {
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
