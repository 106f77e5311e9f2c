import type { ReactElement } from 'react';
import { chooseUnits } from '../commands/choose-view.ts';
import { redoEdit, undoEdit } from '../commands/undo-edit.ts';
import { usePage, usePageState } from '../state/page-context.ts';
import type { UnitChoice } from '../state/page-state.ts';
import { GoLink } from './go-link.tsx';
import { compareAddress } from './route.ts';
import { SaveState } from './save-state.tsx';

const UnitSelect = (): ReactElement => {
  const page = usePage();
  const { units, shown } = usePageState();
  const { say } = page.words;
  const own = shown?.about?.units;
  const named = [own?.pressure ?? 'bar', own?.volume ?? 'L', own?.temperature ?? 'degC'].join(', ');
  return (
    <select
      aria-label={say('page.units')}
      value={units}
      onChange={(event) => chooseUnits(page, event.target.value as UnitChoice)}
    >
      <option value="book">{say('page.units.book', { units: named.replaceAll('deg', '°') })}</option>
      <option value="metric">{say('page.units.metric')}</option>
      <option value="us">{say('page.units.us')}</option>
    </select>
  );
};

/** Title, from whom to whom, revision, units, where it is kept, undo and the state of saving. */
export const PageHead = (): ReactElement => {
  const page = usePage();
  const { id, shown, revision, done, undone, load } = usePageState();
  const { say } = page.words;
  const about = shown?.about;
  const undo = done.at(-1);
  const redo = undone.at(-1);
  return (
    <header className="head">
      <h1>{about?.title ?? (load === 'ready' ? say('page.untitled') : say('page.name'))}</h1>
      {about?.builder !== undefined && about.customer !== undefined && (
        <span className="quiet">
          {say('page.fromTo', { builder: about.builder, customer: about.customer })}
        </span>
      )}
      {about?.demonstration !== undefined && (
        <span className="demonstration" title={about.demonstration}>
          {say('page.demonstration')}
        </span>
      )}
      {load === 'ready' && (
        <div className="end">
          <GoLink to={compareAddress(id)} className="revision">
            {say('page.revision', { number: revision })}
          </GoLink>
          <SaveState />
          <button
            type="button"
            disabled={undo === undefined}
            title={
              undo === undefined ? say('page.undo.none') : say('page.undo.what', { reason: undo.reason })
            }
            onClick={() => undoEdit(page)}
          >
            {say('page.undo')}
          </button>
          <button
            type="button"
            disabled={redo === undefined}
            title={
              redo === undefined ? say('page.redo.none') : say('page.redo.what', { reason: redo.reason })
            }
            onClick={() => redoEdit(page)}
          >
            {say('page.redo')}
          </button>
          <UnitSelect />
          <span className="quiet">{say(page.atLaptop ? 'page.kept' : 'page.kept.laptop')}</span>
        </div>
      )}
    </header>
  );
};
