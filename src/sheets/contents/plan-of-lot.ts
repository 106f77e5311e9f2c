/** The plan of a table, rising by the largest lot, that a lot falls under; the last one has no end. */
export const planOfLot = <P extends { readonly most: number }>(plans: readonly P[], lotSize: number): P =>
  plans.find(({ most }) => lotSize <= most)!;
