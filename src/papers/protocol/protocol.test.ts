import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';
import { bookUnits } from '../../book/book-units.ts';
import demoText from '../../book/demo/flagon-line.json?raw';
import { assessBook } from '../../floor/index.ts';
import { checkSentences, proofOfBook } from '../../proof/index.ts';
import { importRecords } from '../../record/record-file.ts';
import { makeTypesetter } from '../frame/typst-compiler.ts';
import { makePaperWords } from '../paper-words.ts';
import { printProtocol } from '../print-protocol.ts';
import { bookOf, date, hash } from '../testing/books.ts';
import { outside, type ReadPdf, readPdf } from '../testing/read-pdf.ts';
import { sayingOnPaper } from './saying-on-paper.ts';

const typesetter = makeTypesetter();
const demo = bookOf(demoText);
const paper = makePaperWords(demo, bookUnits(demo, undefined), 'en');
const file = importRecords(readFileSync('examples/records/protocol.records', 'utf8'));
if (!file.ok) throw new Error(JSON.stringify(file.problems));
const { records, heads } = file.value;
const flat = (text: string): string => text.replace(/\s+/g, ' ');
const unbroken = (text: string): string => text.replace(/\s+/g, '');

const printed = (tag: string, page: 'a4' | 'letter', filled: boolean): Uint8Array => {
  const assessment = assessBook(demo);
  const proof = proofOfBook(demo, assessment, filled ? records : []);
  const floor = proof.floors.find((one) => one.floor === tag)!;
  const asked = { proof, floor, assessed: assessment.floors, heads: filled ? heads : [] };
  return printProtocol(asked, { date, hash, page }, paper, typesetter);
};

describe('the protocol of a floor', () => {
  let blank: ReadPdf;
  let filled: ReadPdf;
  beforeAll(async () => {
    blank = await readPdf(printed('LARKMOOR', 'a4', false));
    filled = await readPdf(printed('OXBOW', 'letter', true));
  });

  it('names every check of the floor with what is to be seen, its limit, and every condition', () => {
    const proof = proofOfBook(demo, assessBook(demo));
    const sentences = checkSentences(demo, sayingOnPaper(paper));
    const text = unbroken(blank.text);
    const { checks } = proof.floors.find(({ floor }) => floor === 'LARKMOOR')!;
    expect(checks.length).toBeGreaterThan(50);
    for (const { check } of checks) {
      expect(text).toContain(unbroken(sentences.name(check)));
      expect(text).toContain(unbroken(sentences.limits(check)));
      for (const { id } of check.under) expect(text).toContain(unbroken(sentences.condition(id)));
    }
  });

  it('has room to write what nobody recorded, and to sign for both sides', () => {
    const text = flat(blank.text);
    expect(text).toContain('not as expected');
    expect(text).toContain('for the builder');
    expect(text).toContain('for the site');
    expect(text).toContain('No record was there when this paper was made.');
    // the folder of a sheet is no promise
    expect(text.replaceAll('safety/', '')).not.toMatch(/\bsafe(?:ly|ty)?\b/i);
  });

  it('says of what was tried its verdict, by whom, and the heads of the records that it was made from', () => {
    const proof = proofOfBook(demo, assessBook(demo), records);
    const { checks } = proof.floors.find(({ floor }) => floor === 'OXBOW')!;
    const tried = checks.filter(({ inForce }) => inForce !== undefined);
    expect(tried.length).toBeGreaterThan(0);
    const text = unbroken(filled.text);
    for (const { inForce, state } of tried) {
      expect(text).toContain(unbroken(paper.say(`proof.state.${state}`)));
      expect(text).toContain(unbroken(inForce!.result.by));
    }
    for (const head of heads) expect(text).toContain(head.hash);
  });

  it('counts bottles where bottles pass, and starts where a machine starts', () => {
    const text = unbroken(blank.text);
    expect(text).toContain(unbroken('at most 20/h'));
    expect(text).not.toContain(unbroken('20 bottles/h'));
  });

  it('stays within the page, and says nothing by its key', () => {
    for (const pdf of [blank, filled]) {
      expect(outside(pdf)).toEqual([]);
      expect(pdf.tagged).toBe(true);
      expect(pdf.text).not.toMatch(/\b(?:protocol|proof|paper)\.[a-z]|\{[a-z]+\}|undefined|NaN/);
    }
  });

  it('is the same to the byte when it is made again', () => {
    expect(Buffer.compare(printed('OXBOW', 'a4', true), printed('OXBOW', 'a4', true))).toBe(0);
  });
});
