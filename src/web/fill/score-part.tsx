import type { ReactElement } from 'react';
import { ShownQuantity } from '../field/shown-quantity.tsx';
import { usePagePart, useWords } from '../state/page-context.ts';
import { useBottleUnits } from './bottle-units.ts';
import type { OtherFloorAnswer } from './fill-answer.ts';

/** What was foretold against what was then measured there. */
export const ScorePart = ({
  told,
  name,
}: {
  readonly told: OtherFloorAnswer;
  readonly name: string;
}): ReactElement => {
  const { say, number, percent } = useWords();
  const id = usePagePart((state) => state.id);
  const { volume } = useBottleUnits();
  const { score } = told;
  return (
    <section className="fill-part score" data-book={id}>
      <h3>{say('score.title')}</h3>
      {score === undefined ? (
        <p>{say('score.none', { floor: name })}</p>
      ) : score.of === 0 ? (
        <p>{say('score.apart', { n: score.apart.length })}</p>
      ) : (
        <>
          <p data-score={`${score.inside}/${score.of}`}>
            <b>{say('score.inside', { inside: score.inside, of: score.of })}</b>{' '}
            {say('score.should', { share: percent(score.confidence) })}{' '}
            {score.apart.length > 0 && say('score.apart', { n: score.apart.length })}
          </p>
          <table className="fill-table">
            <thead>
              <tr>
                <th scope="col">{say('weigh.lane')}</th>
                <th scope="col">{say('trials.residuals.of')}</th>
                <th scope="col">{say('score.foretold')}</th>
                <th scope="col">{say('score.measured')}</th>
                <th scope="col">{say('trials.bottles')}</th>
                <th scope="col">{say('trials.residuals.standard')}</th>
              </tr>
            </thead>
            <tbody>
              {score.scores.map(({ lane, of, foretold, measured, bottles, standard, inside }) => {
                const kind = of === 'volume' ? 'volume' : 'time';
                const unit = of === 'volume' ? volume : 's';
                return (
                  <tr key={`${lane} ${of}`} data-inside={inside}>
                    <th scope="row">{lane}</th>
                    <td>{say(`trials.residuals.${of}`)}</td>
                    <td>
                      <ShownQuantity value={foretold} kind={kind} unit={unit} digits={5} />
                    </td>
                    <td>
                      <ShownQuantity value={measured} kind={kind} unit={unit} digits={5} />
                    </td>
                    <td>{number(bottles)}</td>
                    <td>
                      {number(standard, 2)} {!inside && <b>{say('score.outside')}</b>}
                    </td>
                  </tr>
                );
              })}
            </tbody>
          </table>
        </>
      )}
    </section>
  );
};
