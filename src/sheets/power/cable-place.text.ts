/** Words of the fields that say where an IEC cable lies. */
export const cablePlaceInputs = {
  method: 'Cable and how it lies',
  ambient: 'Ambient temperature',
  circuits: 'Circuits bunched or enclosed together',
} as const;

export const cablePlaceOptions = {
  method: {
    'b1-single-core': 'B1, single cores in conduit or trunking',
    'b2-multicore': 'B2, multicore in conduit or trunking',
    'c-multicore': 'C, multicore clipped direct',
    'c-single-core': 'C, single cores clipped direct',
  },
} as const;

export const coolerThanTable = {
  COOLER_THAN_TABLE: 'Cooler than 25 °C, where the table of correction begins: its first row is kept.',
} as const;
