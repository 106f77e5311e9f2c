import { expect, it } from 'vitest';
import { headsOf } from '../record/heads.ts';
import { appended } from '../record/testing/appended.ts';
import { namedHeads } from './named-heads.ts';
import { makePaperWords } from './paper-words.ts';
import { headLines } from './proof-lines.ts';

const paper = makePaperWords({ twinfloor: 1 }, { byKind: {}, system: 'metric' }, 'en');

it('a browser is told by its people and the beginning of its number, a device with a name by that', () => {
  const head = { book: 'b', sequence: 3, hash: '0'.repeat(64) };
  const browser = '0f8fad5b-d9cb-469f-a165-70867728950e';
  const lines = headLines(
    [
      { ...head, writer: browser, people: ['the engineer', 'the witness'] },
      { ...head, writer: browser },
      { ...head, writer: 'oxbow-tablet', people: ['the engineer'] },
    ],
    paper,
  );
  expect(lines[0]).toContain('device 0f8fad5b of the engineer, the witness, number 3');
  expect(lines[1]).toContain('device 0f8fad5b, number 3');
  expect(lines[2]).toContain('oxbow-tablet, number 3');
  for (const line of lines) expect(line).not.toContain(browser);
});

it('the people of a device are those who recorded by it, each once', () => {
  const records = appended(appended(appended([], 'tablet', {}), 'tablet', {}), 'phone', {
    body: { text: 'seen', by: 'the witness' },
  });
  expect(namedHeads(headsOf(records), records).map(({ writer, people }) => [writer, people])).toEqual(
    expect.arrayContaining([
      ['tablet', ['rigger']],
      ['phone', ['the witness']],
    ]),
  );
});
