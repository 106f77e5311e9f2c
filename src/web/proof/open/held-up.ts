import type { Progress } from '../../../proof/progress.ts';

/** A check and how many others wait for it. */
export interface HoldsUp {
  readonly check: string;
  readonly others: number;
}

/** Checks that can be done now by how many others each holds up, most first; those that hold up none are left out. */
export const holdingUp = ({ next, blocked }: Pick<Progress, 'next' | 'blocked'>): readonly HoldsUp[] => {
  const others = new Map<string, number>();
  for (const { by } of blocked) for (const one of by) others.set(one, (others.get(one) ?? 0) + 1);
  return next
    .flatMap((check) => {
      const many = others.get(check) ?? 0;
      return many === 0 ? [] : [{ check, others: many }];
    })
    .sort((a, b) => b.others - a.others);
};
