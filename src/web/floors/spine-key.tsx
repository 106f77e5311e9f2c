import { type ReactElement, type ReactNode, useId } from 'react';
import { useWords } from '../state/page-context.ts';

const Sample = ({ children }: { readonly children: ReactNode }): ReactElement => (
  <svg viewBox="0 0 30 18" aria-hidden="true" className="bar">
    {children}
  </svg>
);

/** What the shapes of a bar mean. */
export const SpineKey = (): ReactElement => {
  const { say } = useWords();
  const id = useId();
  return (
    <ul className="key">
      <li>
        <Sample>
          <path className="tick" d="M15 1V17" />
        </Sample>
        {say('spine.key.demand')}
      </li>
      <li>
        <Sample>
          <path className="tick" d="M10 2H15V16H10" />
        </Sample>
        {say('spine.key.most')}
      </li>
      <li>
        <Sample>
          <rect className="have" x="1" y="3" width="28" height="12" />
        </Sample>
        {say('spine.key.have')}
      </li>
      <li>
        <Sample>
          <pattern id={id} width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
            <line className="hatch" x1="0" y1="0" x2="0" y2="6" />
          </pattern>
          <rect className="frame-line" x="1" y="3" width="28" height="12" style={{ fill: `url(#${id})` }} />
        </Sample>
        {say('spine.key.missing')}
      </li>
      <li>
        <Sample>
          <rect className="unknown" x="1" y="3" width="28" height="12" />
        </Sample>
        {say('spine.key.unknown')}
      </li>
      <li>
        <Sample>
          <path className="whisker" d="M5 9H25M5 4v10M25 4v10" />
        </Sample>
        {say('spine.key.interval')}
      </li>
      <li>{say('spine.key.ifSaid')}</li>
    </ul>
  );
};
