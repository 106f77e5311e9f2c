import { type Book, type Patch, readBook, tryPatches } from '../../../book/index.ts';

/** A line of one washer with round numbers, for arithmetic that can be done by hand, on one floor. */
const line = {
  twinfloor: 1,
  about: { title: 'Hand arithmetic' },
  agreement: { rates: [{ format: 'F', rate: '720 /h' }], heatUp: '2 h' },
  line: {
    products: [{ tag: 'P', fillTemperature: '10 degC', properties: 'water', conductivity: '0.01 S/m' }],
    formats: [{ tag: 'F', brimful: '1 L', level: '0.95 L', mass: '0.5 kg', material: 'glass', product: 'P' }],
    stations: [
      {
        tag: 'W',
        kind: 'washer',
        row: 4,
        stroke: '2 s',
        dwell: '10 s',
        drive: 'M',
        carryOver: '4 mL',
        zones: [
          { tag: 'Z1', rows: 2, medium: 'water', temperature: '35 degC', flow: '12 L/min', tieIn: 'TW' },
          {
            tag: 'Z2',
            rows: 5,
            medium: 'detergent',
            concentration: '3 %',
            temperature: '60 degC',
            dead: '4 s',
            tank: '400 L',
            depth: '0.5 m',
            surface: '1 m2',
            walls: '2 m2',
            outlet: '50 mm',
            dumpEvery: '8 h',
          },
          { tag: 'Z3', rows: 3, medium: 'water', temperature: '40 degC', flow: '15 L/min', tieIn: 'TH' },
          { tag: 'Z4', rows: 2, medium: 'water', temperature: '15 degC', flow: '18 L/min', tieIn: 'TW' },
        ],
      },
      { tag: 'FILL', kind: 'fill', lanes: [{ tag: 'L1', meter: { kind: 'magnetic' } }] },
    ],
    drives: [{ tag: 'M', power: '1 kW', voltage: '400 V', frequency: '50 Hz' }],
    heaters: [{ tag: 'E', power: '24 kW', voltage: '480 V', phases: '3', zone: 'Z2' }],
    tieIns: [
      { tag: 'TW', kind: 'water', pressure: '2 bar', height: '1 m' },
      { tag: 'TH', kind: 'hot water' },
      { tag: 'TD', kind: 'drain' },
    ],
    sections: [
      {
        tag: 'S1',
        mass: '2000 kg',
        length: '3 m',
        width: '1.2 m',
        height: '2 m',
        clearance: '0.8 m',
        holds: ['W'],
        feet: 4,
        foot: '5026.548 mm2',
        gear: {
          height: '120 mm',
          mass: '100 kg',
          wheels: 4,
          contactLength: '30 mm',
          contactWidth: '70 mm',
          wheelCapacity: '1000 kg',
          clearance: '50 mm',
        },
      },
    ],
  },
  floors: [
    {
      tag: 'A',
      role: 'built on',
      liquid: { product: 'P' },
      power: { voltage: { value: '400 V', standing: 'measured' }, frequency: '50 Hz' },
      water: {
        temperature: { value: '15 degC', standing: 'measured' },
        flow: { value: '60 L/min', standing: 'measured' },
        pressure: { value: '3 bar', standing: 'measured' },
        hot: { temperature: { value: '60 degC', standing: 'measured' } },
      },
      room: { ambient: { value: '20 degC', standing: 'measured' } },
    },
  ],
};

/** That book with changes. */
export const washBook = (...changes: readonly Patch[]): Book => {
  const read = readBook(JSON.stringify(line));
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return tryPatches(read.value, changes);
};
