import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';
import { bookUnits } from '../../book/book-units.ts';
import demoText from '../../book/demo/flagon-line.json?raw';
import { assessBook } from '../../floor/index.ts';
import { packingOf } from '../../packing/packing-of.ts';
import { proofOfBook } from '../../proof/index.ts';
import { settingRegister } from '../../proof/settings/index.ts';
import { importRecords } from '../../record/record-file.ts';
import { trialsOf } from '../../record/trials.ts';
import { fillOf } from '../fill/fill-of.ts';
import { makeTypesetter } from '../frame/typst-compiler.ts';
import { makePaperWords } from '../paper-words.ts';
import { facing } from '../prediction/prediction-content.ts';
import { findingsOfTrades, preparationOf } from '../preparation/preparation-of.ts';
import { printCertificate } from '../print-certificate.ts';
import { printDossier } from '../print-dossier.ts';
import { bookOf, date, hash } from '../testing/books.ts';
import { fontsOf, outside, type ReadPdf, readPdf } from '../testing/read-pdf.ts';
import { makeCitations } from '../workings/citations.ts';
import { findingsOfDossier } from './findings-of-dossier.ts';

const typesetter = makeTypesetter();
const demo = bookOf(demoText);
const paper = makePaperWords(demo, bookUnits(demo, undefined), 'en');
const file = importRecords(readFileSync('examples/records/protocol.records', 'utf8'));
if (!file.ok) throw new Error(JSON.stringify(file.problems));
const { records, heads } = file.value;
const assessment = assessBook(demo);
const proof = proofOfBook(demo, assessment, records);
const protocols = proof.floors.map((floor) => ({ proof, floor, assessed: assessment.floors, heads }));
const register = settingRegister(demo, assessment, records);
const options = { date, hash, page: 'a4' as const };

const citations = makeCitations(facing(assessment.floors), paper);

const bytes = printDossier(
  {
    citations,
    assessment,
    remedies: [],
    preparations: assessment.floors.map(({ floor }) =>
      preparationOf(assessment, floor, [], paper, citations),
    ),
    protocols,
    card: { register, floor: assessment.floors.at(-1)! },
    fill: {
      fill: fillOf(demo, assessment.floors.at(-1)!, register, records),
      trials: trialsOf(records),
      heads,
    },
    packing: packingOf(demo, assessment, 'LARKMOOR', records),
    joined: { records, pictures: new Map(), floor: 'Larkmoor' },
  },
  options,
  paper,
  typesetter,
);

describe('the dossier', () => {
  let pdf: ReadPdf;
  beforeAll(async () => {
    pdf = await readPdf(bytes);
  }, 60_000);

  it('holds every paper, named in its list of contents and its bookmarks', () => {
    expect(pdf.pages.length).toBeGreaterThanOrEqual(40);
    const contents = pdf.pages[0]!.text;
    for (const name of ['Protocol, Oxbow', 'Protocol, Larkmoor', 'Settings', 'Electrician, Larkmoor']) {
      expect(contents).toContain(name);
      expect(pdf.bookmarks.filter((mark) => mark.startsWith(name))).not.toEqual([]);
    }
  });

  it('numbers the checks of each protocol from one', () => {
    const starts = pdf.items.filter(({ text }) => text === '1');
    expect(starts.length).toBeGreaterThanOrEqual(protocols.length);
  });

  it('carries its fonts, and nothing stands out of a page', () => {
    const { described, within } = fontsOf(bytes);
    expect(described).toBeGreaterThan(0);
    expect(within).toBe(described);
    // the card has a narrower margin of its own
    const card = pdf.pages.findIndex(({ text }) => text.includes('Counts of the lanes')) + 1;
    expect(outside(pdf).filter(({ page }) => page !== card)).toEqual([]);
    expect(pdf.text).not.toMatch(/\b(?:dossier|certificate|protocol|paper)\.[a-z]|\{[a-z]+\}|undefined|NaN/);
  });
});

describe('what would carry it', () => {
  it('is looked for in the binder wherever a paper alone looks for it', () => {
    for (const floor of assessment.floors) {
      const bound = findingsOfDossier(floor);
      const alone = [...floor.findings, ...findingsOfTrades(floor)];
      expect(alone.filter((one) => !bound.includes(one)).map(({ id }) => id)).toEqual([]);
      expect(new Set(bound).size).toBe(bound.length);
    }
  });
});

describe('the certificate', () => {
  it('names every point that stays open at the last gate, and who signed', async () => {
    const asked = protocols.find(({ floor }) => floor.floor === 'LARKMOOR')!;
    const { text } = await readPdf(printCertificate(asked, options, paper, typesetter));
    const gate = asked.floor.gates.at(-1)!;
    expect(gate.lacks.length).toBeGreaterThan(0);
    const rows = text.match(/(?:builder|site)\n/g) ?? [];
    expect(rows.length).toBeGreaterThanOrEqual(gate.lacks.length);
    expect(text).toContain(paper.say(`proof.gate.${gate.gate}`));
    expect(text).toContain('overload dial, wash pump -M2');
    expect(text).not.toMatch(/\b(?:throttleOut|changePart|airRegulator)\b/);
    for (const head of heads) expect(text).toContain(head.hash);
  });
});
