import type { ReactElement } from 'react';
import type { BoundShift } from '../../floor/shift/index.ts';
import { GoLink } from '../shell/go-link.tsx';
import { fillAddress, sheetAddress } from '../shell/route.ts';
import { usePagePart, useWords } from '../state/page-context.ts';
import { minutesText } from './minutes-text.ts';
import { useNames } from './use-names.ts';

const hour = 3600;

/** Of which fill a shift speaks: what trials say of it, where some were made. */
const FillFrom = ({ ground: { fillFrom, floor } }: { readonly ground: BoundShift }): ReactElement | null => {
  const { say, number } = useWords();
  const id = usePagePart((state) => state.id);
  if (fillFrom === undefined) return null;
  const { from, trials, set } = fillFrom;
  const seconds = (one: number): string => number(Math.round(one * 100) / 100);
  return (
    <p className="small" data-fill-from={from}>
      <GoLink to={fillAddress(id, from === floor ? 'trials' : 'floor')}>
        {say(from === floor ? 'cycle.fill.here' : 'cycle.fill.foretold', { n: trials, from })}
      </GoLink>{' '}
      {say('cycle.fill.set', {
        mean: seconds(set.seconds),
        low: seconds(set.low),
        high: seconds(set.high),
      })}
    </p>
  );
};

/** Of which stops it speaks: declared in the book, or met in runs that were recorded. */
const StopsFrom = ({
  ground: { stops, log, confidence },
}: {
  readonly ground: BoundShift;
}): ReactElement | null => {
  const words = useWords();
  const { say, number } = words;
  const nameOf = useNames();
  if (stops === undefined) return null;
  const hours = number(Math.round(((log?.seconds ?? 0) / hour) * 10) / 10);
  return (
    <>
      <p className="small quiet" data-stops={stops}>
        {say(`cycle.stops.${stops}`, { n: log?.runs ?? 0, hours })}
      </p>
      {log !== undefined && (
        <details className="small">
          <summary>{say('cycle.log', { n: log.causes.length })}</summary>
          <ul>
            {log.causes.map(({ cause, stops: n, running, between, low, high, clear, taken }) => (
              <li key={cause}>
                {nameOf(cause)}:{' '}
                <GoLink
                  to={sheetAddress('rate/mean-time-between-stops', {
                    running: `${running} s`,
                    stops: String(n),
                    confidence: String(confidence),
                  })}
                >
                  {say('cycle.log.cause', {
                    n,
                    between: minutesText(words, between),
                    low: minutesText(words, low),
                    high: minutesText(words, high),
                    clear: minutesText(words, clear),
                  })}
                </GoLink>
                {'; '}
                {say('cycle.log.taken', {
                  between: minutesText(words, taken.between),
                  clear: minutesText(words, taken.clear),
                })}
              </li>
            ))}
            {log.unseen.length > 0 && (
              <li className="quiet">
                {say('cycle.log.unseen', { causes: log.unseen.map(nameOf).join('; ') })}
              </li>
            )}
            {log.unknown.map(({ cause, stops: n, seconds }) => (
              <li key={cause} className="problem">
                {say('cycle.log.unknown', { cause, n, time: minutesText(words, seconds) })}
              </li>
            ))}
          </ul>
        </details>
      )}
    </>
  );
};

const HoldRules = ({ ground: { unfollowed, notInRate } }: { readonly ground: BoundShift }): ReactElement => {
  const { say } = useWords();
  const nameOf = useNames();
  const named = (rules: readonly string[]): { readonly rules: string } => ({
    rules: rules.map(nameOf).join('; '),
  });
  return (
    <>
      {unfollowed.length > 0 && <p className="small problem">{say('cycle.unfollowed', named(unfollowed))}</p>}
      {notInRate.length > 0 && <p className="small problem">{say('cycle.notInRate', named(notInRate))}</p>}
    </>
  );
};

/** What the shift of a floor rests on beside the book. */
export const GroundLines = ({ ground }: { readonly ground: BoundShift }): ReactElement => (
  <>
    <FillFrom ground={ground} />
    <StopsFrom ground={ground} />
    <HoldRules ground={ground} />
  </>
);
