import { type CheckSentences, checkSentences, isOver, type PunchPoint } from '../../proof/index.ts';
import type { BookProof, FloorProof } from '../../proof/proof-of-book.ts';
import type { NamedHead } from '../named-heads.ts';
import { type PaperHead, type PaperOptions, paperHead, subtitleOf } from '../paper-head.ts';
import type { PaperWords } from '../paper-words.ts';
import { headLines } from '../proof-lines.ts';
import { sayingOnPaper } from '../protocol/saying-on-paper.ts';

/** What the list of open points is made from. */
export interface OpenAsked {
  readonly proof: BookProof;
  /** Tag; absent, what is open on any floor. */
  readonly floor?: string | undefined;
  readonly heads: readonly NamedHead[];
}

/** A point that is open, with room to write how it was put right. */
export interface OpenPunch {
  readonly point: string;
  readonly text: string;
  /** On which things, on which floor, found by whom. */
  readonly about: string;
  /** Empty where nobody holds it, or no day is said: then there is room to write. */
  readonly owner: string;
  readonly due: string;
  readonly past: boolean;
  /** Why it is open anew. */
  readonly again: string;
}

/** A point that was put right, and what shows it. */
export interface ShutPunch {
  readonly point: string;
  readonly text: string;
  readonly told: string;
  readonly why: string;
  /** Beginning of the digest of each picture or file. */
  readonly evidence: readonly string[];
}

/** What one floor could not prove and the next must. */
export interface CarryList {
  readonly title: string;
  readonly rows: readonly { readonly name: string; readonly reason: string; readonly needs: string }[];
}

export interface OpenWaits {
  readonly what: string;
  readonly owner: string;
  readonly due: string;
  readonly past: boolean;
  readonly state: string;
}

export interface OpenContent {
  readonly head: PaperHead;
  readonly subtitle: string;
  readonly about: string;
  readonly groups: readonly { readonly title: string; readonly points: readonly OpenPunch[] }[];
  readonly shut: readonly ShutPunch[];
  readonly carried: readonly CarryList[];
  readonly waits: readonly OpenWaits[];
  readonly heads: readonly string[];
  readonly words: Readonly<Record<string, string>>;
}

/** Letters of a digest that tell two files of one hand-over apart. */
const tellingLetters = 12;

/** What a point keeps from being done, gravest first; a class that is none of ours keeps everything. */
const keeps = ['all', 'A', 'B', 'C'] as const;

const keepsOf = ({ class: named }: PunchPoint): (typeof keeps)[number] =>
  keeps.find((one) => one === named) ?? 'all';

const isPast = (due: string | undefined, date: string): boolean => due !== undefined && due < date;

const wordKeys = [
  'care.text',
  'punch',
  'punch.none',
  'point',
  'owner',
  'due',
  'right',
  'shut',
  'evidence',
  'carried',
  'carried.none',
  'check',
  'reason',
  'needs',
  'done',
  'waits',
  'wait',
  'state',
  'sign',
  'heads',
  'heads.none',
] as const;

const signKeys = ['sign.builder', 'sign.site', 'sign.name', 'sign.signature', 'sign.day'] as const;

const openPunch = (
  { point, text, of, floor, found, owner = '', due = '', why, by }: PunchPoint,
  proof: BookProof,
  sentences: CheckSentences,
  { date }: PaperOptions,
  { say, day, moment }: PaperWords,
): OpenPunch => {
  const place = proof.floors.find((one) => one.floor === floor)?.name ?? floor;
  return {
    point,
    text,
    about: [
      ...of.map(sentences.thing),
      ...(place === undefined ? [] : [say('open.at', { floor: place })]),
      say('open.found', { by: found.by, at: moment(found.at) }),
    ].join('; '),
    owner,
    due: day(due),
    past: isPast(due === '' ? undefined : due, date),
    again: why === undefined ? '' : say('open.again', { by, why }),
  };
};

const carryList = (
  { floor, name, carryOver }: FloorProof,
  proof: BookProof,
  sentences: CheckSentences,
  { say }: PaperWords,
): CarryList => {
  const here = proof.floors.find((one) => one.floor === floor);
  const from = proof.floors.find((one) => one.floor === carryOver[0]?.from);
  return {
    title: say('open.carried.to', { from: from?.name ?? '', floor: name }),
    rows: carryOver.map((one) => {
      const own = here?.checks.find(({ check }) => check.id === one.check)?.check;
      const before = from?.checks.find(({ check }) => check.id === one.check);
      return {
        name: own === undefined ? one.check : sentences.name(own),
        reason: sentences.reason(one, before),
        needs: sentences.conditions(own?.under.map(({ id }) => id) ?? []),
      };
    }),
  };
};

/** Everything that stands on the list of what is open: points, what goes over to the next floor, what others own. */
export const openContent = (
  { proof, floor, heads }: OpenAsked,
  options: PaperOptions,
  paper: PaperWords,
): OpenContent => {
  const { book, say } = paper;
  const sentences = checkSentences(book, sayingOnPaper(paper));
  const here = (of: string | undefined): boolean => floor === undefined || of === undefined || of === floor;
  const points = proof.punch.filter((one) => here(one.floor));
  const open = points.filter(({ state }) => state === 'open');
  return {
    head: { ...paperHead(say('open.title'), options, paper), caution: say('open.foot') },
    subtitle: subtitleOf(paper),
    about: say('open.about'),
    groups: keeps
      .map((kept) => ({
        title: say(`open.keeps.${kept}`),
        points: open
          .filter((one) => keepsOf(one) === kept)
          .map((one) => openPunch(one, proof, sentences, options, paper)),
      }))
      .filter((group) => group.points.length > 0),
    shut: points
      .filter(({ state }) => state === 'closed')
      .map(({ point, text, by, at, why = '', evidence }) => ({
        point,
        text,
        told: say('open.shut.by', { by, at: paper.moment(at) }),
        why,
        evidence: evidence.map((digest) => digest.slice(0, tellingLetters)),
      })),
    carried: proof.floors
      .filter((one) => here(one.floor) && one.carryOver.length > 0)
      .map((one) => carryList(one, proof, sentences, paper)),
    waits: proof.waits
      .filter((one) => !isOver(one) && here(one.floor))
      .map(({ what, wait, owner, due = '', state }) => ({
        what: what ?? wait,
        owner: owner === undefined ? '' : sentences.thing(owner),
        due: paper.day(due),
        past: isPast(due === '' ? undefined : due, options.date),
        state: say(`open.wait.${state}`),
      })),
    heads: headLines(heads, paper),
    words: {
      ...Object.fromEntries(wordKeys.map((key) => [key, say(`open.${key}`)])),
      ...Object.fromEntries(signKeys.map((key) => [key, say(`protocol.${key}`)])),
      care: say('paper.care'),
    },
  };
};
