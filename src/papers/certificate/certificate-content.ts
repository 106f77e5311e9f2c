import { checkSentences, type FloorProof, type Gate, type Lack, lackNames } from '../../proof/index.ts';
import { settingNames } from '../../proof/settings/index.ts';
import { type BookQuantity, readEntry } from '../../quantity/index.ts';
import { asWritten } from '../as-written.ts';
import { findingName } from '../finding-texts.ts';
import { type PaperHead, type PaperOptions, paperHead, subtitleOf } from '../paper-head.ts';
import type { PaperWords } from '../paper-words.ts';
import { countsLine, headLines } from '../proof-lines.ts';
import type { ProtocolAsked } from '../protocol/protocol-content.ts';
import { sayingOnPaper } from '../protocol/saying-on-paper.ts';

/** Something that stays open while the line is taken over, by its name. */
export interface OpenPoint {
  readonly what: string;
  readonly sort: string;
  readonly holder: string;
}

export interface CertificateContent {
  readonly head: PaperHead;
  readonly title: string;
  readonly subtitle: string;
  readonly declared: string;
  readonly agreed: readonly { readonly what: string; readonly value: string }[];
  readonly counts: string;
  /** Accepted as it is: the check, and why, until when, by whom. */
  readonly conceded: readonly { readonly what: string; readonly why: string }[];
  readonly open: readonly OpenPoint[];
  readonly signed: readonly { readonly by: string; readonly what: string; readonly record: string }[];
  readonly heads: readonly string[];
  readonly words: Readonly<Record<string, string>>;
}

const agreedOf = (paper: PaperWords): CertificateContent['agreed'] => {
  const { book, say } = paper;
  const { rates, acceptanceRun } = book.agreement ?? {};
  const nameOf = (tag: string): string => book.line?.formats?.find((one) => one.tag === tag)?.name ?? tag;
  const text = (value: unknown): string => {
    const inner = typeof value === 'object' && value !== null ? (value as { value?: unknown }).value : value;
    return inner === undefined ? '' : asWritten(String(inner), paper);
  };
  const rateText = (rate: BookQuantity): string => {
    const read = readEntry(rate, 'rate', { path: '' });
    return read.ok ? paper.quantity(read.value.value, 'rate').text : text(rate);
  };
  return [
    ...(rates ?? []).map(({ format, rate }) => ({
      what: say('certificate.rate', { format: nameOf(format) }),
      value: rate === undefined ? '' : rateText(rate),
    })),
    ...(acceptanceRun === undefined ? [] : [{ what: say('certificate.run'), value: text(acceptanceRun) }]),
  ].filter(({ value }) => value !== '');
};

const nameOf = (
  { proof, floor, assessed }: ProtocolAsked,
  checks: ReturnType<typeof checkSentences>,
  paper: PaperWords,
): ((lack: Lack) => string) => {
  const own = assessed.find((one) => one.floor === floor.floor);
  return lackNames(proof, floor, {
    say: paper.say,
    number: (value) => paper.number(value, 5),
    checks,
    place: paper.place,
    finding: (id) => (own === undefined ? id : findingName(id, own, paper)),
    setting: settingNames(paper.book, paper.say),
  });
};

const gateOf = ({ gates }: FloorProof): Gate | undefined => gates.at(-1);

/** Everything that stands on the certificate of a floor's last gate. */
export const certificateContent = (
  asked: ProtocolAsked,
  options: PaperOptions,
  paper: PaperWords,
): CertificateContent => {
  const { say, book } = paper;
  const { floor, heads } = asked;
  const names = checkSentences(book, sayingOnPaper(paper));
  const lackName = nameOf(asked, names, paper);
  const gate = gateOf(floor);
  const { builder, customer } = book.about ?? {};
  const keys = [
    'agreed',
    'conceded',
    'open',
    'open.none',
    'open.what',
    'open.holder',
    'signed',
    'signed.none',
    'sign',
    'sign.builder',
    'sign.site',
    'sign.name',
    'sign.signature',
    'sign.day',
    'heads',
    'heads.why',
    'caution',
  ];
  return {
    head: { ...paperHead(say('certificate.title'), options, paper), caution: say('certificate.foot') },
    title: say('certificate.of', {
      gate: say(gate === undefined ? 'certificate.title' : `proof.gate.${gate.gate}`),
      floor: floor.name,
    }),
    subtitle: subtitleOf(paper),
    declared: say('certificate.declared', {
      builder: builder ?? say('certificate.builder'),
      customer: customer ?? say('certificate.customer'),
      floor: floor.name,
    }),
    agreed: agreedOf(paper),
    counts: countsLine(floor, paper),
    conceded: floor.checks
      .filter(({ state }) => state === 'concession')
      .map((one) => ({ what: names.name(one.check), why: names.why(one) })),
    open: (gate?.lacks ?? []).map((lack) => ({
      what: lackName(lack),
      sort: say(`proof.lack.${lack.sort}`),
      holder: say(`proof.holder.${lack.holder}`),
    })),
    signed: (gate?.signed === undefined ? [] : [gate.signed]).map(({ by, role, record }) => ({
      by,
      what: say(gate?.passed === true ? 'certificate.whole' : 'certificate.part', { role }),
      record,
    })),
    heads: headLines(heads, paper),
    words: {
      ...Object.fromEntries(keys.map((key) => [key, say(`certificate.${key}`)])),
      care: say('paper.care'),
    },
  };
};
