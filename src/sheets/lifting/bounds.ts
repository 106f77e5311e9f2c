/** What the sheets of lifting accept, in SI. */
export const someMasses = { least: 0.1, most: 1e6 } as const;
export const someForces = { above: 0, most: 1e8 } as const;
export const lengths = { least: 1e-3, most: 100 } as const;
