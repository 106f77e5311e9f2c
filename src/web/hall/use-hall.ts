import { useCallback, useEffect, useState } from 'react';
import type { HallSeen } from '../../server/hall-api.ts';
import { usePage } from '../state/page-context.ts';

/** While devices come and go the list follows them. */
const pause = 2_000;

type HallAct = 'openHall' | 'closeHall' | 'renewHallCode' | 'removeHallDevice';

export interface HallAsked {
  readonly hall: HallSeen | undefined;
  /** Why what was asked was not done. */
  readonly refused: string | undefined;
  readonly unreachable: boolean;
  readonly act: (name: HallAct, body: object) => void;
}

/** What the server tells of the hall, asked again and again while somebody looks. */
export const useHall = (): HallAsked => {
  const page = usePage();
  const [hall, setHall] = useState<HallSeen>();
  const [refused, setRefused] = useState<string>();
  const [unreachable, setUnreachable] = useState(false);
  useEffect(() => {
    let over = false;
    const read = async (): Promise<void> => {
      const reply = await page.client('readHall', {});
      if (over) return;
      setUnreachable(!reply.ok && !reply.reached);
      if (reply.ok) setHall(reply.value);
      else if (reply.reached) setRefused(reply.failure.message);
      page.later(() => void (over || read()), pause);
    };
    void read();
    return () => {
      over = true;
    };
  }, [page]);
  const act = useCallback(
    async (name: HallAct, body: object): Promise<void> => {
      const reply = await page.client(name, { body } as never);
      setUnreachable(!reply.ok && !reply.reached);
      if (reply.ok) setHall(reply.value);
      setRefused(!reply.ok && reply.reached ? reply.failure.message : undefined);
    },
    [page],
  );
  return { hall, refused, unreachable, act: (name, body) => void act(name, body) };
};
