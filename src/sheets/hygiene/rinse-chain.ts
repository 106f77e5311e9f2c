/**
 * What is left after rinses that each have fresh water, over what came in.
 *
 * Method   c_n/c_0 = (v/(v + e q))^n
 * Symbols  v  carry   scalar  m3     carried out of a stage by one bottle, >= 0
 *          q  fresh   scalar  m3     fresh water for a bottle in every stage, >= 0
 *          n  stages  count
 *          e  mixing  scalar         share of the water that mixes with what is carried
 * Returns  share, 1 without water, 0 where nothing is carried
 * Assumes  each stage mixes well; the share e of its water
 * Cost     O(1)
 * Source   balance of a stage
 */
export const serialShare = (carry: number, fresh: number, stages: number, mixing: number): number =>
  carry === 0 ? 0 : (carry / (carry + mixing * fresh)) ** stages;

/**
 * What is left after rinses through which the same fresh water runs against the bottles, over what came in.
 *
 * Method   c_n/c_0 = (r - 1)/(r^(n+1) - 1) = 1/(1 + r + ... + r^n),  r = e Q/v
 * Symbols  Q  fresh  scalar  m3  fresh water for a bottle into the last stage, >= 0; the rest as above
 * Returns  share, 1 without water, 0 where nothing is carried
 * Assumes  as above
 * Cost     O(n)
 * Source   balances of the stages, solved
 */
export const counterShare = (carry: number, fresh: number, stages: number, mixing: number): number => {
  if (carry === 0) return 0;
  const r = (mixing * fresh) / carry;
  // the sum has no hole at r = 1, where the closed form is 0/0
  let sum = 1;
  for (let k = 0; k < stages; k++) sum = sum * r + 1;
  return 1 / sum;
};
