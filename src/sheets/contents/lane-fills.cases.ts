/** Twelve invented fills of one lane, two at each of six presets, that several cases use. */
export const laneFills = {
  counts: [600, 600, 700, 700, 800, 800, 900, 900, 1000, 1000, 1100, 1100],
  volumes: [
    302.41e-6, 304.05e-6, 353.62e-6, 351.94e-6, 402.3e-6, 403.55e-6, 451.47e-6, 452.92e-6, 502.88e-6,
    501.1e-6, 550.96e-6, 552.31e-6,
  ],
} as const;
