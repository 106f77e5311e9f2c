import { describe, expect, it } from 'vitest';
import type { Envelope } from '../record/envelope.ts';
import { headsOf } from '../record/heads.ts';
import { type ReplyBody, type ReplyStatement, signReply } from '../record/reply.ts';
import { repliesOf } from './replies.ts';
import { checkOf, demo, floorOf, proofOf, recorded, type Said, triedOn } from './testing/demo-proof.ts';

const note: Said = { kind: 'note', version: 1, body: { text: 'begun', by: 'the engineer' } };

const signed = (said: readonly Said[], rest: Partial<ReplyStatement> = {}): ReplyBody => {
  const records = recorded(said);
  const body = signReply(
    {
      by: 'the witness',
      role: 'customer',
      book: records[0]!.book,
      revision: 1,
      file: 'ab'.repeat(32),
      heads: headsOf(records),
      at: '2027-04-21T07:30:00Z',
      accepted: 'as it is',
      comments: [],
      open: [],
      ...rest,
    },
    '22'.repeat(32),
  );
  if (!body.ok) throw new Error(JSON.stringify(body.problems));
  return body.value;
};
const said = (body: ReplyBody): Said => ({ kind: 'reply', version: 1, body });

describe('the replies of witnesses', () => {
  const first = signed([note]);

  it('stand in the order of the witness’s own clock, one that was taken in twice once', () => {
    const later = signed([note], { at: '2027-04-22T07:30:00Z', accepted: 'not' });
    const records = recorded([note, said(later), said(first), said(first)]);
    expect(repliesOf(records).map(({ reply }) => reply.accepted)).toEqual(['as it is', 'not']);
    expect(proofOf(demo, records).replies).toEqual(repliesOf(records));
  });

  it('say how many records came after what was shown; other replies are none of them', () => {
    const since = (all: readonly Said[]) => repliesOf(recorded(all)).map((one) => one.since);
    expect(since([note, said(first)])).toEqual([0]);
    expect(since([note, said(first), note, said(signed([note], { at: '2027-04-22T07:30:00Z' }))])).toEqual([
      1, 1,
    ]);
    const [begun, ...rest] = recorded([note, said(first)]);
    const elsewhere = { ...begun!, writer: 'another tablet', id: 'x' } as Envelope;
    expect(repliesOf([begun!, elsewhere, ...rest]).map((one) => one.since)).toEqual([1]);
  });

  it('that were changed are none', () => {
    expect(repliesOf(recorded([note, said({ ...first, accepted: 'with open points' })]))).toEqual([]);
  });
});

describe('a reply to a gate', () => {
  const gateOf = (all: readonly Said[]) =>
    floorOf(proofOf(demo, recorded(all)), 'LARKMOOR').gates.find(({ gate }) => gate === 'ready to energise')!;
  const open = gateOf([note]).lacks.map(({ id }) => id);
  const asked = {
    passes: 'ready to energise',
    floor: 'LARKMOOR',
    accepted: 'with open points',
    open,
  } as const;

  it('passes it where every point that is open is named, as a signature does', () => {
    expect(open.length).toBeGreaterThan(2);
    expect(gateOf([note, said(signed([note], asked))])).toMatchObject({ passed: true, unnamed: [] });
    const unnamed = gateOf([note, said(signed([note], { ...asked, open: open.slice(1) }))]);
    expect(unnamed).toMatchObject({ passed: false, unnamed: [open[0]] });
  });

  it('passes nothing where it accepts nothing, or was changed', () => {
    const not = signed([note], { ...asked, accepted: 'not' });
    expect(gateOf([note, said(not)])).toMatchObject({ passed: false, signatures: [] });
    const forged = { ...signed([note], { ...asked, open: [] }), open };
    expect(gateOf([note, said(forged)]).passed).toBe(false);
  });

  it('does not speak of a check that failed after what the witness saw', () => {
    const id = open[0]!;
    const failed = triedOn(demo, 'LARKMOOR', checkOf(floorOf(proofOf(demo), 'LARKMOOR'), id).check, {
      seen: false,
    });
    const gate = gateOf([note, said(signed([note], asked)), failed]);
    expect(gate).toMatchObject({ passed: false, unnamed: [id] });
  });
});
