/** Sentences that more than one sheet of water says, in English. */
export const notes = {
  FRICTION_TRANSITION:
    'Between laminar and turbulent (Reynolds number 2 000 to 4 000): the flow flips between two states, the loss is indicative.',
  FRICTION_ROUGHNESS:
    'Roughness over a twentieth of the bore: outside what the friction law was measured for.',
  PIPE_ROUGHNESS: 'The roughness cannot be over half of the bore.',
  PRESSURE_CAUTION:
    'Pressure equipment: the figure advises only. Rating, relief and test follow the local code and a competent person.',
  PUMP_SPEED_FAR:
    'Further than 30 % from the speed of the curve: the affinity laws drift, and power and suction head rise fast.',
  PUMP_RUN_OUT: 'Beyond run-out: the pump gives no head at this flow.',
  DOSE_FEW_COUNTS: 'Fewer than 1 000 counts in a fill: one count is over 0.1 % of it.',
  DRAIN_SLOW: 'Under 0.5 m/s: the drain does not clean itself.',
  DRAIN_FULL: 'Fuller than 0.7 of the bore: no air gets through; usual is 0.5 inside buildings.',
} as const;
