/** Sentences that more than one sheet of power says, in English. */
const notes = {
  CAUTION_ELECTRICAL:
    'Check aid only. Check with the local code, the utility and a licensed electrician: they decide, and only qualified persons work on the supply.',
  NEC_430:
    'Rule set: US, NEC article 430, 2008 edition as transcribed. The edition that the inspector applies may differ.',
  NEC_430_248:
    'Rule set: US, NEC tables 430.248 (single phase) and 430.250 (three phase), 2008 edition as transcribed.',
  NEC_240_6: 'Standard ratings: US, NEC 240.6(A), as transcribed.',
  NEC_310_16:
    'Rule set: US, NEC table 310.16, in the edition chosen; copper, at most three current-carrying conductors, ambient 30 °C before correction. Editions from 2011 on print other amperes for some sizes than 2008 and older.',
  NEC_670: 'Rule set: US, NEC 670.4(A), 2008 edition as transcribed, and NFPA 79.',
  NEC_CHAPTER_9:
    'Rule set: US, NEC chapter 9, tables 8 and 9, as transcribed: copper, three single conductors in conduit, 75 °C, 60 Hz.',
  IEC_60364_5_52:
    'Rule set: IEC 60364-5-52 and BS 7671 columns, as transcribed: copper, PVC 70 °C, three loaded conductors, ambient 30 °C before correction. The tables of IEC 60204-1 for machines are already at 40 °C: correcting them again for 40 °C is wrong.',
  IEC_METHODS_DIFFER:
    'The single-core column of method C (BS 7671) is higher than the multicore column of method C (IEC): take the one that is installed.',
  IEC_ROW_FROM_MEMORY: 'This row of the table is from memory, not confirmed in a copy.',
  IEC_RATINGS_FROM_MEMORY: 'The list of IEC device ratings is from memory.',
  TERMINALS_75:
    'Up to 100 A the 75 °C column counts only where the terminals are marked for it, or for motors of design B, C or D; else 60 °C (NEC 110.14(C)).',
  SMALL_CONDUCTOR:
    'Besides motor circuits, the device over 14, 12 and 10 AWG is limited to 15, 20 and 30 A (NEC 240.4(D), from memory).',
  ROUNDED_UP: 'Between two standard ratings the next higher one is allowed here.',
  ROUNDED_DOWN: 'Here the rating may not exceed the limit: the next lower standard rating is taken.',
  LARGEST_DEVICE:
    'An instantaneous-trip branch breaker counts at most as the percentage of the feeder device’s own kind. Where conductors are larger than required, the device may follow their ampacity (NEC 430.62(B)).',
  TABLE_CURRENT_NOT_NAMEPLATE:
    'US rules size wires and short-circuit devices by the table current, not the nameplate; only the overload relay follows the nameplate.',
  START_ASK_UTILITY: 'Ask the utility which starting current it permits.',
  SUM_CONSERVATIVE:
    'A conservative sum: currents of other power factors add to less, so the real one is this or under it.',
  DROP_OVER_3: 'Over 3 %: more than the usual advice for a feeder or a branch alone.',
  DROP_OVER_5: 'Over 5 %: more than the usual advice for feeder and branch together.',
  TRANSFORMER_STIFF:
    'The supply ahead of the transformer is taken as unlimited; the utility’s written figure with its date replaces this.',
  COLD_CONDUCTOR:
    'The greatest fault current runs through a cold conductor (20 to 25 °C): resistance at 75 °C gives too little.',
  FAULT_ARITHMETIC_LOW:
    'Impedances added as numbers give over 5 % too little here: a rating compared with that figure could be too small.',
  UNBALANCE_OVER_1:
    'Over 1 %: motors are to be derated (NEMA MG 1). ANSI C84.1 allows a utility 3 % at no load.',
  FEEDER_OTHER_LOADS_DISPUTED:
    'With other loads (NEC 430.63) practitioners dispute whether the sum is a least or a greatest rating; here it stands as the greatest.',
  DEVICE_FROM_MEMORY:
    'The rule of the main device of a machine (NEC 670.4(C), NFPA 79 7.2.10) is from memory.',
} as const;

export type NoteCode = keyof typeof notes;

export const notesOf = (...codes: readonly NoteCode[]): Readonly<Record<string, string>> =>
  Object.fromEntries(codes.map((code) => [code, notes[code]]));
