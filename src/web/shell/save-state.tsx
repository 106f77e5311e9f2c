import type { ReactElement } from 'react';
import { usePageState, useWords } from '../state/page-context.ts';

/** Whether what is shown is saved, in words; said aloud when it changes. */
export const SaveState = (): ReactElement => {
  const { saving, waiting, typing } = usePageState();
  const { say } = useWords();
  const text =
    saving.kind === 'waiting'
      ? say('save.waiting', { n: waiting.length })
      : saving.kind === 'conflict'
        ? say('save.conflict', { newest: saving.newest })
        : saving.kind === 'refused'
          ? say('save.refused', { message: saving.message })
          : typing !== undefined
            ? say('save.writing')
            : say(`save.${saving.kind}`);
  return (
    <span className="save" data-kind={saving.kind} role="status">
      {text}
    </span>
  );
};
