/** The questions of the page, in the order in which the engineer meets them. */
export const cycleSteps = ['shift', 'hold', 'watch', 'wash', 'proof'] as const;
export type CycleStep = (typeof cycleSteps)[number];

/** The step that an address names; one that nobody knows is the first. */
export const cycleStepNamed = (name: string | undefined): CycleStep =>
  cycleSteps.find((step) => step === name) ?? 'shift';
