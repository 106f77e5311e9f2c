export type * from './book.ts';
export { type Fitting, fittingNames, fittings } from './fitting.ts';
export { type PipeMaterial, pipeMaterialNames, pipeMaterials } from './pipe-material.ts';
export { bookSchema, bookVersion } from './schema/book.ts';
export type { Quantity } from './schema/quantity.ts';
