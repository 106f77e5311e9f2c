import { type ReactElement, useId } from 'react';
import { usePage, usePagePart } from '../state/page-context.ts';
import { useFound } from './found-basis.tsx';
import { bases, hasTemporary } from './found-state.ts';

/** On what every row of the page stands: what was promised, what was found, or the supplies of the visit. */
export const FoundSwitch = (): ReactElement => {
  const { say } = usePage().words;
  const { basis, choose, readings, load } = useFound();
  const temporary = usePagePart(({ book }) => hasTemporary(book));
  const name = useId();
  const why = {
    promised: undefined,
    found:
      readings.length > 0
        ? undefined
        : say(
            load === 'ready'
              ? 'basis.found.none'
              : load === 'loading'
                ? 'basis.loading'
                : 'basis.unreachable',
          ),
    temporary: temporary ? undefined : say('basis.temporary.none'),
  };
  return (
    <fieldset className={basis === 'promised' ? 'basis' : 'basis other'} data-basis={basis}>
      <legend>{say('basis.title')}</legend>
      {bases.map((each) => (
        <label key={each} className="choice" title={why[each]}>
          <input
            type="radio"
            name={name}
            value={each}
            checked={basis === each}
            disabled={why[each] !== undefined}
            onChange={() => choose(each)}
          />
          <span>{say(`basis.${each}`)}</span>
        </label>
      ))}
      <span className="small said-basis" role="status">
        {basis === 'promised' && load === 'unreachable'
          ? say('basis.unreachable')
          : say(`basis.${basis}.said`, { n: readings.length })}
      </span>
      <a href="#found" className="small">
        {say('basis.jump')}
      </a>
    </fieldset>
  );
};
