import { describe, expect, it } from 'vitest';
import { tagsOf } from '../book/index.ts';
import { assessBook } from '../floor/index.ts';
import { proofOfBook } from './proof-of-book.ts';
import { stageOrder } from './stage.ts';
import { checkOf, demo, demoWith, floorOf, proofOf } from './testing/demo-proof.ts';

const proof = proofOf(demo);
const oxbow = floorOf(proof, 'OXBOW');
const larkmoor = floorOf(proof, 'LARKMOOR');
const ids = (floor: typeof oxbow): readonly string[] => floor.checks.map(({ check }) => check.id);

describe('the protocol of a floor', () => {
  it('tests each cell of the matrix of stop devices, and what may not start by itself afterwards', () => {
    for (const { tag, effects = [] } of demo.line?.stopDevices ?? []) {
      for (const { on } of effects) expect(ids(larkmoor)).toContain(`effect ${tag} ${on}`);
      expect(ids(larkmoor)).toEqual(expect.arrayContaining([`release ${tag}`, `reset ${tag}`]));
    }
    expect(ids(larkmoor)).toEqual(expect.arrayContaining(['powerLoss', 'airLoss']));
    const cells = (demo.line?.stopDevices ?? []).flatMap(({ effects = [] }) => effects).length;
    expect(ids(larkmoor).filter((id) => id.startsWith('effect '))).toHaveLength(cells);
  });

  it('lets nothing move by itself before stops and guards, each a hold point, were shown', () => {
    for (const { checks } of [oxbow, larkmoor]) {
      const order = checks.map(({ check }) => stageOrder(check.stage));
      expect(order).toEqual([...order].sort((a, b) => a - b));
      const cells = checks.filter(({ check }) => ['effect', 'release', 'reset'].includes(check.sort));
      expect(cells.every(({ check }) => check.point === 'hold' && check.missFails)).toBe(true);
    }
  });

  it('puts what comes before first', () => {
    for (const { checks } of [oxbow, larkmoor]) {
      const place = new Map(checks.map(({ check }, i) => [check.id, i]));
      for (const { check } of checks) {
        for (const id of check.after) expect(place.get(id)).toBeLessThan(place.get(check.id)!);
      }
    }
  });

  it('holds nobody to a figure whose working a page could not open', () => {
    const assessment = assessBook(demo);
    for (const { checks } of proofOfBook(demo, assessment).floors) {
      const limits = checks.flatMap(({ check }) => [
        ...check.limits,
        ...check.under.flatMap((one) => one.limits),
      ]);
      const shut = limits.filter(
        ({ working, fields }) =>
          working !== undefined &&
          fields === undefined &&
          !assessment.floors.some(({ workings }) => workings.includes(working)),
      );
      expect(shut).toEqual([]);
      expect(limits.filter(({ fields }) => fields !== undefined).length).toBeGreaterThan(1);
    }
  });

  it('has each id once, and names things of the book alone', () => {
    const tags = new Set(tagsOf(demo).map(({ tag }) => tag));
    for (const { checks } of [oxbow, larkmoor]) {
      expect(new Set(checks.map(({ check }) => check.id)).size).toBe(checks.length);
      for (const { check } of checks) expect(check.on.filter((tag) => !tags.has(tag))).toEqual([]);
    }
  });

  it('asks for what the book does not say instead of leaving the check out', () => {
    const bare = floorOf(
      proofOf(
        demoWith(
          { path: '/line/stopDevices/1/reset', value: undefined },
          { path: '/line/stopDevices/0/effects', value: [] },
        ),
      ),
      'LARKMOOR',
    );
    expect(checkOf(bare, 'reset -S2').check.missing).toEqual(['/line/stopDevices/1/reset']);
    expect(checkOf(bare, 'noEffects -S1').check.missing).toEqual(['/line/stopDevices/0/effects']);
    expect(checkOf(larkmoor, 'washContact +WASH.Z2').check.missing).toEqual(['/agreement/hygiene/rule']);
  });

  it('takes limits from the book with the sheet that made them: rows of four at 1 050 bottles an hour', () => {
    const { limits } = checkOf(larkmoor, 'cycleTime FLAGON-2L').check;
    // 4 * 3600 / 1050, by hand
    expect(limits[0]?.figure.value).toBeCloseTo(13.7142857, 6);
    expect(limits[0]?.working?.sheet).toBe('rate/agreed-period');
    expect(checkOf(larkmoor, 'current -M2').check.limits[0]?.figure).toMatchObject({
      value: 4.5,
      path: '/line/drives/1/current',
    });
    expect(checkOf(larkmoor, 'utility feederDrop').check.limits[0]?.figure.value).toBe(0.05);
  });

  it('leaves out a lane that is out of use, and counts its bottle in no row', () => {
    const three = floorOf(
      proofOf(demoWith({ path: '/line/stations/4/lanes/1/out', value: true })),
      'LARKMOOR',
    );
    expect(ids(three).filter((id) => id.startsWith('fillLevel'))).toEqual([
      'fillLevel -Y11',
      'fillLevel -Y13',
      'fillLevel -Y14',
    ]);
    // 3 * 3600 / 1050, by hand
    expect(checkOf(three, 'cycleTime FLAGON-2L').check.limits[0]?.figure.value).toBeCloseTo(10.2857143, 6);
  });

  it('wants so many bottles of a lane that all together, none short, show the agreed share', () => {
    const goal = floorOf(
      proofOf(demoWith({ path: '/agreement/contents/levelGoal', value: '95 %' })),
      'LARKMOOR',
    );
    // 59 with none bad show 5 % at 95 % confidence (acceptance.md T2, computed): 15 for each of four lanes
    expect(checkOf(goal, 'fillLevel -Y11').check.readings).toBe(15);
  });

  it('reads the utilities of the site alone, each need that an instrument can read', () => {
    expect(ids(oxbow).filter((id) => id.startsWith('utility '))).toEqual([]);
    expect(ids(larkmoor)).toEqual(
      expect.arrayContaining(['utility airPressure AIR-1', 'utility waterPressure T-HOT', 'utility makeUp']),
    );
  });
});

describe('the plan of a floor', () => {
  it('is to show only what a condition keeps from counting there, which one and by how much', () => {
    const { check } = checkOf(oxbow, 'rate FLAGON-2L');
    expect(check.plan).toBe('show only');
    expect(check.cannot).toEqual(['manifoldPressure', 'product', 'frequency']);
    const by = Object.fromEntries(check.under.map((one) => [one.id, one.by]));
    // 50 Hz against 60 Hz misses by a sixth, of which one hundredth is allowed
    expect(by.frequency).toBeCloseTo(1 / 6 - 0.01, 9);
    expect(by.manifoldPressure).toBeGreaterThan(0.3);
    expect(checkOf(larkmoor, 'rate FLAGON-2L').check).toMatchObject({ plan: 'prove', foreseen: 'short' });
  });

  it('becomes to prove when the builder runs on the site’s product, frequency and pressure, sure enough of it', () => {
    const sure = { standing: 'measured', spread: '0.01' };
    const lanes = demo.line!.stations!.flatMap((one) => (one.kind === 'fill' ? (one.lanes ?? []) : []));
    const like = floorOf(
      proofOf(
        demoWith(
          { path: '/floors/0/liquid', value: demo.floors![1]!.liquid },
          { path: '/floors/0/supply', value: demo.floors![1]!.supply },
          { path: '/floors/0/supply/run/1/kv', value: { value: 'Kv 8', ...sure } },
          { path: '/floors/0/power/frequency', value: '60 Hz' },
          ...lanes.map((_, i) => ({
            path: `/line/stations/4/lanes/${i}/kv`,
            value: { value: 'Kv 2.0', ...sure },
          })),
        ),
      ),
      'OXBOW',
    );
    expect(checkOf(like, 'fillLevel -Y11').check.plan).toBe('prove');
    expect(checkOf(like, 'rate FLAGON-2L').check.plan).toBe('prove');
  });

  it('is open where the book does not say enough', () => {
    const blank = floorOf(
      proofOf(demoWith({ path: '/floors/1/power/frequency', value: undefined })),
      'OXBOW',
    );
    expect(checkOf(blank, 'current -M3').check).toMatchObject({ plan: 'open', untold: ['frequency'] });
  });
});

describe('a check of the book', () => {
  const own = (check: object) =>
    floorOf(proofOf(demoWith({ path: '/line/checks', value: [check] })), 'LARKMOOR');

  it('changes the one whose id is its tag', () => {
    const { check } = checkOf(
      own({ tag: 'fillLevel -Y11', readings: 12, point: 'hold', conditions: ['lamps lit'] }),
      'fillLevel -Y11',
    );
    expect(check).toMatchObject({ readings: 12, point: 'hold', ownConditions: ['lamps lit'] });
    expect(check.limits[0]?.figure.path).toBe('/line/formats/0/level');
  });

  it('is added where no other has its id, and left out on other floors', () => {
    const one = { tag: 'LAMPS', name: 'lamps of the panel', on: ['+FILL'], floors: ['LARKMOOR'] };
    expect(checkOf(own(one), 'LAMPS').check).toMatchObject({ sort: 'own', name: 'lamps of the panel' });
    expect(ids(own({ ...one, floors: ['OXBOW'] }))).not.toContain('LAMPS');
  });

  it('of a sort changes every one of it, each keeping its own things', () => {
    const { checks } = own({
      tag: 'LEVELS',
      sort: 'fillLevel',
      readings: 20,
      point: 'hold',
      name: 'x',
      on: ['+CAP'],
    });
    const levels = checks.filter(({ check }) => check.sort === 'fillLevel');
    expect(levels).toHaveLength(4);
    for (const { check } of levels) {
      expect([check.readings, check.point, check.name, check.on]).toEqual([
        20,
        'hold',
        undefined,
        [check.id.slice(10)],
      ]);
    }
    expect(
      own({ tag: 'NONE', sort: 'effect', floors: ['OXBOW'] }).checks.some(
        ({ check }) => check.sort === 'effect',
      ),
    ).toBe(false);
    expect(checkOf(own({ tag: 'LAMPS', stage: 'signals' }), 'LAMPS').check.stage).toBe('signals');
  });
});

describe('a check that asks for a number', () => {
  const limitsOf = (id: string, book = demo) => {
    const { check } = checkOf(floorOf(proofOf(book), 'LARKMOOR'), id);
    return { values: check.limits.map(({ sense, figure }) => [sense, figure.value]), missing: check.missing };
  };

  it('of a bond is what its copper and contacts have: 1.2 m of 16 mm2, by hand', () => {
    const bond = `/line/joins/${(demo.line?.joins ?? []).findIndex(({ tag }) => tag === 'J-2')}`;
    // 0.01724 ohm mm2/m * 1.2 / 16 + 0.01
    expect(limitsOf('bond J-2')).toEqual({ values: [['most', expect.closeTo(0.011293, 9)]], missing: [] });
    expect(limitsOf('bond J-2', demoWith({ path: `${bond}/length`, value: undefined })).missing).toEqual([
      `${bond}/length`,
    ]);
    expect(
      limitsOf('bond J-2', demoWith({ path: '/agreement/electrical', value: { ruleSet: 'the usual' } }))
        .missing,
    ).toEqual(['/agreement/electrical/ruleSet']);
  });

  it('of the insulation is 1 Mohm for each power circuit', () => {
    expect(limitsOf('insulation').values).toEqual([['least', 1e6]]);
    // four motors, a heater and a load
    expect(checkOf(larkmoor, 'insulation').check.readings).toBe(6);
  });

  it('of noise and residue is what was agreed, and asked for where nothing was', () => {
    expect(limitsOf('noise')).toEqual({ values: [['most', undefined]], missing: ['/agreement/noiseLevel'] });
    expect(limitsOf('noise', demoWith({ path: '/agreement/noiseLevel', value: '82 dB(A)' })).values).toEqual([
      ['most', 82],
    ]);
    expect(limitsOf('rinseResidue +WASH.Z4').missing).toEqual(['/agreement/hygiene/residue']);
    expect(
      limitsOf('rinseResidue +WASH.Z4', demoWith({ path: '/agreement/hygiene/residue', value: '50 mg/L' }))
        .values,
    ).toEqual([['most', 0.05]]);
  });

  it('of what a bottle carries on is what the book takes the rinses by', () => {
    expect(limitsOf('carryOver +WASH').values).toEqual([['most', 6e-6]]);
  });

  it('of a closure is the range of torque in which it goes on and comes off; one number is none', () => {
    const [at] = (demo.line?.formats ?? []).flatMap(({ tag }, i) => (tag === 'FLAGON-2L' ? [i] : []));
    const path = `/line/formats/${at}/applicationTorque`;
    for (const field of ['applicationTorque', 'removalTorque']) {
      const said = demoWith({ path: `/line/formats/${at}/${field}`, value: '1.2 to 1.8 N m' });
      expect(limitsOf(`${field} FLAGON-2L`, said).values).toEqual([
        ['least', 1.2],
        ['most', 1.8],
      ]);
    }
    expect(limitsOf('applicationTorque FLAGON-2L', demoWith({ path, value: '1.5 N m' }))).toEqual({
      values: [],
      missing: [path],
    });
  });

  it('of a drain is the range that the site lets in', () => {
    const drains = larkmoor.checks.filter(({ check }) => check.sort === 'drainAcidity');
    expect(drains).toHaveLength(1);
    for (const { check } of drains) {
      expect(check.limits.map(({ sense, figure }) => [sense, figure.value])).toEqual([
        ['least', 5.5],
        ['most', 10],
      ]);
    }
  });
});
