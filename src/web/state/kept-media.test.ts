import { describe, expect, it } from 'vitest';
import { writtenByOthers } from '../../media/testing/written-by-others.ts';
import { toHex } from '../../record/hex.ts';
import { sha256 } from '../../record/sha256.ts';
import type { Client } from '../../server/client.ts';
import { type KeptBlobs, keepBlobs } from './kept-blobs.ts';
import { attachMedia, mediaAddress } from './kept-media.ts';
import { makeMediaQueue } from './media-queue.ts';
import type { Page } from './page.ts';

type Way = 'fine' | 'gone' | 'refused';
const { jpeg, mp4 } = writtenByOthers;

/** A page before a server that takes files, is gone, or does not want them. */
const pageBefore = (blobs: KeptBlobs, how: () => Way) => {
  const taken: string[] = [];
  const later: (() => void)[] = [];
  const client = (async (_name: string, { params }: { params: { sha256: string } }) => {
    if (how() === 'gone') return { ok: false, reached: false, cause: 'no' };
    if (how() === 'refused') {
      return { ok: false, reached: true, status: 422, failure: { message: 'not wanted', problems: [] } };
    }
    taken.push(params.sha256);
    return { ok: true, status: 201, value: params };
  }) as unknown as Client;
  const media = makeMediaQueue({ blobs, client, later: (run) => void later.push(run) });
  const page = {
    media,
    state: { get: () => ({ id: 'b' }) },
    words: { problem: ({ code }: { code: string }) => code },
  } as unknown as Page;
  const waiting = (): number => media.waiting.get().names.size;
  return { page, media, taken, later, waiting };
};
const settled = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 20));
const photo = (): Blob => new Blob([jpeg], { type: 'image/jpeg' });

describe('a picture that is attached', () => {
  it('is known by its digest and its own moment, and goes to the server', async () => {
    const { page, taken, waiting } = pageBefore(keepBlobs(undefined), () => 'fine');
    const digest = toHex(sha256(jpeg));
    expect(await attachMedia(page, photo())).toEqual({
      sha256: digest,
      mediaType: 'image/jpeg',
      bytes: jpeg.length,
      moment: '2027-04-19T09:10:11+01:00',
    });
    await settled();
    expect([taken, waiting()]).toEqual([[digest], 0]);
    expect(mediaAddress('b', digest)).toBe(`/api/books/b/media/${digest}`);
  });

  it('waits while the server is gone, over a reload, and is sent when it is back', async () => {
    const blobs = keepBlobs(undefined);
    let way: Way = 'gone';
    const before = pageBefore(blobs, () => way);
    await attachMedia(before.page, photo());
    await attachMedia(before.page, new Blob([mp4], { type: 'video/mp4' }));
    await settled();
    expect([before.taken, before.waiting(), before.later.length]).toEqual([[], 2, 1]);
    // another page on the same storage
    const after = pageBefore(blobs, () => way);
    after.media.send();
    await settled();
    expect(after.waiting()).toBe(2);
    way = 'fine';
    after.later[0]!();
    await settled();
    expect([after.taken.length, after.waiting(), await blobs.names()]).toEqual([2, 0, []]);
  });

  it('that the server does not want stays here, with the reason', async () => {
    const { page, media, waiting } = pageBefore(keepBlobs(undefined), () => 'refused');
    await attachMedia(page, photo());
    await settled();
    expect([waiting(), media.waiting.get().held]).toEqual([1, 'not wanted']);
  });

  it('that is none is refused before anything is kept', async () => {
    const { page, waiting } = pageBefore(keepBlobs(undefined), () => 'fine');
    expect(await attachMedia(page, new Blob(['<html>'], { type: 'image/jpeg' }))).toEqual({
      refused: 'MEDIA_UNKNOWN',
    });
    expect(waiting()).toBe(0);
  });
});
