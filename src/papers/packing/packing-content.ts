import type { Claim } from '../../packing/claims.ts';
import type { Lift } from '../../packing/lifts.ts';
import { type PackedCrate, thingText } from '../../packing/packing-list.ts';
import type { Packing } from '../../packing/packing-of.ts';
import type { VisitTool } from '../../packing/visit-tools.ts';
import { readEntry } from '../../quantity/index.ts';
import { utilityName } from '../../text/words/utility-name.ts';
import { asWritten } from '../as-written.ts';
import { askedText, figureText, hasText, utilityVerdictText } from '../finding-texts.ts';
import { type PaperHead, type PaperOptions, paperHead, subtitleOf } from '../paper-head.ts';
import type { PaperWords } from '../paper-words.ts';
import type { Citations, Marks } from '../workings/citations.ts';
import { type DrawnLift, drawnLift } from './drawn-lift.ts';

interface Fact {
  readonly name: string;
  readonly text: string;
  readonly mark?: Marks;
}

interface ItemLine {
  readonly what: string;
  readonly about: string;
  readonly count: string;
  readonly mass: string;
  readonly origin: string;
  readonly value: string;
}

/** What a finding asks, what is there and what that comes to. */
interface AskedLine {
  readonly what: string;
  readonly asked: string;
  readonly has: string;
  readonly mark: Marks;
  readonly verdict: string;
  readonly said: string;
}

/** How one section is lifted and brought in. */
interface LiftPart {
  readonly title: string;
  readonly lifting: string;
  readonly drawing?: DrawnLift;
  readonly undrawn: string;
  readonly figures: readonly Fact[];
  readonly gear: readonly string[];
  readonly lines: readonly AskedLine[];
}

interface CratePart {
  readonly title: string;
  readonly facts: readonly Fact[];
  readonly told: readonly string[];
  readonly items: readonly ItemLine[];
  readonly dangerous: readonly (readonly string[])[];
  readonly lifts: readonly LiftPart[];
}

export interface PackingContent {
  readonly head: PaperHead;
  readonly subtitle: string;
  readonly about: string;
  readonly told: readonly string[];
  readonly crates: readonly CratePart[];
  /** Sections that are in no crate. */
  readonly lifts: readonly LiftPart[];
  readonly temporary: readonly { readonly crate: string; readonly line: ItemLine }[];
  readonly tools: readonly { readonly tool: string; readonly own: string; readonly why: string }[];
  readonly words: Readonly<Record<string, string>>;
}

const wordKeys = [
  'care.lift',
  'care.papers',
  'contents',
  'what',
  'count',
  'mass',
  'origin',
  'value',
  'dangerous',
  'un',
  'shipping',
  'class',
  'group',
  'amount',
  'temporary',
  'temporary.about',
  'crate',
  'lift',
  'gear',
  'on',
  'asked',
  'has',
  'verdict',
  'tools',
  'tools.about',
  'tool',
  'own',
  'why',
  'none',
  'rigger',
  'packed',
  'name',
  'signature',
  'day',
  'centre',
] as const;

/** A quantity of the book in the units of the reader; what can't be read stands as it was typed. */
const quantityText = (
  given: unknown,
  kind: 'mass' | 'length',
  { utility }: PaperWords,
): string | undefined => {
  if (given === undefined) return undefined;
  const read = readEntry(given as string, kind, { path: '' });
  return read.ok ? utility(read.value.value, kind) : String(given);
};

const itemLine = (item: NonNullable<PackedCrate['crate']['items']>[number], paper: PaperWords): ItemLine => {
  const { what, describes, as, format, count, serial, mass, origin, value, tariff, note } = item;
  const { say, sayOr, book } = paper;
  return {
    what: what ?? (describes === undefined ? '' : thingText(book, describes)),
    about: [
      ...(as === undefined ? [] : [sayOr(`packing.as.${as}`, as)]),
      ...(format === undefined ? [] : [thingText(book, format)]),
      ...(what === undefined || describes === undefined ? [] : [describes]),
      ...(serial === undefined ? [] : [say('paper.serial', { serial })]),
      ...(tariff === undefined ? [] : [say('packing.tariff', { tariff })]),
      ...(note === undefined ? [] : [note]),
    ].join(', '),
    count: count === undefined ? '' : String(count),
    mass: quantityText(mass, 'mass', paper) ?? '',
    origin: origin ?? '',
    value: value ?? '',
  };
};

const itemsOf = ({ crate }: PackedCrate, paper: PaperWords): readonly ItemLine[] => {
  const { holds = [], items = [], contents = [] } = crate;
  const described = new Set(items.map(({ describes }) => describes));
  const plain = (what: string): ItemLine => ({
    what,
    about: '',
    count: '',
    mass: '',
    origin: '',
    value: '',
  });
  return [
    ...holds.filter((tag) => !described.has(tag)).map((tag) => plain(thingText(paper.book, tag))),
    ...items.map((item) => itemLine(item, paper)),
    ...contents.map(plain),
  ];
};

const factsOf = ({ crate, added }: PackedCrate, mark: Marks, paper: PaperWords): readonly Fact[] => {
  const { say, utility } = paper;
  const size = [crate.length, crate.width, crate.height].map((one) => quantityText(one, 'length', paper));
  const indicators = (crate.indicators ?? [])
    .map(({ kind, number, limit, side }) =>
      [say(`packing.indicator.${kind}`), number, limit, side].filter(Boolean).join(', '),
    )
    .join('; ');
  const facts: readonly (readonly [string, string | undefined, Marks?])[] = [
    ['kind', crate.kind === undefined ? undefined : say(`packing.kind.${crate.kind}`)],
    ['size', size.includes(undefined) ? undefined : size.join(' × ')],
    ['gross', quantityText(crate.mass, 'mass', paper)],
    ['tare', quantityText(crate.tare, 'mass', paper)],
    ['added', added === undefined ? undefined : utility(added.value, 'mass'), mark],
    ['origin', crate.origin],
    ['value', crate.value],
    ['wood', crate.wood],
    ['moisture', crate.moisture],
    ['frost', crate.frost],
    ['seal', crate.seal],
    ['indicators', indicators === '' ? undefined : indicators],
  ];
  return facts.map(([key, text, working = []]) => ({
    name: say(`packing.fact.${key}`),
    text: asWritten(text ?? '', paper),
    mark: working,
  }));
};

const claimText = (claim: Claim | undefined, { say, day, book }: PaperWords): string => {
  const days = book.line?.transport?.claimDays;
  if (days === undefined) return say('packing.claim.unknown');
  if (claim?.last === undefined) return say('packing.claim.days', { days });
  const parts = {
    day: day(claim.last),
    received: day(claim.received ?? ''),
    days,
  };
  return say(claim.planned ? 'packing.claim.planned' : 'packing.claim', parts);
};

const liftPart = (lift: Lift, { floor }: Packing, citations: Citations, paper: PaperWords): LiftPart => {
  const { section, legs, figures, route, drawing } = lift;
  const { say } = paper;
  const mark = (working: number | undefined): Marks => citations.mark(floor.floor, working);
  const figure = (id: string) => figures.find((one) => one.id === id)?.figure;
  const text = (id: string): string => {
    const found = figure(id);
    return found === undefined ? say('paper.unknown') : figureText(found, paper);
  };
  const legTexts = [
    ['slingFirst', 'slingTensionFirst'],
    ['slingSecond', 'slingTensionSecond'],
  ].map(([length = '', pull = '']) => say('packing.leg', { length: text(length), pull: text(pull) }));
  const lineOf = (finding: Lift['route'][number], name: string): AskedLine => ({
    what: name,
    asked: askedText(finding, paper),
    has: hasText(finding, paper),
    mark: mark(finding.have.working ?? finding.demand.working),
    verdict: finding.verdict,
    said: utilityVerdictText(finding, paper),
  });
  const title = thingText(paper.book, section.tag);
  return {
    title: say('packing.lift.of', { section: title }),
    lifting: section.lifting ?? '',
    ...(drawing === undefined ? {} : { drawing: drawnLift(drawing, title, legTexts, paper) }),
    undrawn: drawing === undefined ? say('packing.undrawn') : '',
    figures: [
      ...(section.mass === undefined
        ? []
        : [{ name: say('packing.mass'), text: quantityText(section.mass, 'mass', paper) ?? '' }]),
      ...figures.map((one) => ({
        name: utilityName(say, `utility.figure.${one.id}`),
        text: figureText(one.figure, paper),
        mark: mark(one.figure.working),
      })),
    ],
    gear: section.sling?.gear ?? [],
    lines: [...(legs === undefined ? [] : [legs]), ...route].map((finding) =>
      lineOf(finding, utilityName(say, `utility.question.${finding.question}`)),
    ),
  };
};

const toldOf = (
  { added, agrees, missing }: PackedCrate,
  claim: string,
  paper: PaperWords,
): readonly string[] => [
  claim,
  ...(agrees === false && added !== undefined
    ? [paper.say('packing.added.other', { added: paper.utility(added.value, 'mass') })]
    : []),
  ...(missing.length === 0
    ? []
    : [paper.say('packing.missing', { places: missing.map(paper.place).join('; ') })]),
];

const riskText = ({ book, say }: PaperWords): string => {
  const { term, place, edition } = book.line?.transport ?? {};
  if (term === undefined) return say('packing.risk.unknown');
  return say('packing.risk', {
    term,
    place: place ?? say('paper.unknown'),
    edition: edition === undefined ? '' : ` (${edition})`,
  });
};

const toolText = ({ tool }: VisitTool, { sayOr }: PaperWords): string =>
  sayOr(`packing.tool.${tool}`, sayOr(`proof.instrument.${tool}`, tool));

/** Everything that stands on the packing and lifting sheet. */
export const packingContent = (
  asked: Packing,
  options: PaperOptions,
  citations: Citations,
  paper: PaperWords,
): PackingContent => {
  const { say, book } = paper;
  const { list, lifts, claims, tools, floor } = asked;
  const names = (tags: readonly string[]): string => tags.map((tag) => thingText(book, tag)).join('; ');
  const claimOf = new Map(claims.map((claim) => [claim.crate, claim]));
  const part = (lift: Lift): LiftPart => liftPart(lift, asked, citations, paper);
  const crated = new Set(list.crates.flatMap(({ crate }) => crate.holds ?? []));
  const carrier = book.line?.transport?.carrier;
  return {
    head: { ...paperHead(say('packing.title'), options, paper), caution: say('packing.foot') },
    subtitle: subtitleOf(paper),
    about: say('packing.about', { floor: floor.name }),
    told: [
      riskText(paper),
      ...(carrier === undefined ? [] : [say('packing.carrier', { carrier })]),
      ...(book.line?.transport?.frost === true ? [say('packing.frost')] : []),
      ...(list.unpacked.length === 0 ? [] : [say('packing.unpacked', { things: names(list.unpacked) })]),
      ...(list.twice.length === 0 ? [] : [say('packing.twice', { things: names(list.twice) })]),
    ],
    crates: list.crates.map((one): CratePart => {
      const { crate, added } = one;
      return {
        title: thingText(book, crate.tag),
        facts: factsOf(one, added === undefined ? [] : citations.mark(floor.floor, added.working), paper),
        told: toldOf(one, claimText(claimOf.get(crate.tag), paper), paper),
        items: itemsOf(one, paper),
        dangerous: (crate.dangerous ?? []).map((row) =>
          (['un', 'name', 'class', 'group', 'amount'] as const).map((key) => row[key] ?? ''),
        ),
        lifts: lifts.filter(({ section }) => crate.holds?.includes(section.tag)).map(part),
      };
    }),
    lifts: lifts.filter(({ section }) => !crated.has(section.tag)).map(part),
    temporary: list.crates.flatMap(({ crate }) =>
      (crate.items ?? [])
        .filter(({ temporary }) => temporary === true)
        .map((item) => ({ crate: crate.tag, line: itemLine(item, paper) })),
    ),
    tools: tools.map((one) => ({
      tool: toolText(one, paper),
      own: names(one.own),
      why: (['checks', 'joins'] as const)
        .filter((of) => one[of].length > 0)
        .map((of) => say(`packing.why.${of}`, { n: one[of].length }))
        .join(', '),
    })),
    words: {
      ...Object.fromEntries(wordKeys.map((key) => [key, say(`packing.${key}`)])),
      care: say('paper.care'),
    },
  };
};
