import type { ReactElement } from 'react';
import type { FloorAssessment, Working } from '../../floor/assessment.ts';
import { formatNumber } from '../../quantity/index.ts';
import type { Sheet, Source } from '../../sheets/frame.ts';
import { GoLink } from '../shell/go-link.tsx';
import { useWords } from '../state/page-context.ts';
import type { Words } from '../words/words.ts';
import { Formula } from './formula.tsx';
import { SheetValue } from './sheet-value.tsx';
import { workingAddress } from './working-address.ts';
import { WorkingInputs } from './working-inputs.tsx';

/** Title, edition, place and how it is known, on one line. */
export const sourceText = (words: Words, source: Source): string => {
  const rest = [source.edition, source.place].filter((part) => part !== undefined);
  return words.say('working.source', {
    title: source.title,
    rest: rest.map((part) => `, ${part}`).join(''),
    mark: words.say(`working.mark.${source.mark}`),
  });
};

export interface WorkingBodyProps {
  readonly floor: FloorAssessment;
  readonly working: Working;
  readonly sheet: Sheet;
}

/** One working: formula, what goes in, what comes out, what must be known with it, where it is from. */
export const WorkingBody = ({ floor, working, sheet }: WorkingBodyProps): ReactElement => {
  const words = useWords();
  return (
    <div>
      <Formula lines={sheet.formula} />
      <h3>{words.say('working.inputs')}</h3>
      <WorkingInputs floor={floor} working={working} sheet={sheet} />
      <h3>{words.say('working.outputs')}</h3>
      <dl className="inputs">
        {Object.entries(sheet.outputs).map(([name, field]) => {
          const value = working.outputs[name];
          return (
            value !== undefined && (
              <div className={field.type === 'list' ? 'result list' : 'result'} key={name}>
                <dt>{words.say(`sheet.${sheet.id}.outputs.${name}`)}</dt>
                <dd>
                  <SheetValue sheet={sheet.id} name={name} field={field} value={value} />
                </dd>
              </div>
            )
          );
        })}
      </dl>
      {working.residual !== undefined && (
        <p className="small quiet">
          {words.say('working.residual', { residual: formatNumber(working.residual, words.numbers, 2) })}
        </p>
      )}
      {working.notes.length > 0 ? (
        <ul className="notes" aria-label={words.say('working.notes')}>
          {working.notes.map((note) => (
            <li key={note.code + JSON.stringify(note.parts)}>{words.note(note)}</li>
          ))}
        </ul>
      ) : (
        <p className="small quiet">{words.say('working.limits')}</p>
      )}
      <ul className="sources">
        {sheet.sources.map((source) => (
          <li key={source.title + (source.place ?? '')}>{sourceText(words, source)}</li>
        ))}
        <li>
          <GoLink to={workingAddress(words, working, sheet.inputs)}>{words.say('working.sheet')}</GoLink>
        </li>
      </ul>
    </div>
  );
};
