import type { ReactElement } from 'react';
import { forgetLost, putMineOnTop, takeTheirs } from '../commands/settle-conflict.ts';
import { usePage, usePageState } from '../state/page-context.ts';
import { TrialNotice } from './trial-notice.tsx';

/** What needs a decision stands across the top until it is made: a trial, or a revision saved elsewhere. */
export const Notices = (): ReactElement | null => {
  const page = usePage();
  const { saving, trial, waiting, revision, lost } = usePageState();
  const { say } = page.words;
  if (saving.kind !== 'conflict' && trial === undefined && lost === undefined) return null;
  return (
    <>
      {saving.kind === 'conflict' && (
        <div className="notice" role="alert">
          <p>
            <b>{say('conflict.title', { newest: saving.newest, mine: revision })}</b>{' '}
            {say('conflict.nothingLost')}
          </p>
          <button type="button" onClick={() => void putMineOnTop(page)}>
            {say('conflict.mine', { n: waiting.length })}
          </button>
          <button type="button" onClick={() => void takeTheirs(page)}>
            {say('conflict.theirs')}
          </button>
        </div>
      )}
      {lost !== undefined && (
        <div className="notice" role="alert">
          <p>
            <b>{say('conflict.lost', { n: lost.length })}</b> {lost.join('; ')}
          </p>
          <button type="button" onClick={() => forgetLost(page)}>
            {say('conflict.lost.read')}
          </button>
        </div>
      )}
      {trial !== undefined && <TrialNotice key={trial.label} trial={trial} />}
    </>
  );
};
