import { expect, it } from 'vitest';
import { checkOf, demo, demoWith, floorOf, proofOf, recorded, triedOn } from './testing/demo-proof.ts';

const bare = proofOf(demo);

it('crates are looked at before they close, and unopened before they are opened', () => {
  const ids = (floor: string) => floorOf(bare, floor).checks.map(({ check }) => check.id);
  expect(ids('OXBOW').filter((id) => /^crate/.test(id))).toEqual([
    'crateClosed CRATE-1',
    'crateClosed CRATE-2',
    'crateClosed CRATE-3',
  ]);
  const site = ids('LARKMOOR').filter((id) => id.endsWith('CRATE-2'));
  expect(site).toEqual(['crateReceipt CRATE-2', 'crateOpened CRATE-2']);
  expect(checkOf(floorOf(bare, 'LARKMOOR'), 'crateOpened CRATE-2').check.after).toEqual([
    'crateReceipt CRATE-2',
  ]);
});

it('a receipt without photographs taken first is shown at most, and one with a broken seal keeps the line from power', () => {
  const { check } = checkOf(floorOf(bare, 'LARKMOOR'), 'crateReceipt CRATE-1');
  const told = (seen: boolean, photographed: string) =>
    floorOf(
      proofOf(
        demo,
        recorded([
          triedOn(demo, 'LARKMOOR', check, {
            seen,
            conditions: [{ condition: 'photographed', read: photographed }],
          }),
        ]),
      ),
      'LARKMOOR',
    );
  expect(checkOf(told(true, 'yes'), check.id).state).toBe('proved');
  expect(checkOf(told(true, 'no'), check.id).state).toBe('shown');
  const broken = told(false, 'yes');
  expect(checkOf(broken, check.id).state).toBe('failed');
  const gate = broken.gates.find((one) => one.gate === 'ready to energise');
  expect(gate?.lacks.map(({ id }) => id)).toContain(check.id);
});

it('an overload relay is read against the book, and one of which the book says nothing is open', () => {
  const tried = (reading: string) =>
    checkOf(
      floorOf(
        proofOf(
          demo,
          recorded([
            triedOn(demo, 'LARKMOOR', checkOf(floorOf(bare, 'LARKMOOR'), 'overload -M2').check, {
              readings: [reading],
            }),
          ]),
        ),
        'LARKMOOR',
      ),
      'overload -M2',
    ).state;
  expect(tried('4.6 A')).toBe('proved');
  expect(tried('6 A')).toBe('failed');
  expect(checkOf(floorOf(bare, 'LARKMOOR'), 'overload -M3').check.plan).toBe('open');
  // an inverter has no relay of its own to be set
  expect(floorOf(bare, 'LARKMOOR').checks.some(({ check }) => check.id === 'overload -M1')).toBe(false);
});

it('a counter whose maker says how far it may err is held against a weighed volume, within that and one pulse', () => {
  const station = demo.line?.stations?.findIndex(({ kind }) => kind === 'fill');
  const book = demoWith({ path: `/line/stations/${station}/lanes/0/meter/class`, value: '± 0.5 %' });
  const { check } = checkOf(floorOf(proofOf(book), 'LARKMOOR'), 'pulses -Y11');
  expect(floorOf(bare, 'LARKMOOR').checks.some((one) => one.check.sort === 'pulses')).toBe(false);
  const state = (...readings: readonly string[]) =>
    checkOf(
      floorOf(proofOf(book, recorded([triedOn(book, 'LARKMOOR', check, { readings })])), 'LARKMOOR'),
      check.id,
    ).state;
  // by hand: 402 pulses a litre, of a fill of 2.010 L one pulse is 0.498 a litre: 399.49 to 404.51
  expect(state('399.6 /L', '402 /L', '404.4 /L')).toBe('proved');
  expect(state('399.6 /L', '402 /L', '404.6 /L')).toBe('failed');
});

it('regulators, first flushes and counters come in the stages in which they can be tried', () => {
  const stageOf = (id: string) => checkOf(floorOf(bare, 'LARKMOOR'), id).check.stage;
  expect(stageOf('regulator AIR-1')).toBe('air');
  expect(stageOf('flush T-AIR')).toBe('air');
  expect(stageOf('flush T-WAT')).toBe('water');
  expect(stageOf('counter -Y11')).toBe('wet');
  // what the builder's own hall is piped with was run through long ago
  expect(floorOf(bare, 'OXBOW').checks.some(({ check }) => check.sort === 'flush')).toBe(false);
});

it('nothing is packed while frost is possible that no record says to be empty', () => {
  const ship = (book = demo) =>
    floorOf(proofOf(book), 'OXBOW').gates.find(({ gate }) => gate === 'ready to ship')!.lacks;
  expect(ship().find(({ id }) => id === 'not drained')?.joins).toEqual([
    'J-45',
    'J-46',
    'J-47',
    'J-48',
    'J-49',
  ]);
  expect(ship(demoWith({ path: '/line/joins', value: [] })).some(({ sort }) => sort === 'join')).toBe(false);
});
