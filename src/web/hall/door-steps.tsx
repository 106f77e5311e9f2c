import type { ReactElement } from 'react';
import { useWords } from '../state/page-context.ts';

/** What is done on the device, and what its browser will say of a certificate that nobody else vouches for. */
export const DoorSteps = ({
  url,
  fingerprint,
}: {
  readonly url: string;
  readonly fingerprint: string | undefined;
}): ReactElement => {
  const { say } = useWords();
  return (
    <section className="hall-steps" aria-labelledby="hall-steps">
      <h3 id="hall-steps">{say('hall.steps')}</h3>
      <ol>
        <li>{say('hall.step.network')}</li>
        <li>{say('hall.step.read', { url })}</li>
        {fingerprint !== undefined && (
          <li>
            {say('hall.step.doubt')} {say('hall.step.compare')}
            <dl>
              <dt>{say('hall.fingerprint')}</dt>
              <dd data-fingerprint={fingerprint}>
                {/* in lines of eight pairs, as one compares them */}
                {fingerprint.match(/(?:..:?){1,8}/g)?.map((line) => (
                  <span key={line}>{line} </span>
                ))}
              </dd>
            </dl>
            <p className="quiet">{say('hall.step.compare.where')}</p>
          </li>
        )}
        <li>{say('hall.step.name')}</li>
      </ol>
      <p className="quiet">{say('hall.step.lost')}</p>
    </section>
  );
};
