import { mediaAddress } from '../../state/kept-media.ts';
import type { Page } from '../../state/page.ts';

const bytesOf = async (page: Page, book: string, digest: string): Promise<Uint8Array | undefined> => {
  try {
    // what waits for the server is in this browser
    const own = await page.media.blobOf(book, digest);
    if (own !== undefined) return new Uint8Array(await own.arrayBuffer());
    const reply = await fetch(mediaAddress(book, digest));
    return reply.ok ? new Uint8Array(await reply.arrayBuffer()) : undefined;
  } catch {
    // the file names it as not at hand
    return undefined;
  }
};

/** The bytes of pictures, films and sounds, one after the other: a film each would fill a tablet. */
export const gatheredMedia = async (
  page: Page,
  book: string,
  digests: readonly string[],
): Promise<ReadonlyMap<string, Uint8Array>> => {
  const found = new Map<string, Uint8Array>();
  for (const digest of digests) {
    const bytes = await bytesOf(page, book, digest);
    if (bytes !== undefined) found.set(digest, bytes);
  }
  return found;
};
