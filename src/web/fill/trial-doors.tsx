import type { ReactElement } from 'react';
import { ScrollRegion } from '../shell/scroll-region.tsx';
import { useWords } from '../state/page-context.ts';
import { useBottleUnits } from './bottle-units.ts';
import type { FillAnswer } from './fill-answer.ts';
import { ResidualStrip } from './residual-strip.tsx';
import { useAnswer } from './with-answer.tsx';

/** So many rows of a door are read; nobody reads on. */
const most = 60;

const Residuals = ({ answer }: { readonly answer: FillAnswer }): ReactElement => {
  const { say, number } = useWords();
  const { trials } = useAnswer();
  const { volume: unit, volumeIn } = useBottleUnits();
  const sorted = answer.residuals
    .toSorted((a, b) => Math.abs(b.standard) - Math.abs(a.standard))
    .slice(0, most);
  return (
    <details>
      <summary>{say('trials.residuals', { n: answer.residuals.length })}</summary>
      <p className="small quiet">{say('trials.residuals.about')}</p>
      <ResidualStrip residuals={answer.residuals} />
      <ScrollRegion label={say('trials.residuals.table')}>
        <table className="fill-table">
          <thead>
            <tr>
              <th scope="col">{say('weigh.lane')}</th>
              <th scope="col">{say('weigh.column.preset')}</th>
              <th scope="col">{say('trials.residuals.of')}</th>
              <th scope="col">{say('trials.residuals.read', { unit })}</th>
              <th scope="col">{say('trials.residuals.fitted')}</th>
              <th scope="col">{say('trials.residuals.standard')}</th>
            </tr>
          </thead>
          <tbody>
            {sorted.map(({ trial, of, read, fitted, standard, outlying }) => {
              const shown = (value: number): number => (of === 'volume' ? volumeIn(value) : value);
              return (
                <tr key={`${trial} ${of}`}>
                  <th scope="row">{trials[trial]?.lane}</th>
                  <td>{number(trials[trial]?.preset ?? 0, 6)}</td>
                  <td>{say(`trials.residuals.${of}`)}</td>
                  <td>{number(shown(read), 5)}</td>
                  <td>{number(shown(fitted), 5)}</td>
                  <td>
                    {number(standard, 2)}
                    {outlying && <b> {say('trials.residuals.outlying')}</b>}
                  </td>
                </tr>
              );
            })}
          </tbody>
        </table>
      </ScrollRegion>
    </details>
  );
};

/** What had to be assumed of the bottles, and what of them was left out. */
const Assumed = ({ answer }: { readonly answer: FillAnswer }): ReactElement | null => {
  const words = useWords();
  const { say } = words;
  const { trials } = useAnswer();
  const counts = new Map<string, number>();
  for (const { code } of answer.notes) counts.set(code, (counts.get(code) ?? 0) + 1);
  for (const { why } of answer.apart) counts.set(why, (counts.get(why) ?? 0) + 1);
  const slips = answer.slips.length;
  if (counts.size + answer.refused.length + slips === 0) return null;
  return (
    <details>
      <summary>
        {say('trials.assumed', { n: counts.size + answer.refused.length + (slips > 0 ? 1 : 0) })}
      </summary>
      <ul className="notes">
        {slips > 0 && (
          <li>
            {say('trials.slips', { n: slips })}{' '}
            {answer.slips
              .slice(0, most)
              .map(
                ({ trial, slips: [first] }) => `${trials[trial]?.lane ?? ''}: ${say(`slip.${first?.code}`)}`,
              )
              .join(' ')}
          </li>
        )}
        {[...counts].map(([code, n]) => (
          <li key={code}>{say(`trialNote.${code}`, { n })}</li>
        ))}
        {answer.refused.map(({ trial, problems }) => (
          <li key={trial}>
            {trials[trial]?.lane}: {problems.map(words.problem).join(' ')}
          </li>
        ))}
      </ul>
    </details>
  );
};

export const TrialDoors = ({ answer }: { readonly answer: FillAnswer }): ReactElement => (
  <div className="fill-doors">
    {answer.residuals.length > 0 && <Residuals answer={answer} />}
    <Assumed answer={answer} />
  </div>
);
