import { useMemo, useState } from 'react';
import { type ProvedCheck, roundTrip, stages } from '../../proof/index.ts';
import { usePage, usePagePart } from '../state/page-context.ts';
import { useCheckSays } from './check-says.ts';
import { useProof } from './with-proof.tsx';

/** As the trade does them, or as one walks along the line. */
export const checkOrders = ['stage', 'place'] as const;
export type CheckOrder = (typeof checkOrders)[number];

/** Checks that stand under one heading. */
export interface CheckGroup {
  readonly key: string;
  readonly title: string;
  readonly checks: readonly ProvedCheck[];
}

export interface OrderedChecks {
  readonly order: CheckOrder;
  readonly choose: (order: CheckOrder) => void;
  readonly groups: readonly CheckGroup[];
  /** The checks one after the other, as their groups stand. */
  readonly row: readonly ProvedCheck[];
}

/** The checks of the chosen floor in the order that this browser keeps. */
export const useCheckOrder = (): OrderedChecks => {
  const page = usePage();
  const id = usePagePart((state) => state.id);
  const { book, floor } = useProof();
  const says = useCheckSays();
  const { say } = page.words;
  const note = `proof-order/${id}`;
  const [order, setOrder] = useState<CheckOrder>(
    () => checkOrders.find((one) => one === page.notes.read(note)) ?? 'stage',
  );
  const groups = useMemo((): readonly CheckGroup[] => {
    if (order === 'stage') {
      return stages
        .map((stage) => ({
          key: stage,
          title: say(`proof.stage.${stage}`),
          checks: floor.checks.filter(({ check }) => check.stage === stage),
        }))
        .filter(({ checks }) => checks.length > 0);
    }
    return roundTrip(book, floor.checks).map(({ at, checks }) => ({
      key: at ?? '',
      title: at === undefined ? say('proving.order.whole') : says.thing(at),
      checks,
    }));
  }, [order, book, floor, says, say]);
  const row = useMemo(() => groups.flatMap(({ checks }) => checks), [groups]);
  return {
    order,
    choose: (next) => {
      page.notes.write(note, next);
      setOrder(next);
    },
    groups,
    row,
  };
};
