/** Sentences that more than one sheet of air says, in English. */
export const notes = {
  CAUTION_COMPRESSED_AIR:
    'Compressed air stores energy: the figure advises only. Rating, relief, isolation, venting and guarding follow the local code and a competent person; check before anybody connects or opens anything.',
  AIR_REFERENCE:
    'Normal air here is ANR counted dry: 100 kPa, 20 °C (ISO 8778, read second hand). One encyclopedia prints 101.3 kPa for ANR (1.3 % denser), DIN 1343 is 0 °C and 101.325 kPa (8.7 % denser): ask which one a data sheet means.',
  AIR_REFERENCE_HUMID:
    'With the 65 % relative humidity of ISO 8778 counted, a cubic metre of normal air holds 1.5 % less dry air.',
  AIR_OUTLET_BELOW_ATMOSPHERE: 'The outlet would be under the atmosphere: this flow cannot leave into it.',
  DEMAND_PEAK_UNDER_AVERAGE:
    'The peak is under the average: more of the users must draw at the same moment than is said.',
  DEMAND_NO_LEAK:
    'No leakage is counted; well-kept systems lose under 10 % of the capacity, neglected ones 20 to 30 %.',
  FILTER_DIRTY: 'Loss of a clean filter; a dirty one loses several times as much.',
  REGULATOR_WIDE_OPEN:
    'The regulator gets too little to regulate: it stands wide open as a restriction, and its setting means nothing.',
  REGULATOR_DROOP:
    'Typical droop is 0.2 to 0.6 bar at the rated flow (memory): take the curve of the data sheet.',
  AIR_VELOCITY_HIGH: 'Over 15 m/s: usual are up to 6 to 10 m/s in mains and 15 m/s in branches (memory).',
  VAPOUR_IDEAL:
    'Real-gas enhancement of the vapour (about 3 % at 7 bar, memory) is left out, as the trade does.',
  RESTRICTION_NOZZLE:
    'A critical pressure ratio over 0.5: 0.528 is the ideal nozzle; real valves have 0.2 to 0.5 (memory), so check it.',
  FRICTION_AIR_TRANSITION:
    'Between laminar and turbulent (Reynolds number 2 000 to 4 000): the loss is indicative.',
  LOAD_RATIO_HIGH:
    'Load ratio over 0.5: a moving load slows down fast with every further loss of pressure (guide, memory: 0.5 moving, 0.7 slow or held, 0.85 clamping).',
  LOAD_RATIO_STALL: 'Load ratio of 1 or more: the cylinder stalls.',
  VALVE_PILOT_PRESSURE:
    'Under about 3 bar(g) valves with an internal pilot may not shift at all: some ask for 3 bar (a manual), others for 1.5 to 2.5 (memory).',
  CYLINDER_FRICTION_SHARE:
    'The friction share is a habit (memory: 0.9, or 0.85 under 40 mm of bore); a trade source puts the seals at 1 to 10 psi.',
} as const;

/** Sentences of problems that more than one sheet of air finds. */
export const problems = {
  AIR_BELOW_VACUUM: '{path}: "{given}" is below absolute zero pressure at this atmosphere.',
  FILTER_TAKES_ALL: 'The filter would lose all of the pressure at this flow: it is far too small.',
  REGULATOR_DROOPS_AWAY: 'The droop at this flow is as much as the setting: the regulator is far too small.',
  CYLINDER_ROD: 'The rod cannot be as thick as the bore or thicker.',
  DEW_POINT_RANGE:
    'The vapour pressure has no dew point between -100 and 200 °C, where the equations of saturation hold.',
  VAPOUR_OVER_TOTAL: 'The vapour pressure is not below the total pressure: that is steam, not moist air.',
} as const;
