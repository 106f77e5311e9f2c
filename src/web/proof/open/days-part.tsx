import { type ReactElement, useMemo } from 'react';
import { ScrollRegion } from '../../shell/scroll-region.tsx';
import { useWords } from '../../state/page-context.ts';
import { dayText, weekdayText } from '../day-text.ts';
import { useProof } from '../with-proof.tsx';
import { CheckLink } from './check-link.tsx';
import { DayBar } from './day-bar.tsx';
import { type DayRow, dayRows } from './day-rows.ts';

/** The chain that decides the end is told by so many links; nobody reads on. */
const mostLinks = 12;

/** What is left as days: what decides the end is solid, and what has room says how much. */
export const DaysPart = (): ReactElement | null => {
  const words = useWords();
  const { say } = words;
  const { floor, proof, says } = useProof();
  const { days } = floor;
  const rows = useMemo(() => dayRows(days, floor.checks), [days, floor.checks]);
  if (rows.length === 0) return null;
  const whole = Math.max(1, ...rows.map(({ last }) => last));
  const waitName = (tag: string): string => proof.waits.find(({ wait }) => wait === tag)?.what ?? tag;
  const checkName = (id: string): string => {
    const found = floor.checks.find(({ check }) => check.id === id);
    return found === undefined ? id : says.name(found.check);
  };
  const nameOf = ({ sort, of }: Pick<DayRow, 'sort' | 'of'>): string => {
    if (sort === 'stage') return say(`proof.stage.${of}`);
    return sort === 'wait' ? waitName(of) : say('open.days.result', { name: checkName(of) });
  };
  const when = (on: string | undefined, number: number): string =>
    on === undefined ? say('open.days.day', { n: number }) : weekdayText(words, on);
  return (
    <section className="open-part" data-part="days">
      <h3>{say('open.days')}</h3>
      <p className="open-told">
        {days.day === undefined
          ? say('open.days.end.undated', { n: whole })
          : say('open.days.end', { day: dayText(words, days.day), n: whole })}
      </p>
      <p className="quiet">
        {say('open.days.how', { crew: days.crew, hours: words.number(days.hours / 3600, 3) })}{' '}
        {say('open.days.solid')}
        {days.steps.some(({ usual }) => usual) && ` ${say('open.days.usual')}`}
      </p>
      <ScrollRegion label={say('open.days')}>
        <table className="days-table">
          <thead>
            <tr>
              <th scope="col" className="words">
                {say('open.days.what')}
              </th>
              <th scope="col" className="days-picture">
                <span className="said">{say('open.days.picture')}</span>
              </th>
              <th scope="col">{say('open.days.from')}</th>
              <th scope="col">{say('open.days.to')}</th>
              <th scope="col" className="words">
                {say('open.days.room')}
              </th>
            </tr>
          </thead>
          <tbody>
            {rows.map((row) => (
              <tr key={`${row.sort} ${row.of}`} data-bar={row.of} data-critical={row.critical}>
                <th scope="row" className="words">
                  {nameOf(row)}
                </th>
                <td className="days-picture">
                  <DayBar row={row} days={whole} />
                </td>
                <td>{when(row.from, row.first)}</td>
                <td>{when(row.to, row.last)}</td>
                <td className="words">
                  {row.spare > 0 ? say('open.days.spare', { n: row.spare }) : say('open.days.none')}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </ScrollRegion>
      {days.path.length > 0 && (
        <details>
          <summary>{say('open.days.path', { n: days.path.length })}</summary>
          <ol className="open-next">
            {days.path.slice(-mostLinks).map(({ sort, of }) => (
              <li key={`${sort} ${of}`}>
                {sort === 'wait' ? (
                  waitName(of)
                ) : (
                  <>
                    <CheckLink id={of} /> {sort === 'result' && say('open.days.comes')}
                  </>
                )}
              </li>
            ))}
          </ol>
        </details>
      )}
      {days.end > 0 && days.work > 0 && (
        <p className="small quiet">{say('open.days.work', { n: words.number(days.work / 3600, 2) })}</p>
      )}
    </section>
  );
};
