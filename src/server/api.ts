import * as z from 'zod';
import { hallContract } from './hall-api.ts';

/**
 * The contract between the pages and the server: pure schemas and one table of routes.
 * The server registers this table; `makeClient` calls it. Nothing here knows a disk, a socket or a store.
 */

const identifier = z
  .string()
  .regex(/^[A-Za-z0-9][A-Za-z0-9._:-]{0,127}$/)
  .describe('Identifier of a book');
const revisionNumber = z.coerce
  .number()
  .int()
  .min(1)
  .max(1_000_000_000)
  .describe('Number of a revision, 1 is the first');
const moment = z.string().describe('Moment in ISO 8601, UTC');
const author = z.string().trim().min(1).max(200).describe('Who wrote it');
const reason = z.string().trim().max(2000).describe('Why it was written, in the words of the writer');
/** Text of a book. The body limit of the server is the real bound; this one keeps the schema honest about it. */
const bookText = z.string().describe('The book as it stands in the file');

const digest = z
  .string()
  .regex(/^[0-9a-f]{64}$/)
  .describe('SHA-256 of the bytes');

/** The most bytes that one request may carry. A book of a long line with its joins stays under 1 MB. */
export const bodyLimit = 5 * 1024 * 1024;

export const problemSchema = z.object({
  code: z.string(),
  path: z.string(),
  given: z.unknown().optional(),
  allowed: z.union([z.string(), z.array(z.string())]).optional(),
  parts: z.record(z.string(), z.union([z.string(), z.number()])).optional(),
});

/** What every refusal looks like: one sentence for a reader, and the problems as data. */
export const failureSchema = z.object({
  message: z.string(),
  problems: z.array(problemSchema),
  /** With 409: the number of the newest revision. */
  newest: z.number().int().optional(),
});
export type Failure = z.infer<typeof failureSchema>;

export const bookSummarySchema = z.object({
  id: identifier,
  title: z.string(),
  /** Number of the newest revision. */
  revision: z.number().int(),
  savedAt: moment,
});
export type BookSummary = z.infer<typeof bookSummarySchema>;

export const revisionSummarySchema = z.object({
  book: identifier,
  number: z.number().int(),
  /** Absent for the first. */
  basedOn: z.number().int().optional(),
  author: z.string(),
  reason: z.string().optional(),
  savedAt: moment,
  /** SHA-256 of the text, hexadecimal. */
  sha256: z.string(),
});
export type RevisionSummary = z.infer<typeof revisionSummarySchema>;

/** A revision that came under a number that another has, or follows what is not here: people say which holds. */
export const asideSchema = revisionSummarySchema.pick({
  number: true,
  author: true,
  reason: true,
  savedAt: true,
  sha256: true,
});
export type AsideRevision = z.infer<typeof asideSchema>;

export const revisionSchema = revisionSummarySchema.extend({ text: bookText });
export type Revision = z.infer<typeof revisionSchema>;

/** The envelope of a record as it travels; what it must be stands in `src/record`, which looks at every one. */
export const recordSchema = z.object({
  id: z.string(),
  book: z.string(),
  revision: z.number(),
  kind: z.string(),
  version: z.number(),
  writer: z.string(),
  sequence: z.number(),
  deviceTime: z.string(),
  supersedes: z.string().optional(),
  body: z.unknown(),
  previous: z.string(),
  hash: z.string(),
});

/** A record with the moment at which it was written, as far as its chain can tell: ms since 1970. */
const placedRecordSchema = z.object({ record: recordSchema, moment: z.number() });

/** The last record of a device when it was handed over. */
const headSchema = z.object({
  book: z.string().max(200),
  writer: z.string().max(200),
  sequence: z.number().int().min(0),
  hash: digest,
});

/** The last record of a device, and the latest moment that it has claimed. */
const chainEndSchema = z.object({
  book: z.string(),
  writer: z.string(),
  sequence: z.number().int(),
  hash: z.string(),
  moment: z.number(),
  claimed: z.string(),
});

/** A picture, film, sound or document that is kept with a book. */
export const mediaSchema = z.object({
  sha256: digest,
  mediaType: z.string(),
  bytes: z.number().int(),
});
export type Media = z.infer<typeof mediaSchema>;

export const routes = {
  readHealth: {
    method: 'GET',
    path: '/api/health',
    answers: { 200: z.object({ ok: z.literal(true), version: z.string(), kept: z.string() }) },
  },
  listBooks: {
    method: 'GET',
    path: '/api/books',
    answers: { 200: z.array(bookSummarySchema) },
  },
  createBook: {
    method: 'POST',
    path: '/api/books',
    body: z.strictObject({
      /** Given by a page that may have to send it again; left out, the server makes one. */
      id: identifier.optional(),
      /** A book that exists; left out, a blank one with this title. */
      text: bookText.optional(),
      title: z.string().trim().min(1).max(300).optional(),
      author: author.optional(),
      reason: reason.optional(),
    }),
    answers: { 201: revisionSchema },
  },
  readBook: {
    method: 'GET',
    path: '/api/books/:id',
    params: z.object({ id: identifier }),
    answers: { 200: revisionSchema },
  },
  listRevisions: {
    method: 'GET',
    path: '/api/books/:id/revisions',
    params: z.object({ id: identifier }),
    answers: { 200: z.array(revisionSummarySchema) },
  },
  readRevision: {
    method: 'GET',
    path: '/api/books/:id/revisions/:number',
    params: z.object({ id: identifier, number: revisionNumber }),
    answers: { 200: revisionSchema },
  },
  listAside: {
    method: 'GET',
    path: '/api/books/:id/aside',
    params: z.object({ id: identifier }),
    answers: { 200: z.array(asideSchema) },
  },
  /** Text of any revision of a book by its digest, of those that are kept aside too. */
  readAside: {
    method: 'GET',
    path: '/api/books/:id/aside/:sha256',
    params: z.object({ id: identifier, sha256: digest }),
    answers: { 200: z.object({ text: bookText }) },
  },
  /** 409 with `newest` where `basedOn` is not the newest; the same once more is no second revision. */
  saveRevision: {
    method: 'POST',
    path: '/api/books/:id/revisions',
    params: z.object({ id: identifier }),
    body: z.strictObject({
      text: bookText,
      basedOn: z.number().int().min(1),
      author: author.optional(),
      reason: reason.optional(),
    }),
    answers: { 201: revisionSchema },
  },
  listRecords: {
    method: 'GET',
    path: '/api/books/:id/records',
    params: z.object({ id: identifier }),
    /** `since` is the position of the answer before; absent reads from the first. */
    query: z.object({ since: z.coerce.number().int().min(0).optional() }),
    answers: {
      200: z.object({
        records: z.array(recordSchema),
        position: z.number().int(),
        more: z.boolean(),
      }),
    },
  },
  /** What counts of the records now: of the tries of a check the last alone. */
  readStanding: {
    method: 'GET',
    path: '/api/books/:id/standing',
    params: z.object({ id: identifier }),
    /** `until` and the position of the answer before as `since` read on in the same state; absent reads what counts now. */
    query: z.object({
      until: z.coerce.number().int().min(0).optional(),
      since: z.coerce.number().int().min(0).optional(),
    }),
    answers: {
      200: z.object({
        records: z.array(placedRecordSchema),
        ends: z.array(chainEndSchema),
        replacing: z.array(z.object({ id: z.string(), supersedes: z.string() })),
        doubts: z.array(
          z.object({ record: z.string(), writer: z.string(), given: z.string(), before: z.string() }),
        ),
        until: z.number().int(),
        position: z.number().int(),
        more: z.boolean(),
      }),
    },
  },
  /** The last tries of a check on a floor, first to last, and how many there are in all. */
  listTries: {
    method: 'GET',
    path: '/api/books/:id/tries',
    params: z.object({ id: identifier }),
    query: z.object({ floor: z.string().max(200), check: z.string().max(400) }),
    answers: { 200: z.object({ records: z.array(placedRecordSchema), total: z.number().int() }) },
  },
  /** Answers with all records as a file: for a link that saves it, not for the client. */
  readRecordFile: {
    method: 'GET',
    path: '/api/books/:id/record-file',
    params: z.object({ id: identifier }),
    /** The first line of it alone, with the heads. */
    query: z.object({ part: z.literal('heads').optional() }),
    answers: {},
  },
  /** Whether what was handed over before is still there as it was: every record up to these heads. */
  holdHeads: {
    method: 'POST',
    path: '/api/books/:id/heads',
    params: z.object({ id: identifier }),
    body: z.strictObject({ heads: z.array(headSchema).max(1000) }),
    answers: { 200: z.object({ problems: z.array(problemSchema), sentences: z.array(z.string()) }) },
  },
  /** Idempotent: a record that is there already, word for word, is accepted again and added once. */
  appendRecords: {
    method: 'POST',
    path: '/api/books/:id/records',
    params: z.object({ id: identifier }),
    body: z.strictObject({ records: z.array(z.unknown()).min(1).max(1000) }),
    answers: { 200: z.object({ added: z.array(z.string()), known: z.array(z.string()) }) },
  },
  listMedia: {
    method: 'GET',
    path: '/api/books/:id/media',
    params: z.object({ id: identifier }),
    answers: { 200: z.array(mediaSchema) },
  },
  /** Idempotent: 201 where it is new. The type is that of the request; bytes that give another digest are refused. */
  putMedia: {
    method: 'PUT',
    path: '/api/books/:id/media/:sha256',
    params: z.object({ id: identifier, sha256: digest }),
    bytes: true,
    answers: { 200: mediaSchema, 201: mediaSchema },
  },
  /** Answers with a paper as a PDF, of the book as it was saved last: for a link, not for the client. */
  readPaper: {
    method: 'GET',
    path: '/api/books/:id/papers/:paper',
    params: z.object({ id: identifier, paper: z.string().max(40) }),
    query: z.object({
      floor: z.string().max(200).optional(),
      format: z.string().max(200).optional(),
      page: z.enum(['a4', 'letter']).optional(),
      units: z.enum(['metric', 'us']).optional(),
      language: z.enum(['en', 'de', 'es', 'fr']).optional(),
      /** A second language, on the papers that are filled in. */
      beside: z.enum(['en', 'de', 'es', 'fr']).optional(),
    }),
    answers: {},
  },
  /** The file that a witness opens, of the book as it was saved last, and what of it had no room in a mail. */
  makeWitness: {
    method: 'GET',
    path: '/api/books/:id/witness',
    params: z.object({ id: identifier }),
    query: z.object({
      units: z.enum(['metric', 'us']).optional(),
      language: z.enum(['en', 'de', 'es', 'fr']).optional(),
    }),
    answers: {
      200: z.object({
        html: z.string(),
        /** SHA-256 of what it shows: an answer names it. */
        digest,
        /** Pictures, films and sounds in it. */
        included: z.number().int(),
        leftOut: z.array(
          z.object({ sha256: z.string(), why: z.enum(['large', 'absent', 'damaged', 'strange']) }),
        ),
      }),
    },
  },
  /** Answers with the archive itself: for a link that saves it, not for the client. */
  readArchive: {
    method: 'GET',
    path: '/api/books/:id/archive',
    params: z.object({ id: identifier }),
    answers: {},
  },
  /** Takes in an archive: the union of it and what is here. The same once more changes nothing. */
  joinArchive: {
    method: 'PUT',
    path: '/api/archives',
    bytes: true,
    answers: {
      200: z.object({
        book: identifier,
        revisions: z.object({ added: z.number().int(), aside: z.number().int(), known: z.number().int() }),
        records: z.object({ added: z.number().int(), known: z.number().int() }),
        media: z.object({ added: z.number().int(), known: z.number().int() }),
        /** What a person should look at. */
        told: z.array(problemSchema),
        /** The same in words. */
        sentences: z.array(z.string()),
      }),
    },
  },
  /** Answers with the bytes themselves, or a part of them: for the address of a picture, not for the client. */
  readMedia: {
    method: 'GET',
    path: '/api/books/:id/media/:sha256',
    params: z.object({ id: identifier, sha256: digest }),
    answers: {},
  },
  ...hallContract,
} as const satisfies Record<string, RouteContract>;

export interface RouteContract {
  readonly method: 'GET' | 'POST' | 'PUT';
  readonly path: string;
  readonly params?: z.ZodType;
  readonly query?: z.ZodType;
  readonly body?: z.ZodType;
  /** The body is a file as it is, not JSON. */
  readonly bytes?: true;
  readonly answers: Readonly<Record<number, z.ZodType>>;
}

export type RouteName = keyof typeof routes;
