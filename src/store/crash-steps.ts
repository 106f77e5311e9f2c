import { verifyRecords } from '../record/verify-records.ts';
import type { Store } from './store.ts';

export const BOOK = 'crash';

/** How many records a step writes; none makes it a revision. */
export const partsOf = (step: number): number => (step % 5 === 0 ? 0 : (step % 3) + 1);

/** Whether a picture is put with a step: not with each, since it takes several syncs. */
export const hasPicture = (step: number): boolean => step % 3 === 0;

/** A picture for each step, no two alike: the first bytes of one, and what makes it some pages long. */
export const pictureOf = (step: number): Uint8Array => {
  const bytes = new Uint8Array(100 + ((step * 7919) % 60_000)).fill(step % 251);
  bytes.set([0xff, 0xd8, 0xff, 0xe0]);
  new DataView(bytes.buffer).setUint32(8, step);
  return bytes;
};

/** How much of each step a store holds, by step; throws where a record or revision is not whole. */
export const storedSteps = async (store: Store): Promise<ReadonlyMap<number, number>> => {
  const steps = new Map<number, number>();
  const [books] = await store.listBooks();
  // a log cut before the book's first commit leaves a store without it
  if (!books) return steps;
  const page = await store.readRecords(BOOK);
  const heads = await store.heads(BOOK);
  const revisions = await store.listRevisions(BOOK);
  if (!page.ok || !heads.ok || !revisions.ok) throw new Error('the book is listed but cannot be read');
  const broken = verifyRecords(page.value.records, { book: BOOK, heads: heads.value });
  if (broken.length > 0) throw new Error(JSON.stringify(broken));
  for (const { id } of page.value.records) {
    const step = Number(/^s(\d+)-/.exec(id)?.[1]);
    steps.set(step, (steps.get(step) ?? 0) + 1);
  }
  for (const { number } of revisions.value) {
    // reading holds the text against its digest
    const revision = await store.readRevision(BOOK, number);
    if (!revision.ok) throw new Error(JSON.stringify(revision.problems));
    steps.set(Number(/^step (\d+)$/.exec(revision.value.text)?.[1]), 0);
  }
  return steps;
};

/** The last step of a whole prefix: every step up to it is there, and every part of each. Throws at a hole. */
export const lastStep = (steps: ReadonlyMap<number, number>): number => {
  const last = Math.max(0, ...steps.keys());
  for (let step = 1; step <= last; step++) {
    const held = steps.get(step);
    if (held !== partsOf(step)) {
      throw new Error(`step ${step} of ${last} has ${held ?? 'nothing'} of ${partsOf(step)} parts`);
    }
  }
  return last;
};
