import { Readable } from 'node:stream';
import type { FastifyInstance } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import { bodyProblems } from '../record/append-record.ts';
import { type Envelope, envelopeProblems } from '../record/envelope.ts';
import { headsHeld, type ReadOnward } from '../record/heads-held.ts';
import { recordKinds } from '../record/kinds.ts';
import { recordFilePieces } from '../record/record-file.ts';
import { routes } from './api.ts';
import { failureOf, sentenceOf } from './failure.ts';
import type { ServerPorts } from './ports.ts';
import { refuseWith } from './refuse-with.ts';
import { routeOptions } from './route-options.ts';

/** Most records in one answer; the page asks on from `position`. */
const mostAtOnce = 1000;

/** Tries of one check in an answer: nobody reads more of them on a page. */
const mostTries = 100;

/** Records: read from a position, added and never changed. */
export const recordRoutes = (server: FastifyInstance, { store }: ServerPorts): void => {
  const typed = server.withTypeProvider<ZodTypeProvider>();

  typed.route({
    ...routeOptions(routes.listRecords),
    handler: async (request, reply) => {
      const { id } = request.params;
      const { since } = request.query;
      const page = await store.readRecords(id, {
        most: mostAtOnce,
        ...(since === undefined ? {} : { since }),
      });
      if (!page.ok) return refuseWith(reply, page.problems);
      return { ...page.value, records: [...page.value.records] };
    },
  });

  typed.route({
    ...routeOptions(routes.readStanding),
    handler: async (request, reply) => {
      const { until, since } = request.query;
      const page = await store.standing(request.params.id, {
        most: mostAtOnce,
        ...(until === undefined ? {} : { until }),
        ...(since === undefined ? {} : { since }),
      });
      if (!page.ok) return refuseWith(reply, page.problems);
      const { records, ends, replacing, doubts, ...rest } = page.value;
      return {
        ...rest,
        records: [...records],
        ends: [...ends],
        replacing: [...replacing],
        doubts: [...doubts],
      };
    },
  });

  typed.route({
    ...routeOptions(routes.listTries),
    handler: async (request, reply) => {
      const { floor, check } = request.query;
      const tries = await store.triesOf(request.params.id, floor, check, mostTries);
      if (!tries.ok) return refuseWith(reply, tries.problems);
      return { ...tries.value, records: [...tries.value.records] };
    },
  });

  const onward = (id: string): ReadOnward => {
    return (writer, behind) => store.readChain(id, writer, { behind, most: mostAtOnce });
  };

  typed.route({
    ...routeOptions(routes.readRecordFile),
    handler: async (request, reply) => {
      const { id } = request.params;
      const { part = 'records' } = request.query;
      const heads = await store.heads(id);
      if (!heads.ok) return refuseWith(reply, heads.problems);
      const pieces = recordFilePieces(id, heads.value, onward(id));
      const content = part === 'heads' ? (await pieces.next()).value : Readable.from(pieces);
      return reply
        .type('text/plain; charset=utf-8')
        .header('content-disposition', `attachment; filename="${id.replaceAll(':', '-')}.${part}"`)
        .send(content);
    },
  });

  typed.route({
    ...routeOptions(routes.holdHeads),
    handler: async (request, reply) => {
      const { id } = request.params;
      const known = await store.heads(id);
      if (!known.ok) return refuseWith(reply, known.problems);
      const broken = await headsHeld(onward(id), id, request.body.heads);
      const { problems } = failureOf(broken);
      return { problems, sentences: broken.map((one) => sentenceOf(one, request.translation)) };
    },
  });

  typed.route({
    ...routeOptions(routes.appendRecords),
    handler: async (request, reply) => {
      const { records } = request.body;
      const problems = records.flatMap((record, i) => {
        const path = `/records/${i}`;
        const malformed = envelopeProblems(record, path);
        return malformed.length > 0 ? malformed : bodyProblems(record as Envelope, recordKinds, path);
      });
      if (problems.length > 0) return refuseWith(reply, problems);
      const appended = await store.appendRecords(request.params.id, records as Envelope[]);
      if (!appended.ok) return refuseWith(reply, appended.problems);
      return { added: [...appended.value.added], known: [...appended.value.known] };
    },
  });
};
