import { beforeAll, describe, expect, it } from 'vitest';
import { bookUnits } from '../../book/book-units.ts';
import demoText from '../../book/demo/flagon-line.json?raw';
import { assessBook } from '../../floor/index.ts';
import { settingRegister } from '../../proof/settings/index.ts';
import { recorded } from '../../proof/testing/demo-proof.ts';
import { languages } from '../../text/languages/languages.ts';
import { loadTranslation } from '../../text/languages/load-translation.ts';
import { makeTypesetter } from '../frame/typst-compiler.ts';
import { makePaperWords } from '../paper-words.ts';
import { printCard } from '../print-card.ts';
import { printRegister } from '../print-register.ts';
import { bookOf, date, hash } from '../testing/books.ts';
import { outside, overlapping, type ReadPdf, readPdf } from '../testing/read-pdf.ts';

const typesetter = makeTypesetter();
const demo = bookOf(demoText);
const paper = makePaperWords(demo, bookUnits(demo, undefined), 'en');
const assessment = assessBook(demo);
const larkmoor = assessment.floors.find(({ floor }) => floor === 'LARKMOOR')!;
const left = (setting: string, value: string, moment = 'as left', floor = 'LARKMOOR') => ({
  kind: 'setting',
  version: 1,
  body: { setting, floor, moment, value, by: 'the engineer' },
});
const register = settingRegister(
  demo,
  assessment,
  recorded([
    left('preset -Y11 FLAGON-2L', '1187'),
    left('dwell +WASH', '9.8 s', 'run-off', 'OXBOW'),
    left('dwell +WASH', '9.9 s'),
    left('overload -M2', '5.3 A'),
  ]),
);
const noKeys = /\b(?:card|register|setting|paper)\.[a-z]|\{[a-z]+\}|undefined|NaN/;

describe.each(languages)('in %s', (language) => {
  it('the card stays one page, and its pressures beside what they may be', async () => {
    const translation = await loadTranslation(language);
    const words = makePaperWords(demo, bookUnits(demo, undefined), language, translation);
    for (const page of ['a4', 'letter'] as const) {
      const pdf = await readPdf(
        printCard({ register, floor: larkmoor }, assessment.floors, { date, hash, page }, words, typesetter),
      );
      expect(pdf.pages[0]!.text).toContain(words.say('card.signed'));
      expect(pdf.pages[1]!.text).toContain(words.say('workings.title'));
      expect(overlapping(pdf)).toEqual([]);
    }
  });
});

describe.each(['a4', 'letter'] as const)('on %s', (page) => {
  let card: ReadPdf;
  let settings: ReadPdf;
  beforeAll(async () => {
    card = await readPdf(
      printCard({ register, floor: larkmoor }, assessment.floors, { date, hash, page }, paper, typesetter),
    );
    settings = await readPdf(
      printRegister(register, assessment.floors, { date, hash, page }, paper, typesetter),
    );
  });

  it('the card of the operator is one page, and nothing is cut off', () => {
    expect(card.pages[0]!.text).toContain('Set as on this card');
    // what its figures rest on is behind it, for the file
    for (const { text } of card.pages.slice(1)) expect(text).toMatch(/^(?:.|\n){0,200}Workings/);
    expect(card.text).not.toMatch(noKeys);
    const { height } = card.pages[0]!;
    expect(card.items.filter(({ baseline }) => baseline < 20 || baseline > height - 15)).toEqual([]);
    expect(card.text).not.toMatch(/\bsafe(?:ly|ty)?\b/i);
  });

  it('names the strainer of the supply, and how long the line waits when it runs as it should', () => {
    const text = card.text.replace(/\s+/g, ' ');
    expect(text).toContain('strainer of the supply');
    const waits = paper.quantity(larkmoor.hold!.waits, 'time', 2).text.replace(/\s+/g, ' ');
    expect(text).toContain(`Up to ${waits} in every cycle`);
  });

  it('names the working behind a count that has a range, and has it behind the card', () => {
    const [, mark] = /as left\s+\d+ or more\s+(w\d+)/.exec(card.pages[0]!.text) ?? [];
    expect(mark).toBeDefined();
    expect(card.pages[1]!.text).toContain(`${mark} Preset of a lane`);
  });

  it('has of each lane the count that was left there, else that of the book, and says which', () => {
    const text = card.text.replace(/\s+/g, ' ');
    expect(text).toMatch(/-Y11 1187 as left/);
    for (const { lane, preset } of larkmoor.lanes.slice(1)) {
      expect(text).toMatch(new RegExp(`${lane} ${preset} (?:the book|worked out)`));
    }
  });

  it('the register has every row once, the moments beside each other, and marks what lies beyond its range', () => {
    const text = settings.text.replace(/\s+/g, ' ');
    expect(text).toContain('9.8 s 9.9 s');
    expect(text).toContain('5.3 A !');
    expect(text).not.toMatch(noKeys);
    expect(outside(settings)).toEqual([]);
  });
});
