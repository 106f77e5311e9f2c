import { expect, it } from 'vitest';
import { appendRecord, bodyProblems, startChain } from './append-record.ts';
import type { Envelope } from './envelope.ts';
import { heldRevisions } from './held-revisions.ts';
import { recordKinds } from './kinds.ts';

const ours = 'a'.repeat(64);
const theirs = 'b'.repeat(64);

const said = (writer: string, hour: number, holds: string, more: object = {}): Envelope => {
  const body = { number: 4, holds, over: holds === ours ? theirs : ours, why: 'it was measured', by: writer };
  const draft = { id: `${writer}-1`, revision: 4, kind: 'revision', version: 1, body, ...more };
  const at = new Date(Date.UTC(2027, 2, 8, hour)).toISOString();
  const added = appendRecord(startChain('flagon-line', writer), { ...draft, deviceTime: at });
  if (!added.ok) throw new Error(JSON.stringify(added.problems));
  return added.value.record;
};

it('which of two revisions holds is said of both, in the order in which it was said', () => {
  const records = [said('tablet', 11, theirs), said('laptop', 9, ours)];
  const held = heldRevisions(records);
  expect(held.get(ours)?.map(({ by, holds }) => [by, holds])).toEqual([
    ['laptop', ours],
    ['tablet', theirs],
  ]);
  expect(held.get(theirs)).toEqual(held.get(ours));
  expect(heldRevisions(records.toReversed())).toEqual(held);
});

it('a word that was taken back is said no more, and one without a reason is no record', () => {
  const corrected = said('tablet', 11, theirs, { supersedes: 'laptop-1' });
  expect(
    heldRevisions([said('laptop', 9, ours), corrected])
      .get(ours)
      ?.map(({ by }) => by),
  ).toEqual(['tablet']);
  const { body, ...rest } = said('laptop', 9, ours);
  const { why: _, ...silent } = body as Record<string, unknown>;
  expect(bodyProblems({ ...rest, body: silent }, recordKinds, '')).not.toEqual([]);
});
