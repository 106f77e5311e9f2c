import { type ReactElement, useMemo } from 'react';
import type { HallOfLaptop } from '../../server/hall-api.ts';
import { usePagePart, useWords } from '../state/page-context.ts';
import { codePicture } from './code-picture.ts';
import { timeText } from './time-text.ts';

const Picture = ({ text }: { readonly text: string }): ReactElement => {
  const { say } = useWords();
  const { size, path } = useMemo(() => codePicture(text), [text]);
  return (
    <svg className="hall-picture" viewBox={`0 0 ${size} ${size}`} role="img" aria-label={say('hall.picture')}>
      <rect width={size} height={size} />
      <path d={path} />
    </svg>
  );
};

/** The code as text and as a picture that brings the address with it; or why there is none. */
export const CodePart = ({
  hall,
  url,
  renew,
}: {
  readonly hall: HallOfLaptop;
  readonly url: string;
  readonly renew: () => void;
}): ReactElement => {
  const { say, locale } = useWords();
  const book = usePagePart((state) => state.id);
  const { code, over, wrong } = hall;
  const query = new URLSearchParams({
    code: code?.text ?? '',
    ...(book === '' ? {} : { book }),
  }).toString();
  return (
    <div className="hall-code">
      {code !== undefined && <Picture text={`${url}join?${query}`} />}
      <div role="status">
        {code !== undefined && (
          <p>
            {say('hall.code')} <b data-code={code.text}>{code.text}</b>{' '}
            <span className="quiet">{say('hall.code.until', { time: timeText(code.until, locale) })}</span>
          </p>
        )}
        {code === undefined && over !== undefined && <p>{say(`hall.over.${over}`)}</p>}
        {wrong > 0 && <p className="hall-caution">{say('hall.wrong', { n: wrong })}</p>}
      </div>
      <button type="button" onClick={renew}>
        {say('hall.code.renew')}
      </button>
    </div>
  );
};
