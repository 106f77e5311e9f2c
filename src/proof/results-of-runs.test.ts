import { describe, expect, it } from 'vitest';
import { placesOfBook } from './book-places.ts';
import { restsOn } from './proved-check.ts';
import { checkOf, demo, demoWith, floorOf, proofOf, recorded, type Said } from './testing/demo-proof.ts';

const larkmoor = floorOf(proofOf(demo), 'LARKMOOR');
const paths = ['rate', 'efficiency', 'count'].flatMap((sort) =>
  restsOn(checkOf(larkmoor, `${sort} FLAGON-2L`).check),
);
const inCondition = checkOf(larkmoor, 'rate FLAGON-2L').check.under.map(
  ({ id, read, word, limits, sort }) => ({
    condition: id,
    read:
      read === 'claim'
        ? 'yes'
        : (word ??
          (sort === 'frequency'
            ? '60 Hz'
            : `${limits[0]?.figure.value ?? 0} ${sort === 'bathTemperature' ? 'K' : 'Pa'}`)),
  }),
);

const run = (more: object = {}, version = 2): Said => ({
  kind: 'run',
  version,
  body: {
    floor: 'LARKMOOR',
    from: '2027-04-21T09:00:00+02:00',
    to: '2027-04-21T10:00:00+02:00',
    bottles: 1060,
    by: 'the engineer',
    ...(version === 1
      ? {}
      : {
          rejected: 4,
          basis: placesOfBook(demo).basis(paths),
          conditions: inCondition,
          bottlesIn: 1062,
          broken: 2,
          stops: [],
        }),
    ...more,
  },
});

const stand = (said: readonly Said[], sort: string) =>
  checkOf(floorOf(proofOf(demo, recorded(said)), 'LARKMOOR'), `${sort} FLAGON-2L`);

describe('a run that was recorded', () => {
  it('is the try of the rate, the efficiency and the count at once, from one record', () => {
    // 1 060 less 4 in one hour; 1 062 in = 1 060 out and 2 broken
    expect(stand([run()], 'rate').inForce?.limits[0]?.value).toBeCloseTo(1056 / 3600, 12);
    expect(stand([run()], 'efficiency').inForce?.limits[0]?.value).toBe(1);
    expect(stand([run()], 'count').state).toBe('proved');
    expect(stand([run({ bottlesIn: 1070 })], 'count').state).toBe('failed');
  });

  it('has the share of its own time in which it ran: what came from outside is no time of the line', () => {
    const stops = [
      { from: '2027-04-21T09:10:00+02:00', to: '2027-04-21T09:16:00+02:00', cause: 'jam' },
      {
        from: '2027-04-21T09:30:00+02:00',
        to: '2027-04-21T09:40:00+02:00',
        cause: 'no bottles',
        external: true,
      },
    ];
    // 50 min count, of which it stood 6
    expect(stand([run({ stops })], 'efficiency').inForce?.limits[0]?.value).toBeCloseTo(44 / 50, 12);
    expect(stand([run({ stops })], 'efficiency').inForce?.limits[0]?.kept).toBe(false);
  });

  it('fails in condition where too few came out, and proves nothing where it was shorter than agreed', () => {
    const few = stand([run({ bottles: 1000, bottlesIn: 1002 })], 'rate');
    expect(few.inForce?.limits[0]?.kept).toBe(false);
    const brief = stand([run({ to: '2027-04-21T09:50:00+02:00' })], 'rate');
    expect([brief.state, brief.inForce?.shortfalls.includes('brief')]).toEqual(['shown', true]);
  });

  it('of the first form is a person’s word: nothing of its conditions was read', () => {
    const { state, inForce } = stand([run({}, 1)], 'rate');
    expect([state, inForce?.shortfalls.includes('word')]).toEqual(['shown', true]);
    expect(stand([run({}, 1)], 'count').state).toBe('open');
  });

  it('is counted before release, and what is set aside of it', () => {
    const floor = (said: readonly Said[]) => floorOf(proofOf(demo, recorded(said)), 'LARKMOOR').quarantine;
    expect(floor([run({ quarantined: 1050 })])).toEqual({ made: 1060, setAside: 1050, runs: ['r0'] });
    const released = (on: string): Said => ({
      kind: 'wait',
      version: 1,
      body: { wait: 'W-RELEASE', state: 'granted', by: 'the laboratory', on },
    });
    expect(floor([run(), released('2027-04-20')])).toMatchObject({ made: 0, released: '2027-04-20' });
    expect(floor([run(), released('2027-04-24')])).toMatchObject({ made: 1060, released: '2027-04-24' });
  });
});

describe('a lot that was weighed', () => {
  const book = demoWith(
    { path: '/agreement/contents/rule', value: 'EU average system' },
    { path: '/floors/1/liquid/product', value: 'WATER' },
  );
  const lot = (grams: number): Said => ({
    kind: 'lot',
    version: 1,
    body: {
      floor: 'LARKMOOR',
      format: 'FLAGON-2L',
      size: 3000,
      product: 'WATER',
      by: 'the engineer',
      packages: Array.from({ length: 50 }, (_, i) => ({ gross: `${grams + (i % 3)} g`, tare: '960 g' })),
    },
  });
  const contents = (said: readonly Said[]) =>
    checkOf(floorOf(proofOf(book, recorded(said)), 'LARKMOOR'), 'contents FLAGON-2L');

  it('is the try of the contents, judged by the rule that was agreed', () => {
    // 2 L of water weigh 1 994 g in air at 20 degC: 2 010 g are enough, 1 900 g are not
    expect(contents([lot(960 + 2010)]).inForce?.result.seen).toBe(true);
    expect(contents([lot(960 + 1900)]).state).toBe('failed');
  });

  it('of fewer than the tables reach is judged by the plan that was written down with it', () => {
    const oiml = demoWith(
      { path: '/agreement/contents/rule', value: 'OIML R 87' },
      { path: '/floors/1/liquid/product', value: 'WATER' },
    );
    const few = (more: object): Said => {
      const said = lot(960 + 2010);
      const { packages, ...body } = said.body as { readonly packages: readonly unknown[] };
      return { ...said, body: { ...body, size: 60, packages: packages.slice(0, 20), ...more } };
    };
    const of = (more: object) =>
      checkOf(floorOf(proofOf(oiml, recorded([few(more)])), 'LARKMOOR'), 'contents FLAGON-2L').inForce;
    expect(of({})).toBeUndefined();
    expect(of({ plan: '20; 0.64; 1', edition: '2016' })?.result.seen).toBe(true);
  });

  it('is named by a try that says under which conditions it was filled, and stands for it', () => {
    const { check } = checkOf(floorOf(proofOf(book), 'LARKMOOR'), 'contents FLAGON-2L');
    const tried = (from: string): Said => ({
      kind: 'check',
      version: 2,
      body: {
        check: check.id,
        floor: 'LARKMOOR',
        by: 'the engineer',
        basis: placesOfBook(book).basis(restsOn(check)),
        from,
      },
    });
    const named = contents([lot(960 + 2010), tried('r0')]);
    expect([named.inForce?.result.id, named.inForce?.result.seen, named.earlier]).toEqual(['r1', true, []]);
    expect(
      proofOf(book, recorded([lot(960 + 2010), tried('r9')])).problems.map(({ code }) => code),
    ).toContain('PROOF_SOURCE_UNKNOWN');
  });
});

describe('what is due after acceptance', () => {
  const rows = (said: readonly Said[], day = '2027-05-03') =>
    proofOf(
      demoWith(
        { path: '/about/dates/acceptance', value: day },
        { path: '/about/dates/warrantyEnd', value: '2029-05-03' },
      ),
      recorded(said),
    ).afterwards;
  const session: Said = {
    kind: 'session',
    version: 1,
    body: {
      floor: 'LARKMOOR',
      from: '2027-06-02T09:00:00Z',
      to: '2027-06-02T09:40:00Z',
      what: 'cap sorter looked at',
      by: 'the engineer',
      afterwards: 'AFTER-CALL',
      remote: true,
    },
  };

  it('is listed by its day, and done once a session names it', () => {
    expect(rows([run()]).map(({ id, day }) => [id, day])).toEqual([
      ['AFTER-BELTS', '2027-05-10'],
      ['AFTER-WEEK-2', '2027-05-17'],
      ['AFTER-CALL', '2027-06-02'],
      ['warranty ends', '2029-05-03'],
    ]);
    expect(rows([session]).filter(({ done }) => done !== undefined)).toMatchObject([
      { id: 'AFTER-CALL', done: 'r0' },
    ]);
    expect(proofOf(demo).afterwards.map(({ day }) => day)).toEqual([undefined, undefined, undefined]);
  });

  it('of a ramp-up is the target of its week, against the runs of that week taken together', () => {
    const onDay = (day: string, bottles: number, more: object = {}) =>
      run({
        floor: 'LARKMOOR',
        from: `${day}T08:00:00Z`,
        to: `${day}T10:00:00Z`,
        bottles,
        rejected: 0,
        stops: [{ from: `${day}T08:00:00Z`, to: `${day}T08:12:00Z`, cause: 'cap' }],
        ...more,
      });
    const week2 = (said: readonly Said[]) => rows(said).find(({ id }) => id === 'AFTER-WEEK-2')!;
    // of the week before, and of the other floor
    const others = [onDay('2027-05-10', 2400), onDay('2027-05-14', 2400, { floor: 'OXBOW' })];
    expect(week2(others).rampUp).toEqual({ rate: 950 / 3600, efficiency: 0.85, runs: [] });
    // 1 950 and 1 900 good bottles in two hours each: 962.5 in an hour; 12 of 120 minutes stood: 90 %
    const two = week2([...others, onDay('2027-05-11', 1950), onDay('2027-05-17', 1900)]);
    expect(two.rampUp?.reached?.rate).toBeCloseTo(962.5 / 3600, 12);
    expect(two.rampUp?.ran?.share).toBeCloseTo(0.9, 12);
    expect([two.rampUp?.met, two.done]).toEqual([true, 'r3']);
    const slow = week2([onDay('2027-05-12', 1800)]);
    expect([slow.rampUp?.met, slow.done]).toEqual([false, undefined]);
    // without its list of stops nobody said that it did not stand
    const { stops: _, ...body } = onDay('2027-05-12', 1950).body as { readonly stops: unknown };
    const silent = week2([{ ...onDay('2027-05-12', 1950), body }]);
    expect([silent.rampUp?.met, silent.rampUp?.ran]).toEqual([undefined, undefined]);
  });
});
