import type { RecordDraft } from '../../commands/add-record.ts';
import type { AttachedMedia } from '../../state/kept-media.ts';
import type { Page } from '../../state/page.ts';

/** The records of files that were attached to something, to be written with the record that names them. */
export const mediaDrafts = (
  page: Pick<Page, 'newId' | 'now'>,
  attached: readonly AttachedMedia[],
  {
    floor,
    ...about
  }: { readonly of: readonly string[]; readonly by: string; readonly floor?: string | undefined },
): readonly RecordDraft[] =>
  attached.map(({ sha256, mediaType, bytes, moment }) => ({
    id: page.newId(),
    kind: 'media',
    version: 1,
    at: page.now(),
    body: {
      sha256,
      mediaType,
      bytes,
      ...about,
      // a book that has no floor yet names none
      ...(floor === undefined ? {} : { floor }),
      ...(moment === undefined ? {} : { moment }),
    },
  }));
