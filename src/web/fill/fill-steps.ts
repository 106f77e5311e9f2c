/** The questions of the page, in the order in which the engineer meets them. */
export const fillSteps = ['samples', 'weigh', 'trials', 'presets', 'floor', 'lot'] as const;
export type FillStep = (typeof fillSteps)[number];

/** The step that an address names; one that nobody knows is the first. */
export const stepNamed = (name: string | undefined): FillStep =>
  fillSteps.find((step) => step === name) ?? 'samples';
