/** What a plan says of a lot; `not decided` where the rule that we hold does not reach. */
export const lotVerdicts = ['accept', 'reject', 'take more', 'not decided'] as const;
export type LotVerdict = (typeof lotVerdicts)[number];
