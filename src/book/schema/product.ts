import * as z from 'zod';
import { name, note, oneOf, part, plain, words } from './part.ts';
import { above0, least0, quantity } from './quantity.ts';
import { tag } from './tag.ts';

export const propertiesAt = part(
  'Properties at one temperature.',
  {},
  {
    at: quantity('temperature', 'Temperature at which they hold.'),
    density: quantity('density', 'Density.', above0),
    viscosity: quantity('dynamicViscosity', 'Dynamic viscosity.', above0),
  },
);

export const foaming = part(
  'How the product takes a jet.',
  {},
  {
    class: oneOf(['still', 'slight', 'froths', 'carbonated'], 'How easily it foams.'),
    jetBeforeCovered: quantity('velocity', 'Highest jet speed while the nozzle is not covered.', above0),
    jetAfterCovered: quantity('velocity', 'Highest jet speed once the nozzle is covered.', above0),
    standing: oneOf(['measured', 'stated', 'assumed'], 'How the class is known.'),
    by: words('Who says so.'),
  },
);

export const product = part(
  'A liquid that the line fills or runs on.',
  { tag: tag('product') },
  {
    name,
    fillTemperature: quantity('temperature', 'Temperature at which it is filled.'),
    properties: z
      .union([z.literal('water'), z.array(propertiesAt)])
      .describe('`water`, or density and viscosity at one or more temperatures.'),
    conductivity: quantity('conductivity', 'Electrical conductivity.', least0),
    vapourPressure: quantity('absolutePressure', 'Vapour pressure at the fill temperature.', least0),
    bulkModulus: quantity('elasticModulus', 'Bulk modulus.', above0),
    acidity: plain('pH.', 0, 14),
    particles: words('Pulp, fibres, sizes.'),
    foaming,
    note,
  },
);
