/** What is asked about the proof of a floor, in the order in which one meets it. */
export const proofSteps = ['protocol', 'run', 'settings', 'open', 'gates', 'send'] as const;

export type ProofStep = (typeof proofSteps)[number];

/** The step of an address; an unknown one is the first. */
export const proofStepNamed = (named: string | undefined): ProofStep =>
  proofSteps.find((step) => step === named) ?? proofSteps[0];
