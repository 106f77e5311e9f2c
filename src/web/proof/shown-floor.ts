/** Of some floors the one that is chosen; while none of them is, the one that the line was built on. */
export const shownFloor = <Floor extends { readonly floor: string; readonly role: string }>(
  floors: readonly Floor[],
  chosen: unknown,
): Floor | undefined =>
  floors.find(({ floor }) => floor === chosen) ?? floors.find(({ role }) => role === 'built on') ?? floors[0];
