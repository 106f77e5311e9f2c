import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { readBook } from '../book/index.ts';
import { appendRecord, startChain } from '../record/append-record.ts';
import { exportRecords } from '../record/record-file.ts';
import { joinsSchema } from './joins-document.ts';
import { problemsSchema } from './problem-document.ts';
import { called, root } from './testing/called.ts';

const demo = join(root, 'src/book/demo/flagon-line.json');
const wires = join(root, 'examples/joins/wires.csv');

/** What the command says of the demonstration book, with files that a test hands in and takes back. */
const call = async (argv: readonly string[], files: Record<string, string> = {}) => {
  const { written, ...rest } = await called(['joins', demo, ...argv], { files });
  const texts = [...written].map(([path, bytes]) => [path, new TextDecoder().decode(bytes)] as const);
  return { ...rest, written: Object.fromEntries<string>(texts) };
};

/** Records of as many phones that did not know of each other. */
const apart = (kind: 'join' | 'placement', version: number, bodies: readonly object[]): string =>
  exportRecords(
    'flagon-line',
    bodies.map((body, i) => {
      const done = appendRecord(startChain('flagon-line', `phone-${i}`), {
        id: `r${i}`,
        revision: 1,
        kind,
        version,
        deviceTime: '2027-04-20T09:00:00Z',
        body: { by: 'the electrician', follows: [], ...body },
      });
      if (!done.ok) throw new Error(JSON.stringify(done.problems));
      return done.value.record;
    }),
  );

const told = (...bodies: readonly object[]): string => apart('join', 2, bodies);

const plain = await call(['--json']);
const document = joinsSchema.parse(JSON.parse(plain.out));

describe('joins', () => {
  it('finds the one trouble of the demonstration list, with both ends of both joins', () => {
    expect(plain.status).toBe(1);
    expect(document.faults.map(({ code }) => code)).toEqual(['JOIN_TERMINAL_FULL']);
    expect(document.faults[0]?.text).toBe(
      'X2:23 is made for 1 and 2 end in it. J-18: X2:23 (+JB2), X1:23 (+JB1); J-19: X2:23 (+JB2), X1:24 (+JB1).',
    );
  });

  it('prints the order of the rebuild by stage and box, and what keeps a box from being energised', async () => {
    const { out, err } = await call([]);
    expect(err).toBe('');
    expect(out).toContain('50 joins: 27 conductors, 1 bond, 6 tubes');
    const order = [
      'Set down',
      'Level it',
      'Align',
      'Bonds',
      'Drains',
      'Water',
      'Air',
      'Electric power',
      'Signals',
      'Guards',
    ];
    const places = order.map((stage) => out.indexOf(`\n${stage}`));
    expect(places).toEqual(places.toSorted((a, b) => a - b));
    expect(out).toMatch(/Way between boxes in all: [\d.]+\sm, in straight lines\./);
    expect(out).toMatch(/\+JB3: bond not tested 1 \(J-2\); not made 7/);
    expect(out).toContain('decided by the qualified person');
    expect(out).not.toMatch(/\bsafe\b|\bjoins\.[a-z]|\{[a-z]+\}/i);
    const box = await call(['--box', '+JB3']);
    expect(box.out).toMatch(/Electric power: 3 joins\n {2}in \+JB3\n/);
    expect(box.out).not.toContain('in +JB2');
  });

  it('lifts what keeps a box from being energised by records, and shows two that differ', async () => {
    const { out, status } = await call(['R'], {
      R: told(
        { join: 'J-2', state: 'tested', method: 'continuity', reading: '0.02 ohm' },
        { join: 'J-4', state: 'made' },
        { join: 'J-4', state: 'trouble', remark: 'core broken' },
      ),
    });
    expect(status).toBe(1);
    expect(out).toMatch(/J-2 .* tested +continuity 0\.02 ohm/);
    expect(out).toMatch(/J-4 .* recorded differently by two/);
    expect(out).not.toContain('bond not tested');
    expect(out).toMatch(/\+JB2: fault of the list 2 \(J-18, J-19\); trouble 1 \(J-4\); not made 19 \(J-1/);
  });

  it('tells which ends lie on the photographs of a box, each place of one box, and what two placed apart', async () => {
    const at = (...points: readonly (readonly [string, number])[]): object => ({
      picture: 'ab'.repeat(32),
      box: '+JB2',
      points: points.map(([join, x]) => ({ join, side: 'to', x, y: 0.5 })),
    });
    const R = apart('placement', 1, [at(['J-1', 0.25], ['J-4', 0.3]), at(['J-4', 0.6])]);
    const all = await call(['R'], { R });
    expect(all.out).toMatch(
      /\+JB2: 2 of \d+ ends on 1 photograph\. Placed apart by two, to be placed anew: J-4\.\n/,
    );
    expect(all.out).not.toContain('from the left');
    const box = await call(['R', '--box', '+JB2'], { R });
    expect(box.out).toMatch(/J-1 .* abababababab +25\.0 % from the left, 50\.0 % from the top\n/);
    const { photographs } = joinsSchema.parse(JSON.parse((await call(['R', '--json'], { R })).out));
    expect(photographs).toMatchObject([
      {
        box: '+JB2',
        ends: [
          { join: 'J-1', x: 0.25, conflict: false },
          { join: 'J-4', conflict: true, records: ['r0', 'r1'] },
        ],
      },
    ]);
    const unknown = await call(['R'], { R: apart('placement', 1, [at(['J-99', 0.5])]) });
    expect([unknown.status, unknown.err]).toEqual([2, expect.stringContaining('J-99')]);
  });

  it('finds the join of a code, or says that it is mistyped and offers the nearest', async () => {
    const { code } = document.joins[3]!;
    expect(await call(['--code', code.toLowerCase()])).toMatchObject({ status: 0, out: `${code} is J-4\n` });
    const slip = `${code.slice(0, -1)}${code.endsWith('2') ? '3' : '2'}`;
    const mistyped = await call(['--code', slip]);
    expect(mistyped.status).toBe(1);
    expect(mistyped.out).toContain(`${slip} is mistyped or misread. Near it: ${code} (J-4)`);
  });

  it('reads a wire list in German, tells the row without ends, and writes book and columns where that is asked', async () => {
    const loose = `${readFileSync(wires, 'utf8')}145;;;W14;5;blau;1,0 mm2;ohne Ziel;\n`;
    const looked = await call(['--list', 'L', '--split', 'SP1'], { L: loose });
    expect(looked.status).toBe(2);
    expect(looked.out).toContain('4 of 5 rows read, 0 of them joins that the book has.');
    expect(looked.out).toMatch(/Querschnitt +size +guessed/);
    expect(looked.out).toContain('Row 8 names neither of its ends.');
    expect(looked.written).toEqual({});
    const { written } = await call(['--list', wires, '--split', 'SP1', '--write', '--remember', 'C']);
    const book = readBook(written[demo]);
    expect(book.ok && book.value.line?.joins?.at(-1)).toMatchObject({
      tag: 'J-144',
      from: 'X1:44',
      cable: 'W14',
    });
    expect(JSON.parse(written.C ?? '')).toMatchObject({ von: 'from', querschnitt: 'size' });
    const again = await call(['--list', wires, '--columns', 'C'], { C: written.C ?? '' });
    expect(again.out).toMatch(/Querschnitt +size +remembered/);
  });

  it('takes the example of a rebuild half-way: a box of which all is recorded, and the rest', async () => {
    const { status, out, err } = await call([join(root, 'examples/records/joins.records')]);
    expect([status, err]).toEqual([1, '']);
    expect(out).toContain('+JB3: everything that is asked for here is recorded');
    expect(out).toMatch(/\+JB2: fault of the list 2 \(J-18, J-19\); trouble 1 \(J-4\)/);
  });

  it('refuses what it can’t read, and tells records of joins that the book has not', async () => {
    const codes = async (argv: readonly string[], files: Record<string, string> = {}) => {
      const { status, out } = await call([...argv, '--json'], files);
      expect(status).toBe(2);
      return problemsSchema.parse(JSON.parse(out)).problems.map(({ code }) => code);
    };
    expect(await codes(['--box', '+JB9'])).toEqual(['CLI_OPTION_VALUE']);
    expect(await codes(['--tab', 'Wires'])).toEqual(['CLI_OPTION_WANTS_LIST']);
    expect(await codes(['--list', 'L'], { L: 'a,b\n1,2\n' })).toEqual(['JOIN_LIST_NO_HEADER']);
    expect(await codes(['--list', wires, '--columns', 'C'], { C: '{"von":"door"}' })).toEqual([
      'JOIN_COLUMNS_UNREADABLE',
    ]);
    expect(await codes(['--list', wires, '--tab', 'Wires'])).toEqual(['JOIN_LIST_TAB_UNKNOWN']);
    expect(await codes(['R'], { R: told({ join: 'J-99', state: 'made' }) })).toEqual(['JOIN_UNKNOWN']);
    expect(await codes(['R'], { R: readFileSync(demo, 'utf8') })).toEqual(['RECORD_FILE_UNREADABLE']);
  });
});
