import { describe, expect, it } from 'vitest';
import { headsOf } from '../record/heads.ts';
import { signStatement } from '../record/signature.ts';
import { isPassed, isSettled } from './proved-check.ts';
import {
  checkOf,
  demo,
  demoWith,
  floorOf,
  proofOf,
  recorded,
  type Said,
  triedOn,
} from './testing/demo-proof.ts';

const bare = proofOf(demo);
const secret = '11'.repeat(32);

/** What a meter reads where nothing is wrong. */
const good: Readonly<Record<string, readonly string[]>> = {
  'bond J-2': ['0.005 ohm'],
  insulation: Array.from({ length: 6 }, () => '20 Mohm'),
};

const seen = (floor: string, id: string, yes = true): Said =>
  triedOn(demo, floor, checkOf(floorOf(bare, floor), id).check, {
    seen: yes,
    ...(good[id] === undefined ? {} : { readings: good[id] }),
  });

/** All records before it, then a signature that passes a gate with what it leaves open named. */
const signedFor = (said: readonly Said[], floor: string, gate: string, open: readonly string[]) => {
  const heads = headsOf(recorded(said));
  const body = signStatement(
    { by: 'the witness', role: 'customer', statement: gate, heads, passes: gate, floor, open },
    secret,
  );
  if (!body.ok) throw new Error('not signed');
  return recorded([...said, { kind: 'signature', version: 2, body: body.value }]);
};
const note: Said = { kind: 'note', version: 1, body: { text: 'begun', by: 'the engineer' } };
const punch = (state: string, more: object = {}): Said => ({
  kind: 'punch',
  version: 1,
  body: { point: 'P1', text: 'paint of the frame', state, by: 'the engineer', ...more },
});

describe('what a floor leaves to the next', () => {
  const carried = (said: readonly Said[]) => floorOf(proofOf(demo, recorded(said)), 'LARKMOOR').carryOver;

  it('is known before anyone starts where a condition can’t hold there', () => {
    const rate = carried([note]).find(({ check }) => check === 'rate FLAGON-2L');
    expect(rate).toMatchObject({
      from: 'OXBOW',
      reason: 'planned',
      conditions: ['manifoldPressure', 'product', 'frequency'],
    });
    // what can be proved there is only undone
    expect(carried([note]).find(({ check }) => check === 'effect -S1 -M1')?.reason).toBe('undone');
  });

  it('is every check of both floors that is not proved there, with the reason', () => {
    const proof = proofOf(
      demo,
      recorded([seen('OXBOW', 'effect -S1 -M1'), seen('OXBOW', 'reset -S1', false)]),
    );
    const oxbow = floorOf(proof, 'OXBOW');
    const larkmoor = floorOf(proof, 'LARKMOOR');
    const next = new Set(larkmoor.checks.map(({ check }) => check.id));
    const open = oxbow.checks.filter(({ state, check }) => state !== 'proved' && next.has(check.id));
    expect(larkmoor.carryOver.map(({ check }) => check)).toEqual(open.map(({ check }) => check.id));
    expect(larkmoor.carryOver.find(({ check }) => check === 'reset -S1')?.reason).toBe('failed');
    expect(larkmoor.carryOver.some(({ check }) => check === 'effect -S1 -M1')).toBe(false);
  });

  it('returns with the places that changed when a proof went stale', () => {
    const book = demoWith({ path: '/line/stopDevices/0/effects/0/effect', value: 'stops at once' });
    const proof = proofOf(book, recorded([seen('OXBOW', 'effect -S1 -M1')]));
    expect(
      floorOf(proof, 'LARKMOOR').carryOver.find(({ check }) => check === 'effect -S1 -M1'),
    ).toMatchObject({
      reason: 'stale',
      changed: [{ of: '-S1', path: '/effects/0' }],
    });
  });

  it('is nothing for a closure that was proved: it stands; a stop was parted and is tried again', () => {
    const conditions = ['bottles', 'caps'].map((condition) => ({ condition, read: 'yes' }));
    const id = 'closing +CAP FLAGON-2L';
    const closed = triedOn(demo, 'OXBOW', checkOf(floorOf(bare, 'OXBOW'), id).check, {
      seen: true,
      conditions,
    });
    const larkmoor = floorOf(proofOf(demo, recorded([closed, seen('OXBOW', 'effect -S1 -M1')])), 'LARKMOOR');
    expect(checkOf(larkmoor, id).state).toBe('stands');
    expect(checkOf(larkmoor, 'effect -S1 -M1').state).toBe('open');
  });
});

describe('progress', () => {
  it('counts each check once, and lets none start before the hold points of earlier stages', () => {
    const { progress, checks } = floorOf(bare, 'LARKMOOR');
    expect(Object.values(progress.counts).reduce((sum, n) => sum + n, 0)).toBe(checks.length);
    expect(progress.next).toEqual([
      'crateReceipt CRATE-1',
      'crateReceipt CRATE-2',
      'crateReceipt CRATE-3',
      'placed +S1',
      'placed +S2',
      'bond J-2',
      'insulation',
      'overload -M2',
      'overload -M3',
      'overload -M4',
    ]);
    const rate = progress.blocked.find(({ check }) => check === 'rate FLAGON-2L');
    const holds = checks.filter(({ check }) => check.point === 'hold' && check.stage !== 'run');
    expect(rate?.by).toEqual(expect.arrayContaining(holds.map(({ check }) => check.id)));
  });

  it('goes on as hold points pass, and not past one that failed', () => {
    const next = (said: readonly Said[]) => floorOf(proofOf(demo, recorded(said)), 'LARKMOOR').progress.next;
    const insulated = seen('LARKMOOR', 'insulation');
    expect(next([insulated, seen('LARKMOOR', 'bond J-2')])).toContain('voltage');
    expect(next([insulated, seen('LARKMOOR', 'bond J-2', false)])).not.toContain('voltage');
    expect(next([seen('LARKMOOR', 'bond J-2', false)])).toContain('bond J-2');
  });
});

describe('a hold point that must work whatever the conditions', () => {
  it('is passed by a proof alone: not by a word, and not while the book does not say what must happen', () => {
    const larkmoor = floorOf(bare, 'LARKMOOR');
    const word = (check: string): Said => ({
      kind: 'check',
      version: 1,
      body: { check, floor: 'LARKMOOR', result: 'proved', by: 'the engineer' },
    });
    const proved = (said: readonly Said[], book = demo) => floorOf(proofOf(book, recorded(said)), 'LARKMOOR');
    const lost = checkOf(proved([word('powerLoss')]), 'powerLoss');
    expect([lost.state, isPassed(lost)]).toEqual(['shown', false]);
    const silent = demoWith({ path: '/line/stopDevices/0/reset', value: undefined });
    const { check } = checkOf(floorOf(proofOf(silent), 'LARKMOOR'), 'reset -S1');
    const reset = checkOf(proved([triedOn(silent, 'LARKMOOR', check, { seen: true })], silent), 'reset -S1');
    expect([reset.state, isPassed(reset)]).toEqual(['shown', false]);
    expect(larkmoor.progress.next).not.toContain('voltage');
  });
});

describe('a gate', () => {
  const lacksOf = (book: typeof demo, name: string, floor: string, said: readonly Said[] = [note]) =>
    floorOf(proofOf(book, recorded(said)), floor).gates.find((one) => one.gate === name)!.lacks;
  const wait = (tag: string, state: string): Said => ({
    kind: 'wait',
    version: 1,
    body: { wait: tag, state, by: 'the plant manager' },
  });

  it('to run off wants bottles, caps and detergent in the quantities that the run takes', () => {
    const goods = lacksOf(demo, 'ready to run off', 'OXBOW').filter(({ sort }) => sort === 'goods');
    // by hand: 1 050 an hour for one hour and a tenth to spare; 15 g/L in 320 L and in the 6 mL of each bottle
    expect(goods.map(({ id, needed, have }) => [id, needed, have])).toEqual([
      ['caps', 1155, 1000],
      ['detergent', expect.closeTo(4.90395, 6), undefined],
    ]);
    const enough = demoWith({
      path: '/floors/0/atHand',
      value: { bottles: 1155, caps: 1155, detergent: '7 kg' },
    });
    expect(lacksOf(enough, 'ready to run off', 'OXBOW').some(({ sort }) => sort === 'goods')).toBe(false);
    const untold = demoWith({ path: '/agreement/acceptanceRun', value: undefined });
    expect(
      lacksOf(untold, 'ready to run off', 'OXBOW')
        .filter(({ sort }) => sort === 'goods')
        .map(({ id }) => id),
    ).toEqual(['bottles', 'caps', 'detergent']);
  });

  it('to travel wants people and lifting gear booked and the water flushed, thought of or not', () => {
    const waits = (book: typeof demo, said: readonly Said[]) =>
      lacksOf(book, 'ready to travel', 'LARKMOOR', said)
        .filter(({ sort }) => sort === 'wait')
        .map(({ id }) => id);
    expect(waits(demoWith({ path: '/waits', value: undefined }), [note])).toEqual([
      'people',
      'lifting gear',
      'water flushed',
    ]);
    expect(waits(demo, [note])).toEqual(['W-CREW', 'W-LIFT', 'W-FLUSH']);
    expect(
      waits(demo, [wait('W-CREW', 'granted'), wait('W-LIFT', 'asked'), wait('W-FLUSH', 'delivered')]),
    ).toEqual(['W-LIFT']);
  });

  it('is kept by what others own and must be over before it', () => {
    const waits = (name: string) =>
      lacksOf(demo, name, 'LARKMOOR')
        .filter(({ sort }) => sort === 'wait')
        .map(({ id }) => id);
    expect(waits('ready to energise')).toEqual(['W-LIFT', 'W-INDUCTION']);
    expect(waits('ready to produce')).toEqual(['W-LIFT', 'W-FLUSH', 'W-INDUCTION', 'W-CAPS']);
    expect(waits('accepted')).toEqual((demo.waits ?? []).map(({ tag }) => tag));
  });

  const gate = (said: readonly Said[], name: string, floor = 'LARKMOOR') =>
    floorOf(proofOf(demo, recorded(said)), floor).gates.find((one) => one.gate === name)!;

  it('lists by itself what is still lacked, and who holds it', () => {
    const travel = gate([note], 'ready to travel');
    const larkmoor = floorOf(bare, 'LARKMOOR');
    expect(travel.lacks).toEqual(
      expect.arrayContaining([
        { id: 'feederDrop', sort: 'finding', holder: 'site' },
        { id: 'readings of the site', sort: 'reading', holder: 'site' },
      ]),
    );
    const accepted = gate([note], 'accepted');
    expect(accepted.lacks.filter(({ sort }) => sort === 'check').map(({ id }) => id)).toEqual(
      larkmoor.checks.filter((one) => !isSettled(one)).map(({ check }) => check.id),
    );
    expect(gate([note], 'ready to ship', 'OXBOW').lacks.map(({ id }) => id)).toEqual([
      ...floorOf(bare, 'OXBOW')
        .checks.filter((one) => !isPassed(one))
        .map(({ check }) => check.id),
      'not drained',
      'not blown out',
    ]);
  });

  it('is passed by a signature that names every open point, and by none that leaves one unnamed', () => {
    const said = [note, punch('open', { class: 'A' })];
    const lacks = gate(said, 'ready to energise').lacks.map(({ id }) => id);
    expect(lacks).toContain('P1');
    const pass = (open: readonly string[]) =>
      floorOf(proofOf(demo, signedFor(said, 'LARKMOOR', 'ready to energise', open)), 'LARKMOOR').gates.find(
        (one) => one.gate === 'ready to energise',
      );
    const named = lacks.map((id) => `${id}: seen by both`);
    expect(pass(named)).toMatchObject({ passed: true, signed: { by: 'the witness' } });
    expect(pass(named.slice(1))).toMatchObject({ passed: false, unnamed: [lacks[0]] });
    expect(gate(said, 'ready to energise')).toMatchObject({ passed: false, unnamed: [] });
  });

  it('is passed no longer once a check has failed that was named as untried: nobody knew of it', () => {
    const open = gate([note], 'ready to energise').lacks.map(({ id }) => id);
    const signed = signedFor([note], 'LARKMOOR', 'ready to energise', open);
    const body = signed.at(-1)!.body;
    const later = [note, { kind: 'signature', version: 2, body }, seen('LARKMOOR', 'placed +S1', false)];
    const of = (said: readonly Said[]) => gate(said, 'ready to energise');
    expect(of(later.slice(0, 2)).passed).toBe(true);
    expect(of(later)).toMatchObject({
      passed: false,
      unnamed: ['placed +S1'],
      signatures: [{ by: 'the witness', right: true, unnamed: ['placed +S1'] }],
    });
    // known when it was signed and named, it is accepted by who signed
    const known = [note, seen('LARKMOOR', 'placed +S1', false)];
    const gates = floorOf(
      proofOf(demo, signedFor(known, 'LARKMOOR', 'ready to energise', open)),
      'LARKMOOR',
    ).gates;
    expect(gates.find((one) => one.gate === 'ready to energise')).toMatchObject({ passed: true });
  });

  it('is not passed by a signature of another floor, another gate, or one that was changed', () => {
    const said = [note];
    const open = gate(said, 'ready to energise').lacks.map(({ id }) => id);
    const passed = (records: ReturnType<typeof recorded>) =>
      floorOf(proofOf(demo, records), 'LARKMOOR')
        .gates.filter((one) => one.passed)
        .map((one) => one.gate);
    expect(passed(signedFor(said, 'LARKMOOR', 'ready to energise', open))).toEqual(['ready to energise']);
    expect(passed(signedFor(said, 'OXBOW', 'ready to energise', open))).toEqual([]);
    const forged = signedFor(said, 'LARKMOOR', 'ready to energise', open).map((record) =>
      record.kind === 'signature'
        ? { ...record, body: { ...(record.body as object), by: 'somebody else' } }
        : record,
    );
    expect(passed(forged)).toEqual([]);
  });

  it('is kept by a punch point of its class or a graver one until that is closed', () => {
    const lacks = (said: readonly Said[], name: string) => gate(said, name).lacks.map(({ id }) => id);
    expect(lacks([punch('open', { class: 'B' })], 'ready to produce')).not.toContain('P1');
    expect(lacks([punch('open', { class: 'B' })], 'accepted')).toContain('P1');
    expect(lacks([punch('open', { class: 'C' })], 'accepted')).not.toContain('P1');
    expect(lacks([punch('open')], 'ready to produce')).toContain('P1');
    expect(lacks([punch('open'), punch('closed')], 'ready to produce')).not.toContain('P1');
  });

  it('to energise wants every box made and tested by its records, and reads no bond twice', () => {
    const joinsOf = (said: readonly Said[]) =>
      floorOf(proofOf(demo, recorded(said)), 'LARKMOOR')
        .gates.find(({ gate }) => gate === 'ready to energise')!
        .lacks.filter(({ sort }) => sort === 'join');
    const before = joinsOf([note]);
    expect(before.map(({ id }) => id)).toContain('+JB2 bond');
    expect(before.find(({ id }) => id === '+JB2 not made')?.joins).toContain('J-4');
    // the checks of the protocol answer for the same readings
    const after = joinsOf([seen('LARKMOOR', 'bond J-2'), seen('LARKMOOR', 'insulation')]);
    expect(after.some(({ id }) => / bond$| insulation$/.test(id))).toBe(false);
    const made = (state: string): Said => ({
      kind: 'join',
      version: 2,
      body: { join: 'J-4', state, by: 'the fitter' },
    });
    const one = joinsOf([made('made')]);
    expect(one.find(({ id }) => id === '+JB2 not made')?.joins).not.toContain('J-4');
    expect(one.find(({ id }) => id === '+JB2 not tested')?.joins).toEqual(['J-4']);
  });

  it('wants instruments that are in date on the day of the run', () => {
    const due = (day: string | undefined) =>
      floorOf(
        proofOf(
          demoWith({
            path: '/line/instruments',
            value: [{ tag: 'G1', name: 'gauge', ...(day === undefined ? {} : { due: day }) }],
          }),
        ),
        'OXBOW',
      )
        .gates.find((one) => one.gate === 'ready to run off')!
        .lacks.map(({ id }) => id);
    expect(due('2027-03-07')).toContain('G1');
    expect(due(undefined)).toContain('G1');
    expect(due('2027-03-08')).not.toContain('G1');
  });
});
