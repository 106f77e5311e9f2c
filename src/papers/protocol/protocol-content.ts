import type { FloorAssessment } from '../../floor/assessment.ts';
import {
  type BookProof,
  type CheckSentences,
  checkSentences,
  type FloorProof,
  type JudgedResult,
  type Limit,
  type ProvedCheck,
  type PunchPoint,
  stages,
} from '../../proof/index.ts';
import { handwritten, type Kind } from '../../quantity/index.ts';
import { asWritten } from '../as-written.ts';
import type { NamedHead } from '../named-heads.ts';
import { type PaperHead, type PaperOptions, paperHead, subtitleOf } from '../paper-head.ts';
import type { PaperWords } from '../paper-words.ts';
import { countsLine, headLines } from '../proof-lines.ts';
import { typedText } from '../setting-text.ts';
import type { Citations, Marks } from '../workings/citations.ts';
import { sayingOnPaper } from './saying-on-paper.ts';

/** What the protocol of one floor is made from. */
export interface ProtocolAsked {
  readonly proof: BookProof;
  readonly floor: FloorProof;
  /** The floors as they were assessed, in the order of their hues: the workings of limits are theirs. */
  readonly assessed: readonly FloorAssessment[];
  /** Last record of each writer: what was there when it was printed. */
  readonly heads: readonly NamedHead[];
}

/** One condition of a check, with what was read of it, or room to write it. */
export interface ProtocolCondition {
  readonly name: string;
  readonly wanted: string;
  /** Marks of the workings behind what is wanted. */
  readonly mark: Marks;
  readonly read?: string;
  /** `no` where it did not hold. */
  readonly broken: boolean;
}

/** A check as it was tried last. */
export interface ProtocolResult {
  readonly verdict: string;
  readonly failed: boolean;
  readonly why: string;
  readonly readings: string;
  /** By whom, when, with what, in whose presence. */
  readonly told: string;
  readonly remark?: string;
  /** Tries before it. */
  readonly earlier: number;
}

export interface ProtocolCheck {
  readonly name: string;
  readonly expected: string;
  /** Hold or witness point, in words. */
  readonly point: string;
  readonly hold: boolean;
  readonly limit: string;
  /** Marks of the workings behind the limit. */
  readonly mark: Marks;
  /** What this floor can do with it, where that is less than to prove it. */
  readonly plan: string;
  readonly instrument: string;
  readonly conditions: readonly ProtocolCondition[];
  /** Boxes for readings; none where it is only seen. */
  readonly boxes: number;
  readonly result?: ProtocolResult;
}

export interface ProtocolContent {
  readonly head: PaperHead;
  readonly floor: string;
  readonly subtitle: string;
  readonly about: string;
  readonly counts: string;
  readonly carried: readonly { readonly name: string; readonly reason: string }[];
  readonly stages: readonly { readonly title: string; readonly checks: readonly ProtocolCheck[] }[];
  readonly punch: readonly { readonly text: string; readonly keeps: string; readonly held: string }[];
  readonly gates: readonly { readonly gate: string; readonly wanted: string; readonly signed: string }[];
  readonly heads: readonly string[];
  readonly words: Readonly<Record<string, string>>;
}

/** A blank protocol has room for so many readings beside each other; more go on a list of their own. */
const mostBoxes = 10;

const wordKeys = [
  'carried',
  'conditions',
  'limit',
  'instrument',
  'asExpected',
  'notAsExpected',
  'by',
  'witness',
  'day',
  'remark',
  'punch',
  'punch.none',
  'gates',
  'gates.wanted',
  'gates.signed',
  'sign',
  'sign.builder',
  'sign.site',
  'sign.name',
  'sign.signature',
  'sign.day',
  'heads',
  'heads.none',
] as const;

const readingsOf = ({ result }: JudgedResult, kind: Kind | undefined, paper: PaperWords): string => {
  const seen =
    result.seen === undefined
      ? []
      : [paper.say(result.seen ? 'protocol.asExpected' : 'protocol.notAsExpected')];
  const read = (result.readings ?? []).map((text) =>
    kind === undefined ? asWritten(text, paper) : typedText(text, kind, paper),
  );
  return [...seen, ...read].join(', ');
};

const toldOf = ({ result }: JudgedResult, paper: PaperWords): string =>
  [
    paper.say('protocol.told', { by: result.by, at: paper.moment(result.at) }),
    ...(result.instrument === undefined
      ? []
      : [paper.say('protocol.told.with', { instrument: result.instrument })]),
    ...(result.witness === undefined
      ? []
      : [paper.say('protocol.told.witness', { witness: result.witness })]),
  ].join('; ');

const resultOf = (
  { check, state, inForce, earlier }: ProvedCheck,
  why: string,
  paper: PaperWords,
): ProtocolResult | undefined => {
  if (inForce === undefined) return undefined;
  const { remark } = inForce.result;
  return {
    verdict: paper.say(`proof.state.${state}`),
    failed: state === 'failed' || state === 'stale',
    why,
    readings: readingsOf(inForce, check.limits[0]?.figure.kind, paper),
    told: toldOf(inForce, paper),
    earlier: earlier.length,
    ...(remark === undefined ? {} : { remark }),
  };
};

/** What was read of a condition: a quantity or a word of the book as it was typed, or whether it was so. */
const claimText = (told: string, paper: PaperWords): string =>
  paper.sayOr(`protocol.claim.${told.trim().toLowerCase()}`, asWritten(told, paper));

const checkOf = (
  one: ProvedCheck,
  sentences: CheckSentences,
  mark: (limits: readonly Limit[]) => Marks,
  paper: PaperWords,
): ProtocolCheck => {
  const { check, inForce } = one;
  const read = new Map(inForce?.conditions.map((held) => [held.condition.id as string, held]));
  const own = new Map(inForce?.ownConditions.map((held) => [held.text, held]));
  const claims = new Map(inForce?.result.conditions?.map((given) => [given.condition, given.read]));
  const instrument =
    check.ownInstrument === undefined
      ? check.instrument === undefined
        ? ''
        : paper.say(`proof.instrument.${check.instrument}`)
      : sentences.thing(check.ownInstrument);
  const conditionOf = (
    id: string,
    wanted: string,
    made: Marks,
    held: { readonly held?: boolean | undefined } | undefined,
  ): ProtocolCondition => {
    const told = claims.get(id);
    return {
      name: sentences.condition(id),
      wanted,
      mark: made,
      broken: held?.held === false,
      ...(told === undefined ? {} : { read: claimText(told, paper) }),
    };
  };
  const result = resultOf(one, sentences.why(one), paper);
  return {
    name: sentences.name(check),
    expected: handwritten(sentences.expected(check)),
    point: check.point === 'none' ? '' : paper.say(`protocol.point.${check.point}`),
    hold: check.point === 'hold',
    limit: sentences.limits(check),
    mark: mark(check.limits),
    plan: check.plan === 'prove' && check.foreseen !== 'short' ? '' : sentences.plan(check),
    instrument,
    conditions: [
      ...check.under.map((condition) =>
        conditionOf(
          condition.id,
          condition.word ?? condition.limits.map(sentences.limit).join(', '),
          mark(condition.limits),
          read.get(condition.id),
        ),
      ),
      ...check.ownConditions.map((text) => conditionOf(text, '', [], own.get(text))),
    ],
    boxes: check.limits.length === 0 ? 0 : Math.min(mostBoxes, check.readings),
    ...(result === undefined ? {} : { result }),
  };
};

const punchOf = (points: readonly PunchPoint[], floor: string, paper: PaperWords): ProtocolContent['punch'] =>
  points
    .filter((one) => one.state === 'open' && (one.floor === undefined || one.floor === floor))
    .map(({ text, class: keeps, owner, due }) => ({
      text,
      keeps: paper.sayOr(`protocol.keeps.${keeps ?? ''}`, paper.say('protocol.keeps.all')),
      held: [owner, due].filter((part) => part !== undefined).join(', '),
    }));

/** Everything that stands on the protocol of a floor: filled in where records are, with room to write where none are. */
export const protocolContent = (
  { proof, floor, heads }: ProtocolAsked,
  options: PaperOptions,
  citations: Citations,
  paper: PaperWords,
): ProtocolContent => {
  const { say } = paper;
  const mark = (limits: readonly Limit[]): Marks =>
    citations.mark(floor.floor, ...limits.map(({ working }) => working));
  const sentences = checkSentences(paper.book, sayingOnPaper(paper));
  const before = proof.floors.find((one) => one.floor === floor.carryOver[0]?.from);
  const there = new Map(before?.checks.map((one) => [one.check.id, one]));
  const own = new Map(floor.checks.map((one) => [one.check.id, one.check]));
  return {
    head: { ...paperHead(say('protocol.title'), options, paper), caution: say('protocol.foot') },
    floor: floor.name,
    subtitle: subtitleOf(paper),
    about: say(`protocol.about.${floor.role === 'built on' ? 'first' : 'next'}`, { floor: floor.name }),
    counts: countsLine(floor, paper),
    // what nobody tried there stands below like everything else
    carried: floor.carryOver
      .filter(({ reason }) => reason !== 'undone')
      .flatMap((one) => {
        const check = own.get(one.check);
        return check === undefined
          ? []
          : [{ name: sentences.name(check), reason: sentences.reason(one, there.get(one.check)) }];
      }),
    stages: stages.flatMap((stage) => {
      const checks = floor.checks.filter(({ check }) => check.stage === stage);
      return checks.length === 0
        ? []
        : [
            {
              title: say(`proof.stage.${stage}`),
              checks: checks.map((one) => checkOf(one, sentences, mark, paper)),
            },
          ];
    }),
    punch: punchOf(proof.punch, floor.floor, paper),
    gates: floor.gates.map(({ gate, lacks, signed, passed }) => ({
      gate: say(`proof.gate.${gate}`),
      wanted:
        lacks.length === 0 ? say('protocol.gate.nothing') : say('protocol.gate.lacks', { n: lacks.length }),
      signed:
        signed === undefined
          ? ''
          : say(passed ? 'protocol.gate.passed' : 'protocol.gate.unnamed', {
              by: signed.by,
              role: signed.role,
            }),
    })),
    heads: headLines(heads, paper),
    words: {
      ...Object.fromEntries(wordKeys.map((key) => [key, say(`protocol.${key}`)])),
      care: say('paper.care'),
      caution: say('protocol.caution'),
      earlier: say('protocol.earlier'),
      workingKey: say('workings.key'),
    },
  };
};
