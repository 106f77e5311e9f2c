/** How many digits of a certified value are met: -log10 of the relative error, absolute where the value is 0. */
export const digits = (value: number, certified: number): number => {
  const error = Math.abs(value - certified) / (certified === 0 ? 1 : Math.abs(certified));
  return error === 0 ? 15 : Math.min(15, -Math.log10(error));
};
