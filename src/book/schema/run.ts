import * as z from 'zod';
import { fittingNames } from '../fitting.ts';
import { pipeMaterialNames } from '../pipe-material.ts';
import { list, name, note, oneOf, part, plain, tabled, whole } from './part.ts';
import { above0, least0, quantity } from './quantity.ts';
import { tag } from './tag.ts';

export const fitting = part(
  'Fittings of one kind in a pipe piece.',
  {
    kind: tabled(fittingNames, 'k', 'What it is.'),
  },
  {
    count: whole('How many. Absent: one.'),
    k: plain(
      'Loss coefficient of one, on the velocity in the bore of the piece; instead of the table.',
      0,
      1e6,
    ),
  },
);

const base = {
  tag: tag('run piece'),
  name,
  rating: quantity('gaugePressure', 'Highest pressure that it may see.', above0),
  note,
};

export const pipe = part(
  'A straight length of pipe or hose with its fittings.',
  { kind: z.literal('pipe') },
  {
    ...base,
    bore: quantity('length', 'Inside diameter. A nominal size is not a bore.', above0),
    length: quantity('length', 'Length.', least0),
    material: oneOf(pipeMaterialNames, 'Material, from which the roughness is taken.'),
    roughness: quantity('length', 'Roughness of the wall; instead of the material.', least0),
    rise: quantity(
      'length',
      'How much the end lies above the beginning. Used only where the height of the source is not given.',
    ),
    wall: quantity('length', 'Wall thickness.', above0),
    elasticity: quantity('elasticModulus', 'Elastic modulus of the wall.', above0),
    fittings: list(fitting, 'Fittings in it.'),
  },
);

export const valve = part(
  'A piece with a flow coefficient: valve, strainer, meter.',
  { kind: z.literal('valve') },
  {
    ...base,
    kv: quantity('flowCoefficient', 'Flow coefficient, Kv or Cv.', above0),
    bore: quantity('length', 'Bore.', above0),
  },
);

export const constantLoss = part(
  'A piece that takes nearly the same pressure at any flow: a backflow preventer.',
  { kind: z.literal('constant') },
  {
    ...base,
    loss: quantity('pressureDifference', 'Pressure that it takes.', least0),
  },
);

export const runPiece = z
  .discriminatedUnion('kind', [pipe, valve, constantLoss])
  .meta({ id: 'runPiece', description: 'A piece of a run, in the order of the flow.' });
