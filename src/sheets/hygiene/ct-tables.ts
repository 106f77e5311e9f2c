/**
 * CT tables over temperature, mg min/L: EPA 815-R-20-003, 2020, appendix B, through an open-source transcription,
 * read. The zero that the transcription has for viruses at pH 6 and less is of its look-up, not of the EPA.
 */
export interface CtTable {
  /** degC, rising. */
  readonly temperatures: readonly number[];
  readonly ct: readonly number[];
  /** Logs of inactivation that the table is for. */
  readonly logs: number;
}

const chlorineTemperatures = [0.5, 5, 10, 15, 20, 25];

/** 4 logs of viruses by free chlorine, pH 6 to 9. */
export const virusNeutral: CtTable = { temperatures: chlorineTemperatures, ct: [12, 8, 6, 4, 3, 2], logs: 4 };
/** The same at pH 10, which also holds between 9 and 10. */
export const virusAlkaline: CtTable = {
  temperatures: chlorineTemperatures,
  ct: [90, 60, 45, 30, 22, 15],
  logs: 4,
};

const otherTemperatures = [1, 5, 10, 15, 20, 25];
const giardia = (...ct: readonly number[]): CtTable => ({ temperatures: otherTemperatures, ct, logs: 3 });
const virus = (...ct: readonly number[]): CtTable => ({ temperatures: otherTemperatures, ct, logs: 4 });

export const otherDisinfectants = ['ozone', 'chlorine dioxide', 'chloramine'] as const;
export type OtherDisinfectant = (typeof otherDisinfectants)[number];
export const targets = ['giardia', 'viruses'] as const;
export type Target = (typeof targets)[number];

export const otherTables: Readonly<Record<OtherDisinfectant, Readonly<Record<Target, CtTable>>>> = {
  ozone: { giardia: giardia(2.9, 1.9, 1.43, 0.95, 0.72, 0.48), viruses: virus(1.8, 1.2, 1, 0.6, 0.5, 0.3) },
  'chlorine dioxide': {
    giardia: giardia(63, 26, 23, 19, 15, 11),
    viruses: virus(50.1, 33.4, 25.1, 16.7, 12.5, 8.4),
  },
  chloramine: {
    giardia: giardia(3800, 2200, 1850, 1500, 1000, 750),
    viruses: virus(2883, 1988, 1491, 994, 746, 497),
  },
};
