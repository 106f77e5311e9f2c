const linePairs = ['L1–L2', 'L2–L3', 'L3–L1'] as const;

/** What people call a member of a list that has a place of its own and no name: the two lines of a voltage. */
export const memberName = (steps: readonly string[]): string | undefined => {
  const [index, list, , within] = steps.toReversed();
  return list === 'between' && within === 'readings' ? linePairs[Number(index)] : undefined;
};

/** The key by which one member of a list is called, where the list has the key of many. */
export const memberKey = (list: string): string => (list === 'readings' ? 'reading' : list);
