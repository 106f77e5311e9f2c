import { randomUUID } from 'node:crypto';
import { type FileHandle, open, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { Readable } from 'node:stream';
import type { FastifyInstance } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import {
  type ByteSource,
  beginsAsZip,
  joinArchive,
  largestArchive,
  openArchive,
  packArchive,
  roomProblem,
  sizeProblem,
} from '../archive/index.ts';
import type { Problem } from '../quantity/problem.ts';
import { diskFailure } from '../store/disk-failure.ts';
import { freeBytes } from '../store/free-bytes.ts';
import { routes } from './api.ts';
import { failureOf, sentenceOf } from './failure.ts';
import type { ServerPorts } from './ports.ts';
import { refuseWith } from './refuse-with.ts';
import { routeOptions } from './route-options.ts';

/** An archive that lies on the disk, read where it is wanted. */
const fileSource = async (file: FileHandle): Promise<ByteSource> => ({
  size: (await file.stat()).size,
  read: async (from, to) => {
    const bytes = new Uint8Array(Math.max(0, to - from));
    const { bytesRead } = await file.read(bytes, 0, bytes.length, from);
    return bytes.subarray(0, bytesRead);
  },
});

/** Why what is about to arrive, or has so far, can't be kept: it is larger than is taken in, or than the room for it. */
const tooMuch = (bytes: number, most: number, free: number): Problem | undefined =>
  sizeProblem(bytes, most) ?? roomProblem(bytes, free);

/**
 * Puts what arrives on the disk. Of what does not begin as an archive, e.g. a film that was taken for one, and of what is too
 * much nothing is kept; it is heard to its end, since a sender who is cut off does not hear why.
 */
const keepArriving = async (
  body: AsyncIterable<Buffer>,
  path: string,
  /** Bytes that were announced. */
  announced: number,
  most: number,
): Promise<Problem | undefined> => {
  const free = await freeBytes(dirname(path));
  let problem = tooMuch(announced, most, free);
  const file = await open(path, 'wx', 0o600);
  try {
    let first = Buffer.alloc(0);
    let isOne = true;
    let bytes = 0;
    for await (const chunk of body) {
      if (first.length < 4) {
        first = Buffer.concat([first, chunk.subarray(0, 4)]);
        isOne = first.length < 4 || beginsAsZip(first);
      }
      bytes += chunk.length;
      // who does not say how much comes is counted
      problem ??= tooMuch(bytes, most, free);
      if (isOne && problem === undefined) await file.appendFile(chunk);
    }
    // what is none is told as that
    return isOne ? problem : undefined;
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    throw code === 'ENOSPC' || code === 'EDQUOT' ? diskFailure(path, error, 'STORE_FULL') : error;
  } finally {
    await file.close();
  }
};

/** The whole of a book as one file, out and in. */
export const archiveRoutes = async (
  server: FastifyInstance,
  { store, largestArchive: most = largestArchive }: ServerPorts,
): Promise<void> => {
  server.withTypeProvider<ZodTypeProvider>().route({
    ...routeOptions(routes.readArchive),
    handler: async (request, reply) => {
      const { id } = request.params;
      const packed = await packArchive(store, id);
      if (!packed.ok) return refuseWith(reply, packed.problems);
      return reply
        .type('application/zip')
        .header('content-disposition', `attachment; filename="${id.replaceAll(':', '-')}.twinfloor.zip"`)
        .header('x-archive-sha256', packed.value.sha256)
        .send(Readable.from(packed.value.pieces));
    },
  });

  // a scope of its own: here the body is a file, which goes to the disk before anyone looks at it
  await server.register(async (scope) => {
    scope.removeAllContentTypeParsers();
    scope.addContentTypeParser('application/zip', (_request, payload, done) => done(null, payload));
    scope.withTypeProvider<ZodTypeProvider>().route({
      ...routeOptions(routes.joinArchive),
      handler: async (request, reply) => {
        const arriving = join(tmpdir(), `twinfloor-${randomUUID()}.zip`);
        try {
          const announced = Number(request.headers['content-length'] ?? 0);
          const body = request.body as unknown as Readable;
          const problem = await keepArriving(body, arriving, announced, most);
          if (problem !== undefined) return refuseWith(reply, [problem]);
          const file = await open(arriving, 'r');
          try {
            const archive = await openArchive(await fileSource(file));
            if (!archive.ok) return refuseWith(reply, archive.problems);
            const joined = await joinArchive(store, archive.value);
            if (!joined.ok) return refuseWith(reply, joined.problems);
            const { told, ...taken } = joined.value;
            const { problems } = failureOf(told);
            return {
              ...taken,
              told: problems,
              sentences: told.map((one) => sentenceOf(one, request.translation)),
            };
          } finally {
            await file.close();
          }
        } finally {
          await rm(arriving, { force: true });
        }
      },
    });
  });
};
