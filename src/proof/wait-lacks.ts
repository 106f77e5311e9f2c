import type { Book } from '../book/index.ts';
import type { Answerer } from '../floor/questions/index.ts';
import type { GateName } from './gate-names.ts';
import { type Stage, stageOrder, stages } from './stage.ts';
import { isOver, type ProofWait } from './waits.ts';

/** What others own and keeps a gate. */
export interface WaitLack {
  readonly id: string;
  readonly sort: 'wait';
  readonly holder: Answerer;
  readonly path: string;
}

/** The last stage that may begin once a gate is passed. */
const opens: Readonly<Record<GateName, Stage | undefined>> = {
  'ready to run off': 'run',
  'ready to ship': 'handover',
  'ready to travel': undefined,
  'ready to energise': 'energised',
  'ready to produce': 'product',
  accepted: 'handover',
};

/** What must be arranged before anybody travels, whether the book has thought of it or not, and who arranges it. */
const arranged = { people: 'builder', 'lifting gear': 'site', 'water flushed': 'site' } as const;

const keeps = ({ before = 'accepted' }: ProofWait, gate: GateName): boolean => {
  if (before === gate) return true;
  const last = opens[gate];
  const stage = stages.find((one) => one === before);
  return (
    gate === 'accepted' ||
    (stage !== undefined && last !== undefined && stageOrder(stage) <= stageOrder(last))
  );
};

const holderOf = ({ about }: Book, { owner }: ProofWait): Answerer => {
  const firm = about?.people?.find(({ tag }) => tag === owner)?.firm;
  return firm !== undefined && firm === about?.builder ? 'builder' : 'site';
};

/** The waits of a floor that keep a gate: those before it, and before travelling what nobody has arranged. */
export const waitLacks = (
  book: Book,
  floor: string,
  gate: GateName,
  waits: readonly ProofWait[],
): readonly WaitLack[] => {
  const own = waits.filter((wait) => wait.floor === floor);
  const open = own
    .filter((wait) => !isOver(wait) && keeps(wait, gate))
    .map((wait) => ({ id: wait.wait, sort: 'wait' as const, holder: holderOf(book, wait), path: wait.path }));
  if (gate !== 'ready to travel') return open;
  const booked = Object.entries(arranged).flatMap(([kind, holder]): readonly WaitLack[] => {
    const mine = own.filter((wait) => wait.kind === kind);
    if (mine.length === 0) return [{ id: kind, sort: 'wait', holder, path: '/waits' }];
    return mine
      .filter((wait) => !isOver(wait) && !keeps(wait, gate))
      .map((wait) => ({ id: wait.wait, sort: 'wait', holder: holderOf(book, wait), path: wait.path }));
  });
  return [...open, ...booked];
};
