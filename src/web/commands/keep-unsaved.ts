import type { Page } from '../state/page.ts';

/** Writes what is not saved yet into the browser's own storage. */
export const keepUnsaved = (page: Page): void => {
  const { id, revision, waiting, done, undone, typing } = page.state.get();
  if (id === '') return;
  page.keep.write(id, {
    revision,
    waiting,
    done: done.slice(-100),
    undone: undone.slice(-100),
    ...(typing === undefined ? {} : { typing: { path: typing.path, text: typing.text } }),
  });
};
