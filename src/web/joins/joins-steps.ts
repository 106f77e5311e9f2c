/** What is asked of the joins of a line, in the order in which one meets it. */
export const joinsSteps = ['loose', 'order', 'make', 'faults', 'crates'] as const;

export type JoinsStep = (typeof joinsSteps)[number];

/** The step of an address; an unknown one is the first. */
export const joinsStepNamed = (named: string | undefined): JoinsStep =>
  joinsSteps.find((step) => step === named) ?? joinsSteps[0];
