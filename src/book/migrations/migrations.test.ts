import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readBook } from '../read-book.ts';
import { bookVersion } from '../schema/book.ts';
import { migrated, migrations } from './index.ts';

const folder = 'src/book/migrations/stored';
const stored = (version: number): string => readFileSync(`${folder}/version-${version}.json`, 'utf8');

describe('migrations', () => {
  it('lead from the first version to the last without a gap', () => {
    expect(migrations.map(({ from }) => from)).toEqual(Array.from({ length: bookVersion }, (_, i) => i));
  });

  it('have a stored book of every version, and each of them still reads', () => {
    const versions = Array.from({ length: bookVersion + 1 }, (_, i) => i);
    expect(readdirSync(folder).sort()).toEqual(versions.map((version) => `version-${version}.json`).sort());
    for (const version of versions) {
      expect((JSON.parse(stored(version)) as { twinfloor: number }).twinfloor).toBe(version);
      const read = readBook(stored(version));
      expect(read.ok ? [] : read.problems).toEqual([]);
      expect(read.ok && read.value.twinfloor).toBe(bookVersion);
    }
  });

  it('0 to 1 turns the roles of the draft into those of the trade and keeps all else in its order', () => {
    const read = readBook(stored(0));
    const before = JSON.parse(stored(0)) as Record<string, unknown>;
    expect(read.ok && read.value.floors?.map(({ role }) => role)).toEqual(['built on', 'bound for', 'other']);
    expect(read.ok && Object.keys(read.value)).toEqual(Object.keys(before));
    expect(read.ok && read.value.line).toEqual(before.line);
  });

  it('never throw, whatever the data are, so that what is wrong can be told', () => {
    for (const floors of [null, {}, [null], [1, []], [{ role: {} }], [{ role: 'toString' }]]) {
      for (const { from } of migrations)
        expect(() => migrated({ twinfloor: from, floors }, from)).not.toThrow();
      expect(readBook({ twinfloor: 0, floors }).ok).toBe(false);
    }
  });
});
