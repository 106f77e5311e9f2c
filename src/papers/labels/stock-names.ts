/** Stock of labels by its measures: how many stand on a page of which size, or that they wrap around a wire. */
export const stockNames = ['a4-24', 'a4-65', 'letter-30', 'wrap-a4', 'wrap-letter'] as const;

export type StockName = (typeof stockNames)[number];
