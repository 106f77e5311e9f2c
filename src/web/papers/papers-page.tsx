import { type ReactElement, useState } from 'react';
import { floorBoundFor } from '../../book/floor-bound-for.ts';
import { inTwoLanguages, ofOneFloor, type PaperKind, paperKinds } from '../../book/paper-kinds.ts';
import { paperLanguages } from '../../book/paper-languages.ts';
import { routes } from '../../server/api.ts';
import { languageNames, languages } from '../../text/index.ts';
import { GoLink } from '../shell/go-link.tsx';
import { bookPageAddress } from '../shell/route.ts';
import { usePagePart, usePageState, useWords } from '../state/page-context.ts';

/** What a person chose for all papers; empty is what the book says. */
interface Choice {
  readonly floor: string;
  readonly format: string;
  readonly page: string;
  readonly units: string;
  readonly language: string;
  readonly beside: string;
}

const addressOf = (id: string, paper: PaperKind, { floor, beside, ...rest }: Choice): string => {
  const chosen = {
    ...rest,
    ...(ofOneFloor.has(paper) ? { floor } : {}),
    ...(inTwoLanguages.has(paper) ? { beside } : {}),
  };
  const query = new URLSearchParams(Object.entries(chosen).filter(([, value]) => value !== '')).toString();
  const path = routes.readPaper.path.replace(':id', encodeURIComponent(id)).replace(':paper', paper);
  return query === '' ? path : `${path}?${query}`;
};

/** The papers of a book: each opens as it will be printed, of the book as it was saved last. */
export const PapersPage = (): ReactElement => {
  const { say } = useWords();
  const { id, book, revision } = usePageState();
  const waiting = usePagePart((state) => state.waiting.length > 0 || state.typing !== undefined);
  const floors = book?.floors ?? [];
  const formats = book?.line?.formats ?? [];
  const boundFor = book === undefined ? '' : floorBoundFor(book, undefined);
  const bound = floors.find(({ tag }) => tag === boundFor);
  const [choice, setChoice] = useState<Choice>({
    floor: '',
    format: '',
    page: '',
    units: '',
    language: '',
    beside: '',
  });
  const spoken = book === undefined ? languages : paperLanguages(book);
  const select = (
    name: keyof Choice,
    options: readonly { readonly value: string; readonly text: string }[],
  ): ReactElement => (
    <label>
      {say(`print.${name}`)}{' '}
      <select
        data-choice={name}
        value={choice[name]}
        onChange={(event) => setChoice({ ...choice, [name]: event.target.value })}
      >
        {options.map(({ value, text }) => (
          <option key={value} value={value}>
            {text}
          </option>
        ))}
      </select>
    </label>
  );
  if (floors.length === 0) {
    return (
      <p className="message" id="figures" tabIndex={-1}>
        {say('print.noFloor')}{' '}
        <GoLink to={bookPageAddress(id, '/floors')}>{say('print.noFloor.write')}</GoLink>
      </p>
    );
  }
  return (
    <div className="papers-page" id="figures" tabIndex={-1}>
      <h2>{say('print.title')}</h2>
      <p className="quiet">{say('print.about', { revision })}</p>
      {waiting && <p role="status">{say('print.unsaved')}</p>}
      <div className="paper-choice">
        {select('floor', [
          { value: '', text: bound?.name ?? bound?.tag ?? '' },
          ...floors
            .filter((one) => one !== bound)
            .map(({ tag, name }) => ({ value: tag, text: name ?? tag })),
        ])}
        {select('format', [
          { value: '', text: formats[0]?.name ?? formats[0]?.tag ?? '' },
          ...formats.slice(1).map(({ tag, name }) => ({ value: tag, text: name ?? tag })),
        ])}
        {select('page', [
          { value: '', text: say('print.page.book') },
          { value: 'a4', text: 'A4' },
          { value: 'letter', text: 'US Letter' },
        ])}
        {select('units', [
          { value: '', text: say('print.units.book') },
          { value: 'metric', text: say('page.units.metric') },
          { value: 'us', text: say('page.units.us') },
        ])}
        {select('language', [
          { value: '', text: languageNames[spoken[0]] },
          ...spoken.slice(1).map((one) => ({ value: one, text: languageNames[one] })),
        ])}
        {select('beside', [
          { value: '', text: say('print.beside.none') },
          ...spoken
            .filter((one) => one !== (choice.language === '' ? spoken[0] : choice.language))
            .map((one) => ({ value: one, text: languageNames[one] })),
        ])}
      </div>
      <ol className="papers-list">
        {paperKinds.map((paper) => (
          <li key={paper} data-paper={paper}>
            <div>
              <b>{say(`print.paper.${paper}`)}</b>
              <span className="quiet">{say(`print.for.${paper}`)}</span>
            </div>
            <a className="link" href={addressOf(id, paper, choice)} target="_blank" rel="noreferrer">
              {say('print.open')}
              <span className="said"> {say(`print.paper.${paper}`)}</span>
            </a>
            <a
              className="link"
              href={addressOf(id, paper, choice)}
              download={`${id.replaceAll(':', '-')}-${paper}.pdf`}
            >
              {say('print.save')}
              <span className="said"> {say(`print.paper.${paper}`)}</span>
            </a>
          </li>
        ))}
      </ol>
      <p className="small quiet">{say('print.caution')}</p>
    </div>
  );
};
