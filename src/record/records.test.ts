import { createHash } from 'node:crypto';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  appendRecord,
  bodyProblems,
  type Chain,
  chainFrom,
  type Draft,
  startChain,
} from './append-record.ts';
import { currentRecords } from './current-records.ts';
import { type Envelope, type Head, ORIGIN } from './envelope.ts';
import { headsOf } from './heads.ts';
import { withKinds } from './kind-registry.ts';
import { recordKinds } from './kinds.ts';
import { mergeRecords } from './merge-records.ts';
import { exportRecords, importRecords } from './record-file.ts';
import { isTimestamp } from './timestamp.ts';
import { verifyRecords } from './verify-records.ts';

const BOOK = 'oxbow-1';

const draft = (id: string, rest: Partial<Draft> = {}): Draft => ({
  id,
  revision: 3,
  kind: 'note',
  version: 1,
  deviceTime: '2026-11-24T09:30:00Z',
  body: { text: `note ${id}`, by: 'rigger' },
  ...rest,
});

const write = (chain: Chain, drafts: readonly Draft[]): readonly Envelope[] => {
  const records: Envelope[] = [];
  let here = chain;
  for (const one of drafts) {
    const done = appendRecord(here, one);
    if (!done.ok) throw new Error(JSON.stringify(done.problems));
    records.push(done.value.record);
    here = done.value.chain;
  }
  return records;
};

const noted = (writer: string, count: number, book = BOOK): readonly Envelope[] =>
  write(
    startChain(book, writer),
    Array.from({ length: count }, (_, i) => draft(`${writer}-${i}`)),
  );

const codes = (records: readonly unknown[], heads: readonly Head[] = []): readonly string[] => [
  ...new Set(verifyRecords(records, { book: BOOK, heads }).map((problem) => problem.code)),
];

describe('a chain of records', () => {
  it('gives each record the hash that a reader computes from its line alone, with other means', () => {
    const records = noted('tablet', 4);
    let previous = ORIGIN;
    for (const line of exportRecords(BOOK, records).trimEnd().split('\n').slice(1)) {
      // by the definition: the line without its hash member, after the 32 bytes of `previous`
      const unhashed = line.replace(/"hash":"[0-9a-f]{64}",/, '');
      const hash = createHash('sha256')
        .update(Buffer.from(previous, 'hex'))
        .update(unhashed, 'utf8')
        .digest('hex');
      const record = JSON.parse(line) as Envelope;
      expect(record.previous).toBe(previous);
      expect(record.hash).toBe(hash);
      previous = hash;
    }
  });

  it('goes on from a head that was kept', () => {
    const records = noted('tablet', 3);
    const [head] = headsOf(records);
    const more = write(chainFrom(head!), [draft('later')]);
    expect(more[0]).toMatchObject({ sequence: 3, previous: records[2]!.hash });
    expect(codes([...records, ...more], [head!])).toEqual([]);
  });

  it('keeps a body of its own: a later change of what was given does not reach it', () => {
    const body = { text: 'as found', by: 'rigger', of: ['-M3'] };
    const [record] = write(startChain(BOOK, 'tablet'), [draft('a', { body })]);
    body.of.push('-M4');
    expect(record!.body).toEqual({ text: 'as found', by: 'rigger', of: ['-M3'] });
    expect(codes([record])).toEqual([]);
  });

  it('refuses an unknown kind, a wrong body, a day that does not exist, a number that JSON has not', () => {
    const chain = startChain(BOOK, 'tablet');
    const refused = (rest: Partial<Draft>): readonly string[] => {
      const done = appendRecord(chain, draft('a', rest));
      return done.ok ? [] : done.problems.map((problem) => `${problem.code} ${problem.path}`);
    };
    expect(refused({})).toEqual([]);
    expect(refused({ kind: 'rumour' })).toEqual(['RECORD_KIND_UNKNOWN /kind']);
    expect(refused({ version: 2 })).toEqual(['RECORD_KIND_UNKNOWN /kind']);
    expect(refused({ body: { text: ' ', colour: 'red' } })).toEqual([
      'RECORD_BODY /body/text',
      'RECORD_BODY /body/by',
      'RECORD_BODY /body/colour',
    ]);
    expect(refused({ deviceTime: '2026-02-30T00:00:00Z' })).toEqual(['RECORD_MALFORMED /deviceTime']);
    expect(refused({ body: { text: Number.NaN } })).toEqual(['RECORD_NOT_JSON /body/text']);
    expect(refused({ body: { text: 'x'.repeat(1_048_577), by: 'rigger' } })).toEqual([
      'RECORD_TOO_LARGE /body',
    ]);
    expect(refused({ supersedes: 'a' })).toEqual(['RECORD_SUPERSEDES_CYCLE /supersedes']);
    expect(refused({ id: 'no spaces' })).toEqual(['RECORD_MALFORMED /id']);
  });
});

describe('kinds', () => {
  const bodies: Readonly<Record<string, unknown>> = {
    'reading/1': {
      floor: 'SITE',
      of: '/floors/1/water/source/static',
      value: '42 psi',
      spread: '1 psi',
      by: 'fitter',
    },
    'reading/2': {
      floor: 'SITE',
      of: 'air/compressor/cutIn',
      value: '71 psi',
      spread: '1 psi',
      by: 'fitter',
      instrument: 'gauge, class 0.6',
      users: 2,
      conditions: 'line at rest',
    },
    'trial/1': {
      floor: 'SITE',
      by: 'engineer',
      lanes: [{ lane: '-L1', pulses: 820, volume: '2.01 L', time: '11.2 s' }],
    },
    'trial/2': {
      floor: 'SITE',
      lane: '-L1',
      preset: 820,
      by: 'engineer',
      row: 'row-3',
      lanesOpen: 8,
      time: '11.2 s',
      gross: '2.61 kg',
      tare: '0.61 kg',
      overflow: 'trace',
      instrument: 'bench scale',
      resolution: '1 g',
      calibrated: '2026-09-01',
    },
    'sample/1': {
      format: 'FLAGON',
      bottle: '7',
      by: 'engineer',
      mass: '612 g',
      brimfulMass: '2.71 kg',
      temperature: '18 degC',
    },
    'lot/1': {
      floor: 'SITE',
      format: 'FLAGON',
      by: 'witness',
      size: 1200,
      tares: ['612 g', '609 g'],
      packages: [{ gross: '2.62 kg', lane: '-L1', at: '2026-11-24T09:30:00Z' }],
    },
    'allowance/1': {
      from: 'OXBOW',
      floor: 'LARKMOOR',
      of: 'valve-air',
      value: '3 % ± 1 %',
      by: 'the engineer',
    },
    'run/1': {
      floor: 'SITE',
      from: '2026-11-24T09:30:00Z',
      to: '2026-11-24T10:30:00Z',
      bottles: 1050,
      by: 'engineer',
    },
    'run/2': {
      floor: 'SITE',
      from: '2026-11-24T09:30:00Z',
      to: '2026-11-24T10:30:00Z',
      bottles: 1050,
      bottlesIn: 1056,
      rejected: 4,
      broken: 2,
      quarantined: 1050,
      conditions: [{ condition: 'bottles', read: 'yes' }],
      by: 'engineer',
    },
    'wait/1': {
      wait: 'W-1',
      state: 'asked',
      by: 'engineer',
      due: '2026-12-01',
      why: 'rinse water of the run',
    },
    'session/1': {
      floor: 'SITE',
      from: '2027-05-24T09:30:00Z',
      to: '2027-05-24T10:10:00Z',
      what: 'cap sorter hunts',
      by: 'engineer',
      remote: true,
    },
    'join/1': { join: 'X2:14', state: 'tested', by: 'electrician' },
    'join/2': {
      join: 'J-1',
      state: 'tested',
      by: 'electrician',
      floor: 'LARKMOOR',
      reading: '0.04 ohm',
      method: 'continuity',
      instrument: 'low-ohm meter',
      evidence: ['a'.repeat(64)],
      follows: ['r1'],
      remark: 'marked in paint',
    },
    'check/1': {
      check: 'rotation/-M3',
      floor: 'SITE',
      result: 'proved',
      by: 'electrician',
      evidence: ['photo-1'],
    },
    'check/2': {
      check: 'current -M3',
      floor: 'SITE',
      by: 'electrician',
      basis: [
        { of: '-M3', path: '/current', sha256: ORIGIN },
        { path: '/agreement/rates/0/rate', sha256: ORIGIN },
        { of: 'HR1', path: '', sha256: ORIGIN },
      ],
      readings: ['1.02 A', '1.04 A', '1.03 A'],
      conditions: [{ condition: 'frequency', read: '60 Hz' }],
      instrument: 'clamp meter',
      concession: { why: 'worn bearing', until: '2027-06-01', by: 'plant' },
    },
    'media/1': {
      sha256: ORIGIN,
      mediaType: 'image/jpeg',
      bytes: 81_234,
      of: ['-M3'],
      by: 'rigger',
      moment: '2027-04-19T09:10:00+01:00',
    },
    'placement/1': {
      picture: ORIGIN,
      box: '+JB2',
      points: [{ join: 'J-1', side: 'to', x: 0.25, y: 0.5 }],
      off: [{ join: 'J-4', side: 'to' }],
      follows: ['phone-1'],
      by: 'fitter',
    },
    'punch/1': { point: 'P-7', text: 'guard bolt missing', state: 'open', by: 'witness' },
    'punch/2': {
      point: 'P-7',
      text: 'guard bolt missing',
      state: 'closed',
      by: 'engineer',
      floor: 'LARKMOOR',
      of: ['-S1'],
      class: 'A',
      owner: 'builder',
      due: '2027-04-20',
      why: 'bolt in its place',
      evidence: [ORIGIN],
      follows: ['tablet-3'],
    },
    'signature/1': {
      by: 'witness',
      role: 'customer',
      statement: 'seen as recorded',
      heads: [{ book: BOOK, writer: 'tablet', sequence: 4, hash: ORIGIN }],
    },
    'signature/2': {
      by: 'engineer',
      role: 'builder',
      statement: 'ready to ship',
      heads: [{ book: BOOK, writer: 'w', sequence: 0, hash: ORIGIN }],
      algorithm: 'Ed25519',
      key: '0'.repeat(64),
      value: '0'.repeat(128),
      passes: 'ready to ship',
      floor: 'OXBOW',
      open: ['paint of the frame'],
    },
    'setting/1': {
      setting: 'overload -M2',
      floor: 'LARKMOOR',
      moment: 'as left',
      value: '5 A',
      by: 'electrician',
      why: 'tripped at 60 Hz',
      evidence: [ORIGIN],
    },
    'bypass/1': { bypass: 'B-1', of: '-S2', state: 'made', by: 'engineer', why: 'stop time' },
    'reply/1': {
      by: 'witness',
      role: 'customer',
      book: BOOK,
      revision: 3,
      file: ORIGIN,
      heads: [{ book: BOOK, writer: 'tablet', sequence: 4, hash: ORIGIN }],
      at: '2027-04-24T10:00:00Z',
      accepted: 'with open points',
      comments: [{ check: 'rate', floor: 'LARKMOOR', text: 'seen on the film' }],
      open: ['P-7'],
      algorithm: 'Ed25519',
      key: '0'.repeat(64),
      value: '0'.repeat(128),
    },
    'revision/1': { number: 4, holds: ORIGIN, over: ORIGIN, why: 'measured', by: 'engineer' },
    'note/1': { text: 'hose replaced', by: 'rigger' },
  };

  it('each take the body that they are for, and refuse an empty one', () => {
    expect(Object.keys(bodies)).toEqual([...recordKinds.keys()]);
    for (const [key, body] of Object.entries(bodies)) {
      const [kind = '', number] = key.split('/');
      const version = Number(number);
      expect(bodyProblems({ kind, version, body }, recordKinds, '')).toEqual([]);
      expect(bodyProblems({ kind, version, body: {} }, recordKinds, '').length).toBeGreaterThan(0);
      expect(bodyProblems({ kind, version, body: null }, recordKinds, '').length).toBeGreaterThan(0);
    }
  });

  it('of a reading name a place within the floor, and count the others that were drawing', () => {
    const read = (rest: object) =>
      bodyProblems(
        { kind: 'reading', version: 2, body: { ...(bodies['reading/2'] as object), ...rest } },
        recordKinds,
        '',
      ).map(({ path }) => path);
    expect(read({ of: '/floors/1/air/compressor/cutIn' })).toEqual(['/body/of']);
    expect(read({ of: 'air/../power' })).toEqual(['/body/of']);
    expect(read({ users: -1 })).toEqual(['/body/users']);
    expect(read({ users: 1.5, value: ' ' })).toEqual(['/body/value', '/body/users']);
    expect(read({ users: 0 })).toEqual([]);
  });

  it('are added to a registry beside the old ones, never in their place', () => {
    const more = withKinds(recordKinds, { kind: 'weighing', version: 1, body: () => [] });
    expect(appendRecord(startChain(BOOK, 'w'), draft('a', { kind: 'weighing', body: 1 }), more).ok).toBe(
      true,
    );
    expect(recordKinds.has('weighing/1')).toBe(false);
    expect(() => withKinds(recordKinds, { kind: 'note', version: 1, body: () => [] })).toThrow(/twice/);
  });

  it('that this version does not know keep their place in the chain', () => {
    const future = withKinds(recordKinds, { kind: 'note', version: 9, body: () => [] });
    const done = appendRecord(startChain(BOOK, 'w'), draft('a', { version: 9, body: { any: 1 } }), future);
    const records = done.ok ? [done.value.record] : [];
    expect(verifyRecords(records, { book: BOOK })).toEqual([]);
    expect(verifyRecords(records, { kinds: recordKinds }).map((one) => one.code)).toEqual([
      'RECORD_KIND_UNKNOWN',
    ]);
  });
});

describe('verifying', () => {
  const a = noted('alpha', 5);
  const b = noted('beta', 4);
  const whole = [...a, ...b];
  const heads = headsOf(whole);
  const rewrite = (i: number, rest: Partial<Envelope>): readonly Envelope[] =>
    whole.map((r, at) => (at === i ? { ...r, ...rest } : r));

  it('finds nothing in a whole set, whatever the order between writers', () => {
    expect(codes(whole, heads)).toEqual([]);
    expect(codes([...b, ...a], heads)).toEqual([]);
    expect(codes([])).toEqual([]);
  });

  it('finds a changed record', () => {
    expect(codes(rewrite(2, { body: { text: 'other', by: 'rigger' } }))).toEqual(['RECORD_CHANGED']);
    expect(codes(rewrite(2, { deviceTime: '2026-11-24T09:30:01Z' }))).toEqual(['RECORD_CHANGED']);
  });

  it('finds a dropped record, at the start and in the middle', () => {
    expect(verifyRecords(whole.toSpliced(1, 2))).toMatchObject([
      { code: 'RECORD_DROPPED', parts: { writer: 'alpha', first: 1, last: 2 } },
    ]);
    expect(codes(whole.toSpliced(0, 1))).toEqual(['RECORD_DROPPED']);
  });

  it('finds records out of order, and one that stands there twice', () => {
    expect(codes([a[0], a[2], a[1], a[3], a[4]])).toEqual(['RECORD_REORDERED']);
    expect(codes([...whole, a[1]])).toEqual(['RECORD_REPEATED']);
  });

  it('finds a cut end only against the heads that were handed over', () => {
    expect(codes(whole.slice(0, -1))).toEqual([]);
    expect(codes(whole.slice(0, -1), heads)).toEqual(['RECORD_TRUNCATED']);
    expect(verifyRecords(a, { heads })).toMatchObject([
      { code: 'RECORD_WRITER_MISSING', parts: { writer: 'beta', head: 3 } },
    ]);
    const [head] = headsOf(a.slice(0, 3));
    expect(codes(a, [head!])).toEqual([]);
    const elsewhere = { ...head!, book: 'other-book' };
    expect(verifyRecords(a, { book: BOOK, heads: [elsewhere] })).toMatchObject([
      { code: 'RECORD_HEAD_OF_OTHER_BOOK', given: 'other-book', allowed: BOOK },
    ]);
  });

  it('finds a chain that its owner computed anew, against the heads', () => {
    const anew = write(
      startChain(BOOK, 'alpha'),
      a.map((_, i) => draft(`alpha-${i}`, i === 1 ? { body: { text: 'better', by: 'rigger' } } : {})),
    );
    expect(codes(anew)).toEqual([]);
    expect(codes([...anew, ...b], heads)).toEqual(['RECORD_HEAD_DIFFERS']);
  });

  it('finds a record replaced by another that is whole in itself', () => {
    const other = write(startChain(BOOK, 'alpha'), [draft('alpha-0'), draft('x')]);
    expect(codes([a[0], other[1], ...a.slice(2), ...b])).toEqual(['RECORD_CHAIN_BROKEN']);
  });

  it('finds a fork: two devices that write as one', () => {
    const fork = write(chainFrom(headsOf(a.slice(0, 3))[0]!), [draft('fork')]);
    expect(codes([...whole, ...fork])).toEqual(['RECORD_FORK', 'RECORD_REORDERED']);
    expect(codes(mergeRecords(whole, fork))).toEqual(['RECORD_FORK']);
  });

  it('finds records of another book, and one id on two records', () => {
    expect(codes([...whole, ...noted('gamma', 1, 'other-book')])).toEqual(['RECORD_WRONG_BOOK']);
    const twice = write(startChain(BOOK, 'gamma'), [draft('alpha-0')]);
    expect(codes([...whole, ...twice])).toEqual(['RECORD_ID_TWICE']);
  });

  it('finds a correction of nothing, a circle of corrections, and a photograph in place of a note', () => {
    const unknown = write(startChain(BOOK, 'gamma'), [draft('c', { supersedes: 'nowhere' })]);
    expect(codes([...whole, ...unknown])).toEqual(['RECORD_SUPERSEDES_UNKNOWN']);
    const circle = write(startChain(BOOK, 'gamma'), [
      draft('c', { supersedes: 'd' }),
      draft('d', { supersedes: 'c' }),
    ]);
    expect(codes([...whole, ...circle])).toEqual(['RECORD_SUPERSEDES_CYCLE']);
    const body = { sha256: ORIGIN, mediaType: 'image/png', bytes: 1, of: [], by: 'rigger' };
    const photo = write(startChain(BOOK, 'gamma'), [
      draft('c', { kind: 'media', body, supersedes: 'beta-0' }),
    ]);
    expect(codes([...whole, ...photo])).toEqual(['RECORD_SUPERSEDES_OTHER_KIND']);
  });

  it('says of what is no record at all where it stands and what is wrong, and throws at nothing', () => {
    expect(verifyRecords([null, 7, {}, { ...a[0], extra: 1 }]).map((p) => `${p.code} ${p.path}`)).toEqual([
      'RECORD_MALFORMED /records/0',
      'RECORD_MALFORMED /records/1',
      ...[
        'id',
        'book',
        'revision',
        'kind',
        'version',
        'writer',
        'sequence',
        'deviceTime',
        'body',
        'previous',
        'hash',
      ].map((name) => `RECORD_MALFORMED /records/2/${name}`),
      'RECORD_MALFORMED /records/3/extra',
    ]);
    fc.assert(
      fc.property(fc.array(fc.anything()), (values) => {
        expect(verifyRecords(values).length).toBeGreaterThanOrEqual(values.length);
      }),
    );
  });
});

describe('tampering', () => {
  // several writers, with corrections, so that each tampering meets a set as it is in use
  const setOf = (lengths: readonly number[]): readonly Envelope[] =>
    lengths.flatMap((length, w) =>
      write(
        startChain(BOOK, `w${w}`),
        Array.from({ length }, (_, i) => draft(`w${w}-${i}`, i > 1 ? { supersedes: `w${w}-${i - 2}` } : {})),
      ),
    );
  const lengths = fc.array(fc.integer({ min: 1, max: 6 }), { minLength: 1, maxLength: 3 });
  const made = new Map<string, readonly Envelope[]>();
  /** The same set for the same lengths, written once. */
  const knownSet = (sizes: readonly number[]): readonly Envelope[] => {
    const key = sizes.join();
    const set = made.get(key) ?? setOf(sizes);
    made.set(key, set);
    return set;
  };
  /** All kinds together; none may pass. */
  const ALL = 10_000;
  const tamperings: Readonly<Record<string, (set: Envelope[], i: number, j: number) => unknown[]>> = {
    drop: (set, i) => set.toSpliced(i, 1),
    'cut the end': (set, i) => set.slice(0, i),
    'exchange two of one writer': (set, i) => {
      const next = set.findIndex((r, at) => at > i && r.writer === set[i]!.writer);
      return next < 0 ? set.slice(0, i) : set.with(i, set[next]!).with(next, set[i]!);
    },
    'leave one out and compute the rest anew': (set, i) => {
      const { writer, sequence } = set[i]!;
      const old = set.filter((r) => r.writer === writer);
      const before = old.slice(0, sequence);
      const from = before.length === 0 ? startChain(BOOK, writer) : chainFrom(headsOf(before)[0]!);
      const anew = write(
        from,
        old.slice(sequence + 1).map((r) => draft(r.id, { body: r.body })),
      );
      return [...set.filter((r) => r.writer !== writer), ...before, ...anew];
    },
    repeat: (set, i) => [...set, set[i]],
    'swap contents under their places': (set, i, j) =>
      set.map((r, at) => (at === i ? { ...r, body: set[j]!.body, id: set[j]!.id } : r)),
    'change the body': (set, i) => set.with(i, { ...set[i]!, body: { text: 'forged', by: 'nobody' } }),
    'change a member': (set, i, j) => {
      const name = (['revision', 'sequence', 'version'] as const)[j % 3]!;
      return set.with(i, { ...set[i]!, [name]: set[i]![name] + 1 });
    },
    'change the writer': (set, i) => set.with(i, { ...set[i]!, writer: 'w9' }),
    'change the hash': (set, i) => set.with(i, { ...set[i]!, hash: ORIGIN }),
    'change the link': (set, i) => set.with(i, { ...set[i]!, previous: 'f'.repeat(64) }),
    'add a member': (set, i) => set.with(i, { ...set[i]!, remark: 'added' } as Envelope),
    'compute a chain anew': (set, i) => {
      const { writer } = set[i]!;
      const old = set.filter((r) => r.writer === writer);
      const anew = write(
        startChain(BOOK, writer),
        old.map((r) => draft(r.id, { body: { text: 'forged', by: 'nobody' } })),
      );
      return [...set.filter((r) => r.writer !== writer), ...anew];
    },
    'compute a chain anew from the middle': (set, i) => {
      const { writer, sequence } = set[i]!;
      const old = set.filter((r) => r.writer === writer);
      const before = old.slice(0, sequence);
      const from = before.length === 0 ? startChain(BOOK, writer) : chainFrom(headsOf(before)[0]!);
      const anew = write(
        from,
        old.slice(sequence).map((r) => draft(r.id, { deviceTime: '2026-11-25T09:30:00Z' })),
      );
      return [...set.filter((r) => r.writer !== writer), ...before, ...anew];
    },
  };

  it.each(Object.entries(tamperings))('is found against the heads: %s', (_, tamper) => {
    fc.assert(
      fc.property(lengths, fc.nat(), fc.nat(), (sizes, p, q) => {
        const set = knownSet(sizes);
        const tampered = tamper([...set], p % set.length, q % set.length);
        fc.pre(JSON.stringify(tampered) !== JSON.stringify(set));
        expect(verifyRecords(tampered, { book: BOOK, heads: headsOf(set) })).not.toEqual([]);
      }),
      { numRuns: Math.ceil(ALL / Object.keys(tamperings).length) },
    );
  });

  it('of any one character of an exported file is found', () => {
    const set = setOf([4, 3]);
    const text = exportRecords(BOOK, set);
    const known = headsOf(set);
    const findsIn = (changed: string): boolean => {
      const file = importRecords(changed);
      if (!file.ok) return true;
      const { book, heads, records } = file.value;
      return verifyRecords(records, { book, heads: [...heads, ...known] }).length > 0 || book !== BOOK;
    };
    expect(findsIn(text)).toBe(false);
    const printable = fc.integer({ min: 32, max: 126 }).map((code) => String.fromCharCode(code));
    fc.assert(
      fc.property(
        fc.nat(text.length - 1),
        printable,
        fc.constantFrom('replace', 'insert', 'remove'),
        (at, c, how) => {
          const changed =
            text.slice(0, at) + (how === 'remove' ? '' : c) + text.slice(how === 'insert' ? at : at + 1);
          // the line feed after the last record may go: nothing of the records goes with it
          fc.pre(changed.trimEnd() !== text.trimEnd());
          expect(findsIn(changed)).toBe(true);
        },
      ),
      { numRuns: 2000 },
    );
  });
});

describe('a file of records', () => {
  const set = [...noted('alpha', 3), ...noted('beta', 2)];

  it('reads back as it was, from any order', () => {
    const text = exportRecords(BOOK, set);
    const file = importRecords(text);
    expect(file).toEqual({ ok: true, value: { book: BOOK, heads: headsOf(set), records: set } });
    expect(exportRecords(BOOK, set.toReversed())).toBe(text);
  });

  it('survives the line ends and the byte order mark of other systems', () => {
    const text = `\uFEFF${exportRecords(BOOK, set).replaceAll('\n', '\r\n')}`;
    expect(importRecords(text)).toMatchObject({ ok: true, value: { records: set } });
  });

  it('may hold no record', () => {
    expect(importRecords(exportRecords(BOOK, []))).toEqual({
      ok: true,
      value: { book: BOOK, heads: [], records: [] },
    });
  });

  it('names every line that is damaged', () => {
    const lines = exportRecords(BOOK, set).trimEnd().split('\n');
    const refused = (text: string): readonly string[] => {
      const file = importRecords(text);
      return file.ok ? [] : file.problems.map((problem) => `${problem.code} ${problem.path}`);
    };
    expect(refused(lines.with(1, '{').with(3, lines[3]!.replace(',', ', ')).join('\n'))).toEqual([
      'RECORD_LINE_UNREADABLE /lines/2',
      'RECORD_LINE_NOT_CANONICAL /lines/4',
    ]);
    expect(refused(lines.with(2, '{"id":"x","id":"y"}').join('\n'))).toEqual([
      'RECORD_LINE_NOT_CANONICAL /lines/3',
    ]);
    expect(refused(lines.slice(0, -1).join('\n'))).toEqual(['RECORD_FILE_SHORT /lines/1/records']);
    expect(refused(lines[0]!.replace('"version":1', '"version":2'))).toEqual([
      'RECORD_FILE_FROM_FUTURE /lines/1/version',
    ]);
    for (const text of ['', '\n', 'null', '[]', '{}', '{"format":"twinfloor-records"}', lines[1]!]) {
      expect(refused(text)).toEqual(['RECORD_FILE_UNREADABLE /lines/1']);
    }
  });

  it('of any text whatever is read or refused, never a crash', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.json()), (text) => {
        expect(importRecords(text).ok).toBe(false);
      }),
    );
  });
});

describe('merging', () => {
  const all = [...noted('alpha', 4), ...noted('beta', 3)];
  const some = fc.subarray([...all]);

  it('is a union: in any order, in any grouping, twice or once', () => {
    fc.assert(
      fc.property(some, some, some, (x, y, z) => {
        const xy = mergeRecords(x, y);
        expect(mergeRecords(y, x)).toEqual(xy);
        expect(mergeRecords(xy, xy)).toEqual(xy);
        expect(mergeRecords(xy, x)).toEqual(xy);
        expect(mergeRecords(xy, z)).toEqual(mergeRecords(x, mergeRecords(y, z)));
        expect(new Set(xy.map((r) => r.id))).toEqual(new Set([...x, ...y].map((r) => r.id)));
      }),
    );
  });

  it('hides no forgery: of two records with one hash both stay', () => {
    const forged = { ...all[1]!, body: { text: 'forged', by: 'nobody' } };
    const merged = mergeRecords(all, [forged]);
    expect(merged).toHaveLength(all.length + 1);
    expect(codes(merged)).toContain('RECORD_CHANGED');
  });
});

describe('current records', () => {
  it('are those that no other replaces', () => {
    const records = write(startChain(BOOK, 'alpha'), [
      draft('a'),
      draft('b'),
      draft('a2', { supersedes: 'a' }),
      draft('a3', { supersedes: 'a2' }),
    ]);
    const { current, superseded, contested } = currentRecords(records);
    expect(current.map((r) => r.id)).toEqual(['b', 'a3']);
    expect(superseded.map((r) => r.id)).toEqual(['a', 'a2']);
    expect(contested).toEqual([]);
  });

  it('are both of two corrections made apart, and the contest is said', () => {
    const first = write(startChain(BOOK, 'alpha'), [draft('a'), draft('x', { supersedes: 'a' })]);
    const other = write(startChain(BOOK, 'beta'), [draft('y', { supersedes: 'a' })]);
    const { current, contested } = currentRecords(mergeRecords(first, other));
    expect(current.map((r) => r.id)).toEqual(['x', 'y']);
    expect(contested).toEqual([{ id: 'a', by: ['x', 'y'] }]);
  });

  it('keep every record in sight: none is lost between current and superseded, circles included', () => {
    const id = fc.integer({ min: 0, max: 5 }).map(String);
    fc.assert(
      fc.property(fc.uniqueArray(fc.record({ id, supersedes: id }), { selector: (r) => r.id }), (links) => {
        const records = links.map((link) => ({ ...link, kind: 'note' }) as unknown as Envelope);
        const { current, superseded } = currentRecords(records);
        expect(current.length + superseded.length).toBe(records.length);
        if (records.length > 0) expect(current.length).toBeGreaterThan(0);
      }),
    );
  });
});

describe('a moment', () => {
  it.each(['2026-11-24T09:30:00Z', '2024-02-29T23:59:59.999+01:00', '2000-02-29T00:00:00-07:30'])(
    'is %s',
    (text) => {
      expect(isTimestamp(text)).toBe(true);
      expect(Number.isNaN(Date.parse(text))).toBe(false);
    },
  );
  it.each([
    '2026-11-24',
    '2026-11-24T09:30:00',
    '2026-11-24 09:30:00Z',
    '2026-02-29T00:00:00Z',
    '1900-02-29T00:00:00Z',
    '2026-13-01T00:00:00Z',
    '2026-11-31T00:00:00Z',
    '2026-11-24T24:00:00Z',
    '2026-11-24T09:60:00Z',
    '2026-11-24T09:30:00+24:00',
    '2026-11-24T09:30:00Z\n',
    '',
    null,
    7,
  ])('is not %j', (text) => {
    expect(isTimestamp(text)).toBe(false);
  });
});
