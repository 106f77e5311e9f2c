import type { ReactElement } from 'react';
import type { Finding } from '../../floor/assessment.ts';
import { QuantityField } from '../field/quantity-field.tsx';
import { usePageState, useWords } from '../state/page-context.ts';

/** The fewest that tell the story; the rest is small by comparison. */
const told = 4;

/** Which values make the interval of a finding as wide as it is, most first, each to be made surer in place. */
export const WidthCauses = ({ finding }: { readonly finding: Finding }): ReactElement | null => {
  const words = useWords();
  const { shown } = usePageState();
  const causes = finding.causes.filter(({ share }) => share >= 0.01).slice(0, told);
  if (causes.length === 0 || shown === undefined) return null;
  return (
    <>
      <h3>{words.say('working.causes')}</h3>
      <dl className="inputs">
        {causes.map(({ path, doubt, share }) => (
          <div key={path}>
            <dt>{words.placeName(shown, path)}</dt>
            <dd>
              <QuantityField path={path} label={words.placeName(shown, path)} />
            </dd>
            <dd className="under">
              {words.say(`working.cause.${doubt}`, { percent: words.percent(share) })}
            </dd>
          </div>
        ))}
      </dl>
    </>
  );
};
