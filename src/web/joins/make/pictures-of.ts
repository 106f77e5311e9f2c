import type { LaidJoin } from '../../../joins/index.ts';
import type { Envelope } from '../../../record/envelope.ts';

interface MediaBody {
  readonly sha256: string;
  readonly of?: readonly string[];
}

/** Digests of what was photographed of a join: of itself first, then of its ends and the boxes it runs between. */
export const picturesOf = (
  { tag, from, to, box }: LaidJoin,
  records: readonly Envelope[],
): { readonly own: readonly string[]; readonly around: readonly string[] } => {
  const near = new Set([from.on, to.on, from.box, to.box, box].filter((one) => one !== undefined));
  const bodies = records.filter(({ kind }) => kind === 'media').map(({ body }) => body as MediaBody);
  const own = new Set(bodies.filter(({ of = [] }) => of.includes(tag)).map(({ sha256 }) => sha256));
  const around = new Set(
    bodies
      .filter(({ sha256, of = [] }) => !own.has(sha256) && of.some((one) => near.has(one)))
      .map(({ sha256 }) => sha256),
  );
  return { own: [...own], around: [...around] };
};
