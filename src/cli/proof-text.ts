import { placeText } from '../book/place-text.ts';
import type { FloorAssessment } from '../floor/assessment.ts';
import {
  type BookProof,
  type CheckSentences,
  type CheckState,
  checkSentences,
  type FloorProof,
  type Gate,
  type GateName,
  type Lack,
  lackNames,
  type ProvedCheck,
  stages,
} from '../proof/index.ts';
import { settingNames } from '../proof/settings/index.ts';
import { formatNumber } from '../quantity/index.ts';
import { shown } from '../quantity/shown.ts';
import { daysText } from './days-text.ts';
import { nameOnFloor } from './finding-names.ts';
import { heardReplyDocument } from './reply-document.ts';
import { replyLines } from './reply-text.ts';
import { sentenceOf } from './sentence.ts';
import { textTable } from './text-table.ts';
import type { Told } from './told.ts';
import { words } from './words.ts';

/** What every part of the text needs. */
interface Telling {
  readonly told: Told;
  readonly say: CheckSentences;
}

/** Where a check stands, and why it is not proved. */
const stateText = (one: ProvedCheck, { say }: Telling): string => {
  const why = say.why(one);
  return [words.say(`proof.state.${one.state}`), why].filter((part) => part !== '').join(': ');
};

const stageText = (
  floor: FloorProof,
  stage: (typeof stages)[number],
  telling: Telling,
): readonly string[] => {
  const checks = floor.checks.filter(({ check }) => check.stage === stage);
  if (checks.length === 0) return [];
  return [
    words.say(`proof.stage.${stage}`),
    textTable(
      checks.map((one) => [
        telling.say.name(one.check),
        words.say(`proof.point.${one.check.point}`),
        telling.say.limits(one.check),
        telling.say.plan(one.check),
        stateText(one, telling),
      ]),
    ),
  ];
};

/** Each condition once: what it must be, what this floor has, whether it can be so. */
const conditionsText = ({ checks }: FloorProof, telling: Telling): readonly string[] => {
  const { wishes, world } = telling.told;
  const each = new Map(checks.flatMap(({ check }) => check.under.map((one) => [one.id, one] as const)));
  if (each.size === 0) return [];
  return [
    words.say('proof.conditions'),
    textTable(
      [...each.values()].map(({ id, limits, word, have, haveWord, here, by }) => [
        telling.say.condition(id),
        word ?? limits.map(telling.say.limit).join(', '),
        haveWord ?? (have?.value === undefined ? '' : shown(have.value, have.kind, wishes, world.locale)),
        words.say(`proof.here.${here}`) +
          (by === undefined ? '' : words.say('proof.by', { by: formatNumber(100 * by, world.locale, 2) })),
      ]),
    ),
  ];
};

const carriedText = (floor: FloorProof, all: readonly FloorProof[], telling: Telling): readonly string[] => {
  const [first] = floor.carryOver;
  if (first === undefined) return [];
  const before = all.find((one) => one.floor === first.from);
  const byId = new Map(before?.checks.map((one) => [one.check.id, one]));
  const own = new Map(floor.checks.map(({ check }) => [check.id, check]));
  // what nobody has tried stands in the protocol below
  const told = floor.carryOver.filter(({ reason }) => reason !== 'undone');
  const undone = floor.carryOver.length - told.length;
  return [
    words.say('proof.carried', { from: before?.name ?? first.from, n: floor.carryOver.length }),
    ...(undone === 0 ? [] : [`  ${words.say('proof.undone', { n: undone })}`]),
    textTable(
      told.map((one) => [
        telling.say.name(own.get(one.check)!),
        telling.say.reason(one, byId.get(one.check)),
      ]),
    ),
  ];
};

const countsText = ({ progress, checks }: FloorProof, { say }: Telling): readonly string[] => {
  const counts = (Object.entries(progress.counts) as readonly [CheckState, number][])
    .filter(([, n]) => n > 0)
    .map(([state, n]) => `${words.say(`proof.state.${state}`)} ${n}`);
  const names = new Map(checks.map(({ check }) => [check.id, say.name(check)]));
  const next = progress.next.slice(0, 5).map((id) => names.get(id) ?? id);
  return [
    words.say('proof.counts', { n: checks.length, counts: counts.join(', ') }),
    ...(next.length === 0 ? [] : [words.say('proof.next', { next: next.join('; ') })]),
    ...(progress.blocked.length === 0 ? [] : [words.say('proof.blocked', { n: progress.blocked.length })]),
  ];
};

/** What a lack is called. */
type NameOf = (lack: Lack) => string;

const lackText = ({ lacks }: Gate, nameOf: NameOf): string =>
  textTable(
    lacks.map((lack) => [
      words.say(`proof.lack.${lack.sort}`),
      lack.sort === 'punch' ? `${lack.id}: ${nameOf(lack)}` : nameOf(lack),
      words.say(`proof.holder.${lack.holder}`),
    ]),
  );

const gateText = (gate: Gate, whole: boolean, nameOf: NameOf): string => {
  const { lacks, signed, unnamed, passed } = gate;
  const sorts = [...new Set(lacks.map(({ sort }) => sort))].map(
    (sort) => `${words.say(`proof.lack.${sort}`)} ${lacks.filter((one) => one.sort === sort).length}`,
  );
  const wanted =
    lacks.length === 0
      ? words.say('proof.gate.nothing')
      : words.say('proof.gate.lacks', { lacks: sorts.join(', ') });
  const by =
    signed === undefined
      ? words.say('proof.gate.unsigned')
      : words.say(passed ? 'proof.gate.passed' : 'proof.gate.unnamed', {
          by: signed.by,
          role: signed.role,
          n: unnamed.length,
        });
  const line = words.say('proof.gate', { gate: gate.gate, wanted, by });
  return whole && lacks.length > 0 ? `${line}\n${lackText(gate, nameOf)}` : line;
};

const floorTitle = ({ name, role }: FloorProof): string => `${name} (${words.say(`role.${role}`)})`;

/** What stands behind the floors that are told. */
export interface ProofTold {
  readonly assessment: readonly FloorAssessment[];
  /** Every floor: one that is not told may have left something to one that is. */
  readonly before: readonly FloorProof[];
  readonly told: Told;
}

/** The protocol floor by floor with what was recorded, what carries over and the gates; of one gate all that it lacks. */
export const proofTextOf = (
  { floors, punch, waits, afterwards, doubts, replies }: BookProof,
  gate: GateName | undefined,
  { assessment, before, told }: ProofTold,
): string => {
  const { wishes, world } = told;
  // a share is said in per cent
  const inPercent = { ...wishes, byKind: { ratio: '%', ...wishes.byKind } };
  const telling: Telling = {
    told: { ...told, wishes: inPercent },
    say: checkSentences(told.book, {
      say: words.say,
      has: words.has,
      quantity: (value, kind) => shown(value, kind, inPercent, world.locale),
      number: (value) => formatNumber(value, world.locale, 2),
    }),
  };
  const nameOf = (floor: FloorProof): NameOf => {
    const assessed = assessment.find((one) => one.floor === floor.floor)!;
    return lackNames({ punch, waits }, floor, {
      say: words.say,
      number: (value) => formatNumber(value, world.locale, 5),
      checks: telling.say,
      place: (path) => placeText(told.book, path),
      finding: (id) => nameOnFloor(told.book, assessed, id),
      setting: settingNames(told.book, words.say),
    });
  };
  const gatesText = (floor: FloorProof): readonly string[] =>
    floor.gates
      .filter((one) => gate === undefined || one.gate === gate)
      .map((one) => gateText(one, gate !== undefined, nameOf(floor)));
  const blocks = floors.flatMap((floor) =>
    gate !== undefined
      ? gatesText(floor).map((text) => `${floorTitle(floor)}\n${text}`)
      : [
          [floorTitle(floor), ...countsText(floor, telling)].join('\n'),
          ...[
            daysText(floor, { waits, say: telling.say, locale: world.locale }),
            conditionsText(floor, telling),
            carriedText(floor, before, telling),
          ]
            .concat(stages.map((stage) => stageText(floor, stage, telling)))
            .filter((part) => part.length > 0)
            .map((part) => part.join('\n')),
          gatesText(floor).join('\n'),
        ],
  );
  const after =
    gate !== undefined || afterwards.length === 0
      ? []
      : [
          [
            words.say('proof.afterwards'),
            textTable(
              afterwards.map(({ kind, what = '', day = '', done, rampUp }) => [
                day,
                words.say(`proof.after.${kind}`),
                what,
                rampUp?.met === undefined
                  ? done === undefined
                    ? ''
                    : words.say('proof.after.done')
                  : words.say(rampUp.met ? 'proof.after.met' : 'proof.after.missed'),
              ]),
            ),
          ].join('\n'),
        ];
  const answered =
    gate !== undefined || replies.length === 0
      ? []
      : replies.map((one) => replyLines(heardReplyDocument(one)).join('\n'));
  const doubted =
    doubts.length === 0
      ? []
      : [[words.say('proof.doubts'), ...doubts.map((doubt) => `  ${sentenceOf(doubt)}`)].join('\n')];
  return [...blocks, ...after, ...answered, ...doubted, words.say('proof.caution')].join('\n\n').concat('\n');
};
