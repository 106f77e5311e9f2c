/** Whether an instrument may be read on a day: days in ISO form are in order as texts. */
export const instrumentDate = (
  due: string | undefined,
  day: string,
): 'in date' | 'out of date' | 'not said' =>
  due === undefined ? 'not said' : due >= day ? 'in date' : 'out of date';
