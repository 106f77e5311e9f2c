import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { readTable } from '../table/index.ts';
import { problemsSchema } from './problem-document.ts';
import { settingsSchema } from './settings-document.ts';
import { called, root } from './testing/called.ts';

const demo = join(root, 'src/book/demo/flagon-line.json');
const example = join(root, 'examples/records/settings.records');

/** What the command says of the demonstration book; a sheet may be handed in, and what it writes is kept. */
const call = (argv: readonly string[], sheet?: Uint8Array) =>
  called(['settings', demo, ...argv], { files: sheet === undefined ? {} : { S: sheet } });

describe('settings', () => {
  it('prints the register place by place, with what is allowed and what was read', async () => {
    const { status, out } = await call([]);
    expect(status).toBe(0);
    expect(out).toContain('read at the run-off 0, shipped 0, as left 0.');
    expect(out).toMatch(/overload dial, wash pump -M2 {2,}4 A to 5\.175 A/);
    expect(out).toContain('a competent person under the local code');
  });

  it('shows two moments beside each other: what changed, what hangs on it, what it moves, and what is still bypassed', async () => {
    const { status, out } = await call([example, '--from', 'run-off', '--to', 'as left']);
    expect(status).toBe(1);
    expect(out).toContain('9 settings differ between run-off and as left; 12 the same');
    expect(out).toMatch(/overload dial, wash pump -M2: 4\.5 A → 5\.4 A \(beyond what is allowed\)/);
    expect(out).toContain('why: tripped twice at 60 Hz');
    expect(out).toMatch(/overload dial[\s\S]*?hang on it: [^\n]*current: wash pump -M2/);
    // 80 psi are 5.516 bar: 5.5 bar were set before
    expect(out).toMatch(/air regulator, filler and capper AIR-1: 5\.5 bar → 80 psi/);
    expect(out).toMatch(
      /1 is forced or bypassed and not taken out:\n {2}door-filler-2: filler guard door -S2/,
    );
  });

  it('prints the same as JSON in its published form', async () => {
    const { out } = await call([example, '--from', 'run-off', '--to', 'as left', '--json']);
    const { comparison, rows, bypasses } = settingsSchema.parse(JSON.parse(out));
    expect(comparison?.changed.map(({ setting }) => setting)).toContain('dwell +WASH');
    const moved = comparison?.changed.find(({ setting }) => setting === 'overload -M2')?.moves;
    expect(moved?.map(({ finding }) => finding)).toEqual(['overloadRange -M2']);
    expect(rows.find(({ id }) => id === 'overload -M2')?.at['as left']?.beyond).toBe('most');
    expect(bypasses.map(({ removed }) => removed === undefined)).toEqual([true, false]);
  });

  it('writes a sheet that it reads again with nothing new in it, and takes what was written into it', async () => {
    const { written } = await call([example, '--out', 'settings.xlsx']);
    const bytes = written.get('settings.xlsx')!;
    const back = await call([example, '--sheet', 'S', '--json'], bytes);
    expect(settingsSchema.parse(JSON.parse(back.out)).sheet).toMatchObject({
      taken: [],
      notUnderstood: [],
      unchanged: 21,
      missing: [],
    });
    const read = readTable(bytes);
    const rows = read.ok ? read.value[0]!.rows : [];
    const csv = rows
      .map((cells) => (cells.at(-1) === 'dwell +WASH' ? cells.with(7, '9.6') : cells))
      .map((cells) => cells.map((cell) => `"${cell.replaceAll('"', '""')}"`).join(','))
      .join('\n');
    const changed = await call([example, '--sheet', 'S', '--json'], new TextEncoder().encode(csv));
    expect(settingsSchema.parse(JSON.parse(changed.out)).sheet?.taken).toMatchObject([
      { setting: 'dwell +WASH', moment: 'as left', value: '9.6 s', before: '9800 ms', floor: 'LARKMOOR' },
    ]);
  });

  it('refuses to write over what is no sheet, and a moment that is none', async () => {
    const out = await call(['--out', demo, '--json']);
    expect(out.status).toBe(2);
    expect(problemsSchema.parse(JSON.parse(out.out)).problems[0]?.code).toBe('CLI_OPTION_VALUE');
    expect((await call(['--from', 'yesterday'])).status).toBe(2);
    for (const same of [
      ['--from', 'as left'],
      ['--to', 'run-off'],
      ['--from', 'shipped', '--to', 'shipped'],
    ]) {
      const { status, err } = await call(same);
      expect([status, err]).toEqual([2, expect.stringContaining('it takes another moment than --from')]);
    }
  });
});
