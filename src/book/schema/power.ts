import * as z from 'zod';
import { list, note, oneOf, part, whole, words } from './part.ts';
import { above0, least0, quantity, share } from './quantity.ts';

export const transformer = part(
  'Transformer that feeds the line.',
  {},
  {
    rating: quantity('apparentPower', 'Rated power.', above0),
    impedance: quantity('ratio', 'Short-circuit impedance.', share),
    primary: quantity('voltage', 'Primary voltage.', above0),
    secondary: quantity('voltage', 'Secondary voltage.', above0),
    reactanceRatio: quantity('ratio', 'Reactance over resistance, X/R.', above0),
    note,
  },
);

export const feeder = part(
  'Conductors between the site panel and the line.',
  {},
  {
    length: quantity('length', 'Length one way.', least0),
    size: words('Size of the conductor, in mm2, AWG or kcmil.'),
    material: oneOf(['copper', 'aluminium'], 'Material of the conductor.'),
    insulation: words('Insulation and its rated temperature.'),
    rated: oneOf(['60', '75', '90'], 'Temperature for which its insulation is rated, degC.'),
    terminals: oneOf(['60', '75'], 'Temperature for which the terminals at both ends are marked, degC.'),
    conduit: oneOf(['steel', 'pvc'], 'Conduit in which it lies.'),
    method: oneOf(
      ['b1-single-core', 'b2-multicore', 'c-multicore', 'c-single-core'],
      'How it is laid by IEC 60364-5-52: B1 single cores in conduit, B2 cable in conduit, C on a wall or tray.',
    ),
    parallel: whole('Conductors in parallel for each phase.', 1),
    grouped: whole('Current-carrying conductors laid together.', 1),
    ambient: quantity('temperature', 'Ambient temperature along it.'),
    laid: words('How it is laid.'),
    note,
  },
);

export const power = part(
  'Electrical supply.',
  {},
  {
    system: words('System: voltage, phases, frequency, earthing.'),
    ruleSet: words('Electrical rule set of this floor, where it is not the agreed one.'),
    edition: words('Edition of that rule set.'),
    voltage: quantity('voltage', 'Voltage, line to line.', above0),
    frequency: quantity('frequency', 'Frequency.', above0),
    phases: oneOf(['1', '3'], 'Phases.'),
    earthing: oneOf(
      [
        'TN-S',
        'TN-C',
        'TN-C-S',
        'TT',
        'IT',
        'solidly grounded wye',
        'corner-grounded delta',
        'high-leg delta',
        'ungrounded delta',
        'other',
      ],
      'Earthing and phase arrangement.',
    ),
    faultCurrent: quantity('current', 'Prospective fault current at the panel.', least0),
    sourceFaultPower: quantity('apparentPower', 'Fault level upstream of the transformer.', above0),
    panelRating: quantity('current', 'Short-circuit rating of the panel of the line.', above0),
    transformer,
    stepTransformer: transformer.describe(
      'Transformer between the voltage of the floor and that of the line.',
    ),
    feeder,
    protection: part(
      'Overcurrent device that the site declares.',
      {},
      {
        kind: words('Kind and class.'),
        rating: quantity('current', 'Rated current.', above0),
        interrupting: quantity('current', 'Interrupting rating.', above0),
        residualCurrent: quantity('current', 'Rated residual current, where there is such a device.', above0),
      },
    ),
    readings: list(
      part(
        'Voltages read at one moment.',
        {},
        {
          between: z
            .tuple([
              quantity('voltage', 'L1 to L2.', least0),
              quantity('voltage', 'L2 to L3.', least0),
              quantity('voltage', 'L3 to L1.', least0),
            ])
            .describe('Line to line, in the order L1-L2, L2-L3, L3-L1.'),
          when: words('When, and what was running.'),
        },
      ),
      'What the site says that it reads. Readings taken with us are records.',
    ),
    note,
  },
);
