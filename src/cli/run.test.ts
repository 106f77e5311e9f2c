import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type * as z from 'zod';
import demoText from '../book/demo/flagon-line.json?raw';
import { accept } from '../quantity/problem.ts';
import { assessmentSchema } from './assess-document.ts';
import { commands } from './commands.ts';
import { openedSchema } from './open-document.ts';
import { problemsSchema } from './problem-document.ts';
import { processWorld } from './process-world.ts';
import { run } from './run.ts';
import { sheetListSchema, sheetSchema } from './sheet-document.ts';
import { validationSchema } from './validate-document.ts';
import type { World } from './world.ts';

const root = join(import.meta.dirname, '../..');
const demo = join(root, 'src/book/demo/flagon-line.json');
const pipe = ['density=1 kg/L', 'viscosity=1 mPa s', 'roughness=0.0018 in'];

let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'cli-'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const file = (name: string, content: string | Uint8Array): string => {
  const path = join(folder, name);
  writeFileSync(path, content);
  return path;
};

// one for all calls: each listens to the streams of this process
const own = processWorld({ root, serve: () => Promise.reject(new Error('not asked')) });

const call = async (argv: readonly string[], more: Partial<World> = {}) => {
  let out = '';
  let err = '';
  const world: World = {
    ...own,
    columns: 200,
    // nothing is left behind by a test that does not ask for it
    writeBytes: async (path) => accept(path),
    out: (text) => {
      out += text;
    },
    err: (text) => {
      err += text;
    },
    ...more,
  };
  const status = await run(argv, world);
  return { status, out, err };
};

const parsed = async <S extends z.ZodType>(schema: S, argv: readonly string[]): Promise<z.output<S>> => {
  const { out, err } = await call([...argv, '--json']);
  expect(err).toBe('');
  return schema.parse(JSON.parse(out));
};

describe('help', () => {
  it('names every command with an example, and each command shows its options with one', async () => {
    const { out, status } = await call([]);
    expect(status).toBe(0);
    for (const command of commands) {
      expect(out).toContain(`twinfloor ${command.name}`);
      expect(out).toContain(command.examples[0]);
      const help = await call([command.name, '--help']);
      expect(help.status).toBe(0);
      for (const { name } of command.options) expect(help.out).toContain(`--${name}`);
      expect(help.out).toMatch(/0 fine, 1 a finding is short, .*, 2 bad input/);
      // a key without words would stand there as it is
      expect(help.out).not.toMatch(/\b(?:option|command|cli)\.[a-z]/);
    }
  });

  it('of a sheet shows its inputs with units, formula, limits and source', async () => {
    const { out } = await call(['sheet', 'water/pipe-loss', '--help']);
    for (const part of [
      'Bore',
      'mm',
      'in',
      'US gal/min',
      '\\Delta p',
      'Reynolds',
      'Darcy-Weisbach',
      '≥ 0.1 mm',
    ]) {
      expect(out).toContain(part);
    }
  });

  // these two want a folder of books and have tests of their own
  const ofFiles = commands.filter(({ name }) => name !== 'open' && name !== 'archive');
  it.each(ofFiles.map(({ name, examples }) => [name, examples] as const))(
    'has examples of %s that run',
    async (name, examples) => {
      for (const example of examples) {
        // the whole dossier takes its time and has a test of its own, as what would carry it has
        if (example.includes('<') || example.includes('--paper dossier')) continue;
        const argv = [...example.matchAll(/(?:[^\s"]+|"[^"]*")+/g)].map(([word]) => word.replaceAll('"', ''));
        const { status, err } = await call(
          [
            ...argv.slice(1).filter((word) => word !== '--remedies'),
            // as many shifts as an answer wants take their time too
            ...(name === 'shift' ? ['--shifts', '4'] : []),
          ],
          { cwd: root },
        );
        expect([example, err, status < 2]).toEqual([example, '', true]);
      }
    },
  );
});

describe('a mistyped word', () => {
  it.each([
    [['asess', 'x'], 'There is no command asess. Did you mean assess?'],
    [['assess', demo, '--remedy'], 'Did you mean --remedies?'],
    [['assess', demo, '--port', '1'], 'assess has no option --port. It has: --format'],
    [['assess'], 'assess wants BOOK.json'],
    [['assess', demo, 'more'], 'does not know what to do with more'],
    [['assess', demo, '--floor'], 'The option --floor wants a value'],
    [['assess', demo, '--units', 'feet'], 'The option --units was given feet; it takes metric, us.'],
    [['assess', demo, '--remedies=yes'], 'The option --remedies takes no value'],
    [['assess', demo, '--floor', 'MOON'], 'The book has no floor MOON. It has: OXBOW, LARKMOOR.'],
    [['assess', demo, '--format', 'KEG'], 'The book has no format KEG. It has: FLAGON-2L.'],
    [['sheet', 'water/pipe-los'], 'Did you mean water/pipe-loss?'],
    [['sheet', 'velocity'], 'these speak of it: water/pipe-velocity, '],
    [['sheet', 'zzzzzz'], 'There is no sheet zzzzzz.'],
    [['open', '--port', 'eighty'], 'The option --port was given eighty; it takes 0 to 65535.'],
  ])('%j is answered in a sentence and status 2', async (argv, sentence) => {
    const { status, out, err } = await call(argv);
    expect([status, out]).toEqual([2, '']);
    expect(err).toContain(sentence);
  });
});

describe('a file that is no book', () => {
  it('is told from one that is, by what it is', async () => {
    const cases: [string, string][] = [
      [join(folder, 'nowhere.json'), 'There is no file'],
      [join(folder, 'a', 'b.json'), 'There is no file'],
      [folder, 'is a folder'],
      [file('picture.json', Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 0, 0)), 'is not text: 89 50 4e 47'],
      [file('latin.json', Uint8Array.of(0x22, 0xfc, 0x22)), 'is not text: 22 fc 22'],
      [file('empty.json', ' \n'), 'is empty'],
      [file('broken.json', '{"twinfloor": 1,'), 'line 1'],
      [file('future.json', '{"twinfloor": 7}'), 'version 7'],
      [file('list.json', '[]'), 'no book'],
      [file('wrong.json', demoText.replace('"12 m"', '"12 bar"')), '/floors/0/supply/run/1/length'],
      [file('large.json', Buffer.alloc(50 * 1024 * 1024, '[')), 'holds 50.0 MB'],
    ];
    for (const command of ['validate', 'assess']) {
      for (const [path, words] of cases) {
        const { status, out, err } = await call([command, path]);
        // what is left of a book with a wrong value is assessed all the same
        const left = command === 'assess' && path.endsWith('wrong.json');
        expect([path, status, out !== '']).toEqual([path, 2, left]);
        expect(err).toContain(words);
        expect(err).toContain(path);
        const { problems } = await parsed(problemsSchema, [command, path]);
        expect(problems.length).toBeGreaterThan(0);
        for (const problem of problems) expect(problem.text).not.toMatch(/\{\w+\}|undefined/);
      }
    }
  });

  it('gets every problem at once, each with its place', async () => {
    const text = demoText
      .replace('"12 m"', '"12 bar"')
      .replace('"1 in"', '"wide"')
      .replace('"+WASH",', '"+WISH",');
    const { problems } = await parsed(problemsSchema, ['validate', file('three.json', text)]);
    expect(new Set(problems.map(({ path }) => path)).size).toBeGreaterThan(2);
  });

  it('of any bytes at all ends with status 2 and never with a stack', async () => {
    await fc.assert(
      fc.asyncProperty(fc.uint8Array({ maxLength: 200 }), async (bytes) => {
        const { status, err } = await call(['assess', file('any.json', bytes)]);
        return status === 2 && !err.includes('mistake of its own');
      }),
      { numRuns: 50 },
    );
  });
});

describe('standard input', () => {
  it('stands for the file when it is called -', async () => {
    const bytes = new TextEncoder().encode(demoText);
    const asked: string[] = [];
    const { status, out } = await call(['validate', '-'], {
      readBytes: async (path) => {
        asked.push(path);
        return { ok: true, value: bytes };
      },
    });
    expect([asked, status]).toEqual([['-'], 0]);
    expect(out).toContain('Flagon line 4');
  });
});

describe('validate', () => {
  it('says what a good book is', async () => {
    const document = await parsed(validationSchema, ['validate', demo]);
    expect(document).toMatchObject({ valid: true, title: 'Flagon line 4', floors: ['OXBOW', 'LARKMOOR'] });
  });
});

describe('sheet', () => {
  it('lists every sheet', async () => {
    const { sheets } = await parsed(sheetListSchema, ['sheet']);
    const { out } = await call(['sheet']);
    for (const { sheet } of sheets) expect(out).toContain(sheet);
    expect(sheets.map(({ sheet }) => sheet)).toContain('water/pipe-loss');
  });

  it('takes any unit and answers in the typist’s', async () => {
    const { status, out } = await call([
      'sheet',
      'pipe-loss',
      'flow=12 gal/min',
      'bore=1 1/2 in',
      'length=40 ft',
      ...pipe,
    ]);
    expect(status).toBe(0);
    expect(out).toContain('12 US gal/min');
    expect(out).toMatch(/psi/);
    const metric = await call([
      'sheet',
      'pipe-loss',
      'flow=45.4 L/min',
      'bore=38.1 mm',
      'length=12.2 m',
      'density=1 kg/L',
      'viscosity=1 mPa s',
      'roughness=0.05 mm',
    ]);
    expect(metric.out).toMatch(/bar/);
    expect(metric.out).not.toMatch(/psi/);
    const asked = await call([
      'sheet',
      'pipe-loss',
      'flow=45.4 L/min',
      'bore=38.1 mm',
      'length=12.2 m',
      'density=1 kg/L',
      'viscosity=1 mPa s',
      'roughness=0.05 mm',
      '--units',
      'us',
    ]);
    expect(asked.out).toMatch(/psi/);
  });

  it('gives SI with kind and unit as JSON, whatever was typed', async () => {
    const argv = ['sheet', 'water/pipe-velocity', 'flow=10 US gal/min', 'bore=1 in'];
    const { inputs, outputs } = await parsed(sheetSchema, argv);
    // NIST SP 811 (2008), appendix B.8: 1 gal/min = 6.309 020 E-05 m3/s, 1 in = 2.54 E-02 m (memory)
    expect(inputs).toMatchObject({
      flow: { kind: 'volumeFlow', unit: 'm3/s' },
      bore: { unit: 'm', value: 0.0254 },
    });
    expect('value' in inputs.flow! && inputs.flow.value).toBeCloseTo(6.30902e-4, 9);
    // 10 gal/min through 1 in: 0.408 5 Q/d^2 = 4.085 ft/s, pipe handbooks' formula (memory), rounded constant
    const { velocity } = outputs;
    expect(velocity && 'value' in velocity && Number(velocity.value) / 0.3048).toBeCloseTo(4.085, 3);
  });

  it('reads lists parted by semicolons, commas or repetition, and asks where a comma may mark a decimal', async () => {
    const lists = (bore: string[]) => [
      'sheet',
      'run-loss',
      ...bore,
      'length=1 m;2 m',
      'roughness=0 m;0 m',
      'fittings=0;1',
      'kv=Kv 0;Kv 0',
      'constantLoss=0 bar;0 bar',
      'flow=60 L/min',
      'density=1 kg/L',
      'viscosity=1 cP',
    ];
    const bores: string[][] = [
      ['bore=25 mm;1 in'],
      ['bore=25 mm, 1 in'],
      ['bore=25 mm,1 in'],
      ['bore=25 mm', 'bore=1 in'],
    ];
    for (const bore of bores) {
      const { inputs } = await parsed(sheetSchema, lists(bore));
      expect([bore, inputs.bore]).toMatchObject([bore, { value: [0.025, 0.0254] }]);
    }
    const unclear = lists(['bore=25 mm;1 in']).map((word) => word.replace('fittings=0;1', 'fittings=0,1'));
    const { status, err } = await call(unclear);
    expect(status).toBe(2);
    expect(err).toContain('semicolon');
  });

  it('tells all that is wrong with the inputs, in the units that were typed', async () => {
    const { status, err } = await call(['sheet', 'pipe-loss', 'flow=12 gal', 'length=3 ft', 'bor=1 in', 'x']);
    expect(status).toBe(2);
    expect(err).toContain('a unit of volume; here volume flow is asked');
    expect(err).toContain('bor is no input of this sheet');
    expect(err).toContain('x is not an input');
    const range = await call(['sheet', 'pipe-loss', 'flow=1 gpm', 'bore=0 in', 'length=1 ft', ...pipe]);
    expect(range.err).toMatch(/bore: "0 in" cannot be\. Allowed: ≥ 0\.0039\d* in/);
    const sure = await call(['sheet', 'share-bounds', 'found=4', 'looked=20', 'confidence=1']);
    expect(sure.err).toContain('confidence: "1" cannot be. Allowed: ≥ 0.5, ≤ 0.999999.');
    const twice = await call(['sheet', 'pipe-velocity', 'flow=1 gpm', 'bore=1 in', 'bore=2 in']);
    expect(twice.err).toContain('bore was given twice');
    const between = await call([
      'sheet',
      'pipe-loss',
      'flow=1 gpm',
      'bore=1 in',
      'length=1 ft',
      'roughness=1 in',
      'density=1 kg/L',
      'viscosity=1 cP',
    ]);
    expect(between.err).toContain('roughness cannot be over half of the bore');
  });
});

describe('assess', () => {
  it('ends with 1 because the demo’s builder floor is short, and names what holds it', async () => {
    const { status, out, err } = await call(['assess', demo]);
    expect([status, err]).toEqual([1, '']);
    for (const words of [
      'Oxbow (built on)',
      'Larkmoor (bound for)',
      'running rate',
      'short of',
      'What holds the line',
      'does not judge safety',
    ]) {
      expect(out).toContain(words);
    }
    expect(out).not.toMatch(/NaN|Infinity|undefined|\[object/);
    expect(out.toLowerCase()).not.toMatch(/\bis safe\b|\bsafe to\b/);
  });

  it('ends with 0 where nothing is short', async () => {
    const { floors } = await parsed(assessmentSchema, ['assess', demo]);
    const verdicts = floors.flatMap(({ findings }) => findings.map(({ verdict }) => verdict));
    expect(verdicts).toContain('short');
    const one = await call(['assess', join(root, 'examples/reading.json')]);
    const { floors: others } = await parsed(assessmentSchema, [
      'assess',
      join(root, 'examples/reading.json'),
    ]);
    const short = others.some(({ findings }) => findings.some(({ verdict }) => verdict === 'short'));
    expect(one.status).toBe(short ? 1 : 0);
  });

  it('gives every number as JSON with its kind and SI unit', async () => {
    const document = await parsed(assessmentSchema, ['assess', demo, '--floor', 'LARKMOOR']);
    expect(document.floors.map(({ floor }) => floor)).toEqual(['LARKMOOR']);
    const [floor] = document.floors;
    expect(floor?.figures.manifoldPressure).toMatchObject({ kind: 'gaugePressure', unit: 'Pa' });
    expect(floor?.workings.length).toBeGreaterThan(5);
    for (const { inputs } of floor?.workings ?? []) expect(Object.keys(inputs).length).toBeGreaterThan(0);
    expect(document.caution).toContain('does not judge safety');
  });

  it('tells what would carry a finding: the least that does, and how much the next smaller misses', async () => {
    const argv = ['assess', demo, '--floor', 'LARKMOOR', '--remedies'];
    const { remedies = [] } = await parsed(assessmentSchema, argv);
    const found = remedies.filter(({ changes }) => changes.length > 0);
    expect(found.length).toBeGreaterThan(0);
    for (const { changes, patch, margin } of found) {
      expect(changes[0]?.unit).not.toBe(undefined);
      expect(patch.length).toBeGreaterThan(0);
      expect(margin).toBeGreaterThanOrEqual(0);
    }
    const { out } = await call(argv);
    expect(out).toContain('What would carry it');
    expect(out).toMatch(/the next smaller, .*, (misses|would carry) by [\d.]+ %/);
  }, 240_000);

  it('puts the floors below each other in a narrow terminal', async () => {
    const { out } = await call(['assess', demo], { columns: 80 });
    const heads = out
      .split('\n')
      .filter((line) => line.includes('(built on)') || line.includes('(bound for)'));
    expect(heads.every((line) => !(line.includes('(built on)') && line.includes('(bound for)')))).toBe(true);
  });

  it('prints US units when asked', async () => {
    const { out } = await call(['assess', demo, '--units', 'us']);
    expect(out).toMatch(/psi/);
    expect(out).not.toMatch(/bar\(g\)/);
  });

  it('says that a blank book has no floor yet', async () => {
    const { status, err } = await call(['assess', file('blank.json', '{"twinfloor":1}')]);
    expect(status).toBe(2);
    expect(err).toContain('describes no floor yet');
  });
});

describe('open', () => {
  it('says where, stays until it is stopped, and closes', async () => {
    const seen: unknown[] = [];
    const serve: World['serve'] = async (options) => {
      seen.push(options);
      const value = {
        address: 'http://127.0.0.1:4780/',
        loopback: true,
        kept: options.data,
        close: async () => void seen.push('closed'),
      };
      return { ok: true, value };
    };
    // a signal is listened for before the server starts
    const untilStopped = async () => void seen.push('listens');
    const { status, out } = await call(['open', '--data', folder], { serve, untilStopped });
    expect(status).toBe(0);
    const options = { host: '127.0.0.1', port: 4780, data: folder, allowHosts: [] };
    expect(seen).toEqual(['listens', options, 'closed']);
    expect(out).toContain('http://127.0.0.1:4780/');
    const json = await call(['open', '--json'], { serve, untilStopped });
    expect(openedSchema.parse(JSON.parse(json.out)).kept).toBe(join(root, '.twinfloor'));
  });

  it('passes on why it can’t', async () => {
    const serve: World['serve'] = async () => ({
      ok: false,
      problems: [{ code: 'SERVER_PORT_TAKEN', path: '--port', given: 1 }],
      message: 'Port 1 is in use.',
    });
    expect(await call(['open'], { serve })).toEqual({ status: 2, out: '', err: 'Port 1 is in use.\n' });
  });
});
