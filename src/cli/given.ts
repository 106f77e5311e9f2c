/** Members that are there. */
export const given = <T extends object>(members: { readonly [K in keyof T]: T[K] | undefined }): Partial<T> =>
  Object.fromEntries(Object.entries(members).filter(([, value]) => value !== undefined)) as Partial<T>;
