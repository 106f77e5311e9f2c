import {
  count,
  digest,
  flag,
  listOf,
  members,
  moment,
  oneOf,
  placeWithin,
  planText,
  pointer,
  share,
  shareText,
  tags,
  text,
  token,
} from './body-shape.ts';
import { settingMoments } from './setting-moments.ts';

/**
 * Something that was read on a floor. Its place is named within the floor, which a tag names: another floor that is
 * put before it in the book moves no reading. The moment is the record's own.
 */
export const readingParts = {
  needed: { floor: text, of: placeWithin, value: text, by: text },
  optional: { spread: text, instrument: text, users: count, conditions: text, remark: text },
} as const;

/** One bottle that a lane filled at one preset, as it was weighed, measured or looked at. */
export const trialParts = {
  needed: { floor: text, lane: text, preset: count, by: text },
  optional: {
    format: text,
    product: text,
    /** Bottles that were filled in one row bear one name. */
    row: text,
    /** Lanes that ran in that row, this one counted in. */
    lanesOpen: count,
    time: text,
    gross: text,
    tare: text,
    volume: text,
    /** Height of the liquid above the inside bottom. */
    level: text,
    temperature: text,
    pressure: text,
    overflow: oneOf('none', 'trace', 'stream'),
    /** The lane was throttled on purpose, so that it tells of another flow. */
    throttled: flag,
    /** First bottle after a stop: air in the manifold and the hoses. */
    afterStop: flag,
    instrument: text,
    resolution: text,
    calibrated: text,
    conditions: text,
    remark: text,
  },
} as const;

/** One of the customer's bottles, with its closure, as it was measured. */
export const sampleParts = {
  needed: { format: text, bottle: text, by: text },
  optional: {
    mould: text,
    /** Empty and dry. */
    mass: text,
    /** Filled with water to the brim, and to the level. */
    brimfulMass: text,
    levelMass: text,
    temperature: text,
    height: text,
    bore: text,
    finish: text,
    body: text,
    /** How far the mouth stands beside the middle of the foot. */
    lean: text,
    closureMass: text,
    closureHeight: text,
    instrument: text,
    resolution: text,
    remark: text,
  },
} as const;

/** Filled bottles that were drawn from a lot and weighed. */
export const lotParts = {
  needed: {
    floor: text,
    format: text,
    packages: listOf(members({ gross: text }, { tare: text, lane: text, bottle: text, at: moment }), 1),
    by: text,
  },
  optional: {
    /** Bottles in the lot. */
    size: count,
    product: text,
    temperature: text,
    density: text,
    tares: listOf(text),
    instrument: text,
    resolution: text,
    conditions: text,
    remark: text,
    /** What its rule wants typed in, since no copy of it is held, and the edition in which it was read. */
    variation: text,
    tareSample: count,
    plan: planText,
    table: oneOf('Australia', 'New Zealand'),
    edition: text,
  },
} as const;

/**
 * By how much one value of all lanes moved from one floor to another, as it was measured: it takes the place of what
 * is else allowed for.
 */
export const allowanceParts = {
  needed: {
    /** Floor of the trials. */
    from: text,
    /** Floor of which is foretold. */
    floor: text,
    of: oneOf('meter-flow', 'meter-viscosity', 'valve-air', 'kv-product', 'run-column'),
    value: shareText,
    by: text,
  },
  optional: { how: text, remark: text },
} as const;

/** One check as it was tried on a floor. */
export const checkParts = {
  needed: {
    check: text,
    floor: text,
    by: text,
    /** What the book said at each place that the check hangs on: a place within the thing with a tag, and its digest. */
    basis: listOf(members({ path: pointer, sha256: digest }, { of: text })),
  },
  optional: {
    /** Whether it was as the check expects. */
    seen: flag,
    readings: listOf(text),
    conditions: listOf(members({ condition: text, read: text })),
    witness: text,
    instrument: text,
    evidence: listOf(token),
    /** Record of a run or lot that holds what was counted or weighed. */
    from: token,
    /** Accepted as it is. */
    concession: members({ why: text, until: text, by: text }),
    /** A result that is still to come. */
    late: members({ what: text, who: text, due: text }),
    remark: text,
  },
} as const;

/** Where a wait stands that somebody outside owns. */
export const waitParts = {
  needed: { wait: text, state: oneOf('asked', 'granted', 'refused', 'delivered'), by: text },
  optional: {
    /** Day that the owner promised. */
    due: text,
    /** Day of the answer, where it is another than that of the record. */
    on: text,
    why: text,
    floor: text,
    evidence: listOf(token),
  },
} as const;

/**
 * A run of the line, bottle by bottle counted. Version 1 did not count what was made before the product was released,
 * nor say what the bottles were filled with.
 */
export const runParts = {
  needed: { floor: text, from: moment, to: moment, bottles: count, by: text },
  optional: {
    format: text,
    product: text,
    rejected: count,
    broken: count,
    takenOut: count,
    /** Put in: bottles and caps. */
    bottlesIn: count,
    capsIn: count,
    capsUsed: count,
    /** Of the bottles, those that were set aside until the product is released. */
    quarantined: count,
    stops: listOf(members({ from: moment, to: moment, cause: text }, { external: flag })),
    basis: listOf(members({ path: pointer, sha256: digest }, { of: text })),
    conditions: listOf(members({ condition: text, read: text })),
    witness: text,
    evidence: listOf(token),
    remark: text,
  },
} as const;

/** Somebody was on the line from elsewhere, or came back, after it was handed over. */
export const sessionParts = {
  needed: { floor: text, from: moment, to: moment, what: text, by: text },
  optional: { of: tags, afterwards: text, who: text, remote: flag, changed: listOf(text), remark: text },
} as const;

/** One join as it stands after this record: parted, made, tested, or in trouble. */
export const joinParts = {
  needed: { join: text, state: oneOf('parted', 'made', 'tested', 'trouble'), by: text },
  optional: {
    floor: text,
    /** What was read, with its unit where it has one, and how: continuity, insulation, pull, torque, leak. */
    reading: text,
    method: text,
    instrument: text,
    /** Media by their digest. */
    evidence: listOf(digest),
    /** Records of this join that this one follows: two that follow none of each other were written apart. */
    follows: listOf(token),
    remark: text,
  },
} as const;

const boxEnd = { join: text, side: oneOf('from', 'to') } as const;

/** Where ends of joins that lie in a box are seen on a photograph of it. */
export const placementParts = {
  needed: {
    /** The photograph, by its digest. */
    picture: digest,
    box: text,
    /** Shares of the width and height of the photograph as one looks at it, from its upper left. */
    points: listOf(members({ ...boxEnd, x: share, y: share })),
    by: text,
  },
  optional: {
    /** Ends whose codes were taken off it. */
    off: listOf(members(boxEnd)),
    /** Records of these ends that the writer had before them: two that follow none of each other were made apart. */
    follows: listOf(token),
    floor: text,
  },
} as const;

/** A picture, film, sound or document that belongs to things of the book. */
export const mediaParts = {
  needed: { sha256: digest, mediaType: text, bytes: count, of: tags, by: text },
  optional: {
    caption: text,
    floor: text,
    /** When it was taken, as the file itself says: a claim of the camera's clock. */
    moment: text,
    /** What the file was called. */
    name: text,
  },
} as const;

/** One thing that can be turned, typed or moved, as it stood at one moment. */
export const settingParts = {
  needed: {
    /** Row of the register: the tag that the book gives it, or its sort and the tags that it is on. */
    setting: text,
    floor: text,
    moment: oneOf(...settingMoments),
    /** With its unit where it has one, as typed. */
    value: text,
    by: text,
  },
  optional: { why: text, instrument: text, evidence: listOf(token), remark: text },
} as const;

/** Something that was forced or bypassed for a test, and that it was taken out again. */
export const bypassParts = {
  needed: {
    /** One name from being made to being removed. */
    bypass: token,
    /** Tag of the thing that is forced or bypassed. */
    of: text,
    state: oneOf('made', 'removed'),
    by: text,
  },
  optional: { floor: text, why: text, check: text },
} as const;

/** Something that is not as it must be, as it stands after this record: made known, put right, or open anew. */
export const punchParts = {
  needed: { point: text, text, state: oneOf('open', 'closed'), by: text },
  optional: {
    floor: text,
    of: tags,
    /** A: before the line is energised or used; B: before it is accepted; C: after. None keeps all of it. */
    class: oneOf('A', 'B', 'C'),
    owner: text,
    due: text,
    /** Why it is open anew, or how it was put right. */
    why: text,
    /** Media by their digest. */
    evidence: listOf(digest),
    /** Records of the point that the writer had before them: what was written apart from each other shows by it. */
    follows: listOf(token),
  },
} as const;
