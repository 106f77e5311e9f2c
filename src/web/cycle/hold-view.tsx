import type { ReactElement } from 'react';
import { boundsOf } from '../../line/shift/index.ts';
import { floorClass } from '../floors/floor-class.ts';
import { holdText, stepName } from '../line/hold-sentence.tsx';
import { GoLink } from '../shell/go-link.tsx';
import { sheetAddress } from '../shell/route.ts';
import { usePageState, useWords } from '../state/page-context.ts';
import { ChainDrawing } from './chain-drawing.tsx';
import type { ChangeWorth } from './shift-answer.ts';
import { FacingHeads, FacingRow } from './side-grid.tsx';
import { useNames } from './use-names.ts';
import { type SideShifts, useShifts } from './with-shifts.tsx';
import { WorthBar } from './worth-bar.tsx';

const changeKey = ({ change, cause }: ChangeWorth['change']): string =>
  cause === undefined ? change : `${change} ${cause}`;

const usualConfidence = 0.95;
const hour = 3600;

/** What sets the pace on one floor, and what would if it did not. */
const Chain = ({ side }: { readonly side: SideShifts }): ReactElement => {
  const words = useWords();
  const { say, number } = words;
  const { units } = usePageState();
  const { book } = useShifts();
  const { floor, answer } = side;
  // where trials found another fill than the book has, the chain is theirs, as the shifts are
  const hold = answer?.ground.fillFrom === undefined ? floor.hold : answer.ground.hold;
  const seconds = (n: number): string => say('cycle.seconds', { n: number(n, 3) });
  const { period, byBelts, next } = answer?.ground ?? {};
  const through = [...new Set(next?.steps.map(({ step }) => stepName(words, step, floor)) ?? [])].join(', ');
  const steps = hold?.chain.map((step) => `${step.seconds} s`).join('; ') ?? '';
  return (
    <section className={`cycle-part chain-of ${floorClass(book, floor.floor)}`} data-chain={floor.floor}>
      <h3>{floor.name}</h3>
      <p>{holdText(words, hold, units, book)}</p>
      {hold === undefined ? (
        <p className="quiet">{say('cycle.chain.none')}</p>
      ) : (
        <ChainDrawing floor={floor} hold={hold} />
      )}
      {period !== undefined && (
        <p className="small">
          <GoLink to={sheetAddress('rate/loop-period', { steps })}>
            {say('cycle.period', { seconds: seconds(period) })}
          </GoLink>
        </p>
      )}
      {byBelts !== undefined && <p>{say('cycle.belts', { seconds: seconds(byBelts) })}</p>}
      {next !== undefined && (
        <p>
          {say('cycle.next.loop', {
            through,
            less: seconds(next.shorter),
            seconds: seconds(next.period),
          })}
        </p>
      )}
    </section>
  );
};

/** What each change is worth, both floors facing each other; the chances are the same with the change and without. */
const Worth = (): ReactElement | null => {
  const words = useWords();
  const { say, number } = words;
  const nameOf = useNames();
  const { sides, working } = useShifts();
  const all = sides.flatMap(({ worth }) => worth);
  const changes = [...new Map(all.map(({ change }) => [changeKey(change), change])).values()];
  if (changes.length === 0) {
    return <p className="quiet">{say(working ? 'cycle.wait' : 'cycle.worth.none')}</p>;
  }
  const boundsAt = ({ answer, worth }: SideShifts, key: string) => {
    const one = worth.find(({ change }) => changeKey(change) === key)?.worth;
    return one === undefined
      ? undefined
      : boundsOf(one.good, one.shifts, answer?.ground.confidence ?? usualConfidence);
  };
  const longest = Math.max(
    1,
    ...sides.flatMap((side) =>
      changes.flatMap((change) => {
        const bounds = boundsAt(side, changeKey(change));
        return bounds === undefined ? [] : [Math.abs(bounds.low), Math.abs(bounds.high)];
      }),
    ),
  );
  const nameOfChange = ({ change, cause, by }: ChangeWorth['change']): string =>
    change === 'cause'
      ? say('cycle.change.cause', { cause: nameOf(cause ?? '') })
      : say(`cycle.change.${change}`, { n: number(Math.abs(by ?? 0)) });
  return (
    <section className="cycle-part">
      <h3>{say('cycle.worth')}</h3>
      <p className="small quiet">
        {say('cycle.worth.about', {
          share: words.percent(sides[0]?.answer?.ground.confidence ?? usualConfidence),
        })}
      </p>
      <FacingHeads middle={say('cycle.worth.unit')} of={() => null} />
      <ul className="rows">
        {changes.map((change) => {
          const key = changeKey(change);
          const name = nameOfChange(change);
          return (
            <FacingRow
              key={key}
              row={key}
              name={name}
              said={name}
              of={(side, at) => {
                const bounds = boundsAt(side, key);
                if (bounds === undefined)
                  return <span className="value quiet">{say(working ? 'cycle.wait' : 'cycle.unknown')}</span>;
                const value = (
                  <span className="value">
                    <b>{say('cycle.worth.bottles', { n: number(Math.round(bounds.mean) + 0) })}</b>
                    <span className="small quiet">
                      {say('cycle.from.to', {
                        low: number(Math.floor(bounds.low)),
                        high: number(Math.ceil(bounds.high)),
                      })}
                    </span>
                    {bounds.low <= 0 && bounds.high >= 0 && (
                      <span className="small">{say('cycle.worth.unsure')}</span>
                    )}
                  </span>
                );
                const bar = <WorthBar bounds={bounds} longest={longest} side={at} />;
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
          );
        })}
      </ul>
      <ul className="breaks">
        {sides.map((side) => {
          const { floor, answer } = side;
          const fill = answer?.ground.worth.find(({ step }) => step === 'fill');
          if (fill === undefined) return null;
          return (
            <li key={floor.floor} data-break={floor.floor}>
              {say('cycle.break', {
                floor: floor.name,
                n: number(Math.round((fill.gain * hour) / fill.over)),
                from: number(fill.seconds, 3),
                to: number(fill.until, 3),
              })}
            </li>
          );
        })}
      </ul>
      <p className="small">
        <GoLink to={sheetAddress('rate/paired-change')}>{say('cycle.worth.sheet')}</GoLink>
      </p>
    </section>
  );
};

/** What holds the line, and what one change is worth. */
export const HoldView = (): ReactElement => {
  const { sides, working } = useShifts();
  return (
    <div className="spine cycle-answer" data-working={working}>
      {sides.map((side) => (
        <Chain key={side.floor.floor} side={side} />
      ))}
      <Worth />
    </div>
  );
};
