import { useEffect, useMemo, useState, useSyncExternalStore } from 'react';
import { checkMedia, momentOf, plainType, typesOf } from '../../media/index.ts';
import { toHex } from '../../record/hex.ts';
import { sha256 } from '../../record/sha256.ts';
import { routes } from '../../server/api.ts';
import { mediaName } from './media-queue.ts';
import type { Page } from './page.ts';

/** A file that is kept here and on its way to the server: what its record names. */
export interface AttachedMedia {
  readonly sha256: string;
  readonly mediaType: string;
  readonly bytes: number;
  /** When it was taken, as the file itself says. */
  readonly moment?: string;
}

export type Attached = AttachedMedia | { readonly refused: string };

/** The browser's own digest is faster, and absent where the page came without encryption. */
const digestOf = async ({ subtle }: Page, bytes: Uint8Array<ArrayBuffer>): Promise<string> =>
  toHex(subtle === undefined ? sha256(bytes) : new Uint8Array(await subtle.digest('SHA-256', bytes)));

/**
 * Takes a picture, film or sound into the open book: it is in this browser when the promise resolves, and goes to the
 * server behind it, also after a reload. Whoever calls this writes the `media` record then.
 */
export const attachMedia = async (page: Page, file: Blob & { readonly name?: string }): Promise<Attached> => {
  const bytes = new Uint8Array(await file.arrayBuffer());
  // a camera app that names no type is believed in what its file is
  const said = file.type === '' ? (typesOf(bytes)[0] ?? '') : plainType(file.type);
  const problems = checkMedia(bytes, { mediaType: said, bytes: bytes.length });
  if (problems.length > 0) return { refused: problems.map(page.words.problem).join(' ') };
  const digest = await digestOf(page, bytes);
  const moment = momentOf(bytes);
  await page.media.add(page.state.get().id, digest, new Blob([bytes], { type: said }));
  return {
    sha256: digest,
    mediaType: said,
    bytes: bytes.length,
    ...(moment === undefined ? {} : { moment }),
  };
};

/** Where the server has a file of a book. */
export const mediaAddress = (book: string, digest: string): string =>
  routes.readMedia.path.replace(':id', encodeURIComponent(book)).replace(':sha256', digest);

/** Digests of the files of the open book that the server has not acknowledged. */
export const useWaitingMedia = (page: Page): ReadonlySet<string> => {
  const { waiting } = page.media;
  const { names } = useSyncExternalStore(waiting.subscribe, waiting.get);
  const { id } = page.state.get();
  return useMemo(() => {
    const start = mediaName(id, '');
    const own = [...names].filter((name) => name.startsWith(start));
    return new Set(own.map((name) => name.slice(start.length)));
  }, [names, id]);
};

/** What this browser had of a file while it waited. */
interface OwnFile {
  readonly digest: string;
  /** Absent: it had gone to the server before it was looked for. */
  readonly address?: string;
}

/**
 * Where a picture, film or sound can be shown from: out of this browser where it waited here while it was looked at, else
 * from the server. One that is looked at does not change its address when the server has it, or it would be drawn anew
 * under the finger that places a code on it.
 */
export const useMediaAddress = (page: Page, digest: string): string | undefined => {
  const { id } = page.state.get();
  const isWaiting = useWaitingMedia(page).has(digest);
  const [waited, setWaited] = useState<string>();
  if (isWaiting && waited !== digest) setWaited(digest);
  const isOwn = waited === digest;
  const [own, setOwn] = useState<OwnFile>();
  useEffect(() => {
    if (!isOwn) return undefined;
    let made: string | undefined;
    let over = false;
    void page.media.blobOf(id, digest).then((blob) => {
      if (over) return;
      made = blob === undefined ? undefined : URL.createObjectURL(blob);
      setOwn(made === undefined ? { digest } : { digest, address: made });
    });
    return () => {
      over = true;
      if (made !== undefined) URL.revokeObjectURL(made);
      setOwn(undefined);
    };
  }, [page, id, digest, isOwn]);
  if (!isOwn) return mediaAddress(id, digest);
  if (own?.digest !== digest) return undefined;
  return own.address ?? (isWaiting ? undefined : mediaAddress(id, digest));
};
