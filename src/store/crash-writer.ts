/**
 * Program of the crash test: writes steps to a store for ever and says on its output which step was
 * acknowledged. Each step is one call: every fifth a revision of the book, else one to three records.
 * It goes on where the store ends, as a server does after its machine came back.
 * Modes: `no-checkpoint` lets the log grow; `media` puts a picture with some steps; `open` only opens the store and
 * closes it.
 */
import { createHash } from 'node:crypto';
import { writeSync } from 'node:fs';
import { appendRecord, type Chain, chainFrom, startChain } from '../record/append-record.ts';
import type { Envelope } from '../record/envelope.ts';
import { BOOK, hasPicture, lastStep, partsOf, pictureOf, storedSteps } from './crash-steps.ts';
import { openConnection } from './sqlite-open.ts';
import { openSqliteStore, sqliteStore } from './sqlite-store.ts';

const [, , path = '', mode = ''] = process.argv;
const AT = '2026-11-24T09:30:00Z';

if (mode === 'open') {
  const opened = await openSqliteStore(path);
  await opened.close();
  process.exit(0);
}

const connection = openConnection(path);
if (mode === 'no-checkpoint') connection.pragma('wal_autocheckpoint = 0');
const store = sqliteStore(connection);

const must = (done: { readonly ok: boolean }): void => {
  if (!done.ok) throw new Error(JSON.stringify(done));
};

must(await store.createBook({ book: BOOK, text: 'step 0', author: 'engineer', at: AT }));
let step = lastStep(await storedSteps(store));
let revision = 1;
let chain: Chain = startChain(BOOK, 'tablet');
const latest = await store.latestRevision(BOOK);
if (latest.ok) revision = latest.value.number;
const heads = await store.heads(BOOK);
if (heads.ok && heads.value[0]) chain = chainFrom(heads.value[0]);

writeSync(1, 'ready\n');
for (;;) {
  step += 1;
  if (partsOf(step) === 0) {
    must(
      await store.appendRevision({
        book: BOOK,
        text: `step ${step}`,
        author: 'engineer',
        at: AT,
        basedOn: revision,
      }),
    );
    revision += 1;
  } else {
    const records: Envelope[] = [];
    for (let part = 0; part < partsOf(step); part++) {
      const draft = { id: `s${step}-${part}`, revision, kind: 'note', version: 1, deviceTime: AT };
      // long enough that a record spreads over pages now and then, so that a commit is several writes
      const text = `step ${step} `.padEnd(20 + ((step * 977) % 3000), '.');
      const done = appendRecord(chain, { ...draft, body: { text, by: 'rigger' } });
      if (!done.ok) throw new Error(JSON.stringify(done.problems));
      records.push(done.value.record);
      chain = done.value.chain;
    }
    must(await store.appendRecords(BOOK, records));
  }
  if (mode === 'media' && hasPicture(step)) {
    const picture = pictureOf(step);
    const sha256 = createHash('sha256').update(picture).digest('hex');
    must(await store.putMedia(BOOK, { sha256, mediaType: 'image/jpeg' }, [picture]));
  }
  // only now, and past any buffer: what is printed was promised
  writeSync(1, `${step}\n`);
}
