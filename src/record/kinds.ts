import {
  count,
  digest,
  digits,
  flag,
  listOf,
  members,
  moment,
  oneOf,
  tags,
  text,
  token,
} from './body-shape.ts';
import { type KindRegistry, kindRegistry } from './kind-registry.ts';
import {
  allowanceParts,
  bypassParts,
  checkParts,
  joinParts,
  lotParts,
  mediaParts,
  placementParts,
  punchParts,
  readingParts,
  runParts,
  sampleParts,
  sessionParts,
  settingParts,
  trialParts,
  waitParts,
} from './record-bodies.ts';

const head = members({ book: token, writer: token, sequence: count, hash: digest });

/**
 * The kinds of the first release. Quantities in bodies are texts with their unit, as typed; tags refer to
 * the book and are checked against it where the book is at hand. A changed body is a new version beside
 * the old one: what was written stays readable.
 */
export const recordKinds: KindRegistry = kindRegistry(
  {
    kind: 'reading',
    version: 1,
    body: members(
      { floor: text, of: text, value: text, by: text },
      { spread: text, instrument: text, conditions: text, remark: text },
    ),
  },
  {
    kind: 'reading',
    version: 2,
    body: members(readingParts.needed, readingParts.optional),
  },
  {
    kind: 'trial',
    version: 1,
    body: members(
      {
        floor: text,
        by: text,
        lanes: listOf(
          members(
            { lane: text, pulses: count },
            { volume: text, mass: text, time: text, overflowed: flag, remark: text },
          ),
          1,
        ),
      },
      { format: text, product: text, lanesOpen: count, conditions: text, remark: text },
    ),
  },
  {
    // one bottle a record: a slip is undone by the correction of one bottle
    kind: 'trial',
    version: 2,
    body: members(trialParts.needed, trialParts.optional),
  },
  {
    kind: 'sample',
    version: 1,
    body: members(sampleParts.needed, sampleParts.optional),
  },
  {
    kind: 'lot',
    version: 1,
    body: members(lotParts.needed, lotParts.optional),
  },
  {
    kind: 'allowance',
    version: 1,
    body: members(allowanceParts.needed, allowanceParts.optional),
  },
  {
    kind: 'run',
    version: 1,
    body: members(
      { floor: text, from: text, to: text, bottles: count, by: text },
      {
        format: text,
        rejected: count,
        stops: listOf(members({ from: text, to: text, cause: text, external: flag })),
        conditions: text,
        remark: text,
      },
    ),
  },
  {
    kind: 'run',
    version: 2,
    body: members(runParts.needed, runParts.optional),
  },
  {
    kind: 'wait',
    version: 1,
    body: members(waitParts.needed, waitParts.optional),
  },
  {
    kind: 'session',
    version: 1,
    body: members(sessionParts.needed, sessionParts.optional),
  },
  {
    kind: 'join',
    version: 1,
    body: members(
      { join: text, state: oneOf('parted', 'made', 'tested'), by: text },
      { floor: text, remark: text },
    ),
  },
  {
    kind: 'join',
    version: 2,
    body: members(joinParts.needed, joinParts.optional),
  },
  {
    kind: 'check',
    version: 1,
    body: members(
      { check: text, floor: text, result: oneOf('shown', 'proved', 'failed'), by: text },
      { conditions: text, witness: text, evidence: listOf(token), remark: text },
    ),
  },
  {
    // what was read and seen, not what it came to: the verdict follows from the book that it is held against
    kind: 'check',
    version: 2,
    body: members(checkParts.needed, checkParts.optional),
  },
  {
    // the picture, film or sound itself is kept beside the records, under its digest
    kind: 'media',
    version: 1,
    body: members(mediaParts.needed, mediaParts.optional),
  },
  {
    // what is seen where on a picture belongs to who looked at it, and is no part of the picture
    kind: 'placement',
    version: 1,
    body: members(placementParts.needed, placementParts.optional),
  },
  {
    kind: 'punch',
    version: 1,
    body: members(
      { point: text, text, state: oneOf('open', 'closed'), by: text },
      { of: tags, class: text, due: text, owner: text },
    ),
  },
  {
    kind: 'punch',
    version: 2,
    body: members(punchParts.needed, punchParts.optional),
  },
  {
    kind: 'signature',
    version: 1,
    // naming the heads is what makes a chain that is later cut or rewritten visible to the other party
    body: members(
      { by: text, role: text, statement: text, heads: listOf(head, 1) },
      { key: text, value: text, algorithm: text, image: digest },
    ),
  },
  {
    // a name that was only written down proves nothing: from here on a key signs, see signature.ts
    kind: 'signature',
    version: 2,
    body: members(
      {
        by: text,
        role: text,
        statement: text,
        heads: listOf(head, 1),
        algorithm: oneOf('Ed25519'),
        key: digits(64),
        value: digits(128),
      },
      { passes: text, floor: text, open: listOf(text), image: digest },
    ),
  },
  {
    kind: 'setting',
    version: 1,
    body: members(settingParts.needed, settingParts.optional),
  },
  {
    kind: 'bypass',
    version: 1,
    body: members(bypassParts.needed, bypassParts.optional),
  },
  {
    // what a witness wrote who had the witness file alone, signed in their own browser, see reply.ts
    kind: 'reply',
    version: 1,
    body: members(
      {
        by: text,
        role: text,
        book: token,
        revision: count,
        file: digest,
        heads: listOf(head),
        at: moment,
        accepted: oneOf('as it is', 'with open points', 'not'),
        comments: listOf(members({ check: text, floor: text, text })),
        open: listOf(text),
        algorithm: oneOf('Ed25519'),
        key: digits(64),
        value: digits(128),
      },
      { passes: text, floor: text, remark: text },
    ),
  },
  {
    // two laptops saved under one number: a person says which of the two texts holds, by their digests
    kind: 'revision',
    version: 1,
    body: members({ number: count, holds: digest, over: digest, why: text, by: text }),
  },
  { kind: 'note', version: 1, body: members({ text, by: text }, { of: tags }) },
);
