import type { Book } from '../book/index.ts';
import type { Assessment } from '../floor/assessment.ts';
import { proofOfRecords, type RecordsInTime } from '../proof/index.ts';
import type { UnitWishes } from '../quantity/unit-choice.ts';
import { headsOfEnds } from '../record/clocked.ts';
import type { Head } from '../record/envelope.ts';
import { fromHex, toHex } from '../record/hex.ts';
import { sha256 } from '../record/sha256.ts';
import type { Translation } from '../text/index.ts';
import { answerPart } from './answer-part.ts';
import { base64 } from './base64.ts';
import { chooseMedia, type LeftOut, mostMediaOfMail } from './choose-media.ts';
import { hatching } from './finding-bar.ts';
import { floorPart } from './floor-part.ts';
import { gatesPart } from './gates-part.ts';
import { escaped, html, type Markup, own } from './markup.ts';
import { punchPart } from './punch-part.ts';
import { recordPart } from './record-part.ts';
import { repliesPart } from './replies-part.ts';
import script from './reply-page/reply-page.ts?inlined';
import { replyPart } from './reply-part.ts';
import type { SeenFile } from './seen-file.ts';
import { makeTelling, type Telling } from './telling.ts';
import style from './witness.css?inlined';

/** What a witness file is made of. */
export interface WitnessInput {
  readonly book: Book;
  /** The name of the book among the records. */
  readonly id: string;
  readonly revision: number;
  /** SHA-256 of the text of the book. */
  readonly hash: string;
  readonly assessment: Assessment;
  /** All records, or what counts of them with as many of the earlier tries as are to be in it. */
  readonly recorded: RecordsInTime;
  /** How many tries came before those, by tryKey; absent, none. */
  readonly triesLeft?: ReadonlyMap<string, number>;
  /** Bytes of pictures, films and sounds by their digest, as many as are at hand. */
  readonly media?: ReadonlyMap<string, Uint8Array>;
  /** The most bytes of them in the file. */
  readonly mostMedia?: number;
  /** Day on which it is made, as 2027-03-08. */
  readonly date: string;
  readonly units: UnitWishes;
  /** What is said in place of the English; absent, the file is English. */
  readonly translation?: Translation | undefined;
}

export interface WitnessFile {
  readonly html: string;
  /** SHA-256 of what it shows: of everything from `<main` to `</main>`. A reply names it. */
  readonly digest: string;
  readonly heads: readonly Head[];
  readonly included: readonly string[];
  readonly leftOut: ReadonlyMap<string, LeftOut>;
}

const utf8 = new TextEncoder();
const digestOf = (text: string): string => toHex(sha256(utf8.encode(text)));
const ending = '</main>';

/** The digest of what a witness file shows; undefined of any other text. */
export const shownDigest = (text: string): string | undefined => {
  const from = text.indexOf('<main>');
  const to = text.indexOf(ending);
  return from < 0 || to < from ? undefined : digestOf(text.slice(from, to + ending.length));
};

/** A source that a policy lets through by the digest of its text. */
const allowed = (text: string): string => `'sha256-${base64(fromHex(digestOf(text)))}'`;

/** Nothing is fetched and nothing is sent; the one script and the one style are those of this file. */
const policyOf = (): string =>
  [
    "default-src 'none'",
    `script-src ${allowed(script)}`,
    `style-src ${allowed(style)}`,
    'img-src data:',
    'media-src data:',
    "base-uri 'none'",
    "form-action 'none'",
  ].join('; ');

/** JSON within a page: no mark of it can end the element that it stands in. */
const jsonText = (value: SeenFile): string => JSON.stringify(value).replaceAll('<', '\\u003c');

/** Letters that turn the direction of what follows: the name of a window has no room for a direction of its own. */
const turning = /[\u200e\u200f\u202a-\u202e\u2066-\u2069]/g;

const headPart = (
  { book, revision, date }: WitnessInput,
  floors: readonly string[],
  { say, language }: Telling,
): Markup => {
  const { title, builder, customer, serial, demonstration } = book.about ?? {};
  const sub = [
    ...(builder === undefined || customer === undefined ? [] : [say('witness.from', { builder, customer })]),
    ...(serial === undefined ? [] : [say('witness.serial', { serial })]),
  ];
  const places: readonly (readonly [string, string])[] = [
    ['answer', say('witness.answer')],
    ...floors.map((name, at) => [`floor-${at}`, name] as const),
    ['gates', say('witness.gates')],
    ['punch', say('witness.punch')],
    ['chains', say('witness.chains')],
    ['reply', say('witness.reply')],
  ];
  return html`<header>
<h1>${own(say('witness.title', { title: title ?? say('witness.untitled') }))}</h1>
<p>${own(sub.join(', '))}</p>
${demonstration !== undefined && html`<p class="quiet">${own(demonstration)}</p>`}
<p>${say('witness.made', { date, revision: String(revision) })} ${say('witness.about')}</p>
${language !== 'en' && html`<p class="caution">${say('witness.unreviewed')}</p>`}<noscript><p class="caution">${say('witness.noScript')}</p></noscript>
<p class="caution">${say('witness.caution')}</p>
<nav aria-label="${say('witness.contents')}"><ul>${places.map(([place, name]) => html`<li><a href="#${place}">${own(name)}</a></li>`)}</ul></nav>
<p><button type="button" id="open-all" hidden>${say('witness.openAll')}</button></p>
</header>
`;
};

/**
 * One file with everything that a witness far away has to see, and a place to answer.
 *
 * Method   HTML with its style and its script inside, and a policy that lets nothing in or out: what people wrote is
 *          escaped by `html` alone. The script signs with a key that it makes there
 * Returns  the file; the same input gives the same bytes
 * Assumes  the records are whole by verifySigned
 * Cost     that of proofOfRecords, then O(records and bytes of media)
 * Source   Content Security Policy Level 3, hashes of inline scripts and styles (memory)
 */
export const makeWitnessFile = (input: WitnessInput): WitnessFile => {
  const { book, assessment, recorded } = input;
  const { records } = recorded;
  const proof = proofOfRecords(book, assessment, recorded);
  const media = chooseMedia(records, proof, input.media ?? new Map(), input.mostMedia ?? mostMediaOfMail);
  const telling = makeTelling(book, input.units, media, input.translation, input.triesLeft);
  const { say } = telling;
  const heads = headsOfEnds(recorded.ends);
  const names = proof.floors.map(({ name }) => name);
  const main = html`<main>
${headPart(input, names, telling)}${answerPart(assessment, telling)}${proof.floors.map((floor, at) =>
  floorPart(floor, at, proof.floors, proof.replies, telling),
)}${gatesPart(proof, records, telling)}${repliesPart(proof.replies, telling)}${punchPart(proof.punch, telling)}${recordPart(heads, telling)}</main>`
    .markup;
  const digest = digestOf(main);
  const title = escaped(
    say('witness.title', { title: book.about?.title ?? say('witness.untitled') }).replace(turning, ''),
  );
  const seen: SeenFile = { book: input.id, revision: input.revision, file: digest, heads };
  return {
    digest,
    heads,
    included: [...media.included.keys()],
    leftOut: media.leftOut,
    html: `<!DOCTYPE html>
<html lang="${telling.language}">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${escaped(policyOf())}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="referrer" content="no-referrer">
<title>${title}</title>
<style>${style}</style>
</head>
<body>
${hatching.markup}
${main}
${replyPart(proof, telling).markup}<footer><p class="quiet">${escaped(say('witness.file', { digest, book: input.hash }))}</p></footer>
<script type="application/json" id="seen">${jsonText(seen)}</script>
<script>${script}</script>
</body>
</html>
`,
  };
};
