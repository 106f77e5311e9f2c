import { describe, expect, it } from 'vitest';
import { foundSheets, sheetSearchText } from './found-sheets.ts';
import { registry } from './registry.ts';

const texts = new Map(
  [...registry.values()].map(({ sheet, text: { en } }) => [
    sheet.id,
    sheetSearchText(sheet, { ...en, outputs: Object.values(en.outputs) }),
  ]),
);

describe('sheets', () => {
  it('are all there where nothing is looked for', () => {
    expect(foundSheets(texts, '  ').size).toBe(registry.size);
  });

  it('are found by words in any order, in small letters and without accents', () => {
    expect([...foundSheets(texts, 'VELOCITY pipe')]).toContain('water/pipe-velocity');
    expect([...foundSheets(texts, 'vélocity')]).toContain('water/pipe-velocity');
    expect([...foundSheets(texts, 'pipe velocity')]).not.toContain('power/largest-start');
  });

  it('are found by how their words begin, and by what is inside them where none begins so', () => {
    const begun = foundSheets(texts, 'act');
    expect(begun).toContain('air/actual-flow');
    for (const id of begun) expect(texts.get(id)).toMatch(/(?<![\p{L}\p{N}])act/u);
    expect(foundSheets(texts, 'onductance')).toContain('air/tube-conductance');
  });

  it('are found by whom they have it from', () => {
    const bySource = foundSheets(texts, '60204-1');
    expect(bySource.size).toBeGreaterThan(0);
    for (const id of bySource) expect(JSON.stringify(registry.get(id)?.sheet.sources)).toContain('60204-1');
  });

  it('are none where one of the words is nowhere', () => {
    expect(foundSheets(texts, 'pipe xyzzy').size).toBe(0);
  });
});
