import { type Fitting, fittings, type RunPiece } from '../../book/index.ts';
import { readEntry } from '../../quantity/index.ts';

/** What one adds to a run, by the name that a fitter would give it. */
export const pieceNames = [
  'pipe',
  'hose',
  'hygienic tube',
  'valve',
  'strainer',
  'water meter',
  'backflow preventer',
] as const;

export type PieceName = (typeof pieceNames)[number];

const assumed = (value: string) => ({ value, standing: 'assumed' }) as const;

/** Pieces that a book describes by a flow coefficient and a table by a loss coefficient. */
const byTable: Partial<Record<PieceName, Fitting>> = {
  valve: 'butterfly valve',
  strainer: 'strainer',
  'water meter': 'water meter',
};

/**
 * Flow coefficient of a piece with a loss coefficient.
 *
 * Method   dp = K rho v^2 / 2 and Kv the flow of water of 1000 kg/m3 at 1 bar: Kv = 3600 A (2e5 / (1000 K))^0.5
 * Symbols  k  loss coefficient, on the velocity in the bore;  bore  m
 * Returns  m3/h
 * Source   definition of Kv, IEC 60534-1; K = 0.0016 d^4 / Kv^2 with d in mm is the same, IEC 60534-2-1, memory
 */
export const kvOf = (k: number, bore: number): number =>
  3600 * (Math.PI / 4) * bore ** 2 * Math.sqrt(2e5 / (1000 * k));

/** Inside diameter of the last piece that says one, m. */
export const boreBefore = (run: readonly RunPiece[]): number | undefined => {
  for (const piece of [...run].reverse()) {
    if (!('bore' in piece) || piece.bore === undefined) continue;
    const read = readEntry(piece.bore, 'length', { path: '' });
    if (read.ok) return read.value.value;
  }
  return undefined;
};

const kvText = (k: number, bore: number): string => `Kv ${Number(kvOf(k, bore).toPrecision(2))}`;

/**
 * A new piece with what such pieces usually have, marked as assumed; a bore is nobody's to assume.
 *
 * Symbols  run  the pieces before it;  name  what people are to read, in their language
 */
export const usualPiece = (of: PieceName, run: readonly RunPiece[], name: string): unknown => {
  switch (of) {
    case 'pipe':
      return { kind: 'pipe', name, material: 'commercial steel' };
    case 'hose':
      return { kind: 'pipe', name, material: 'hose' };
    case 'hygienic tube':
      return { kind: 'pipe', name, material: 'hygienic stainless' };
    case 'backflow preventer':
      // reduced-pressure type: 0.7 to 1.0 bar, nearly whatever the flow; memory
      return { kind: 'constant', name, loss: { value: ['0.7 bar', '1.0 bar'], standing: 'assumed' } };
    default: {
      const bore = boreBefore(run);
      const table = byTable[of];
      const k = table === undefined ? undefined : fittings[table].k;
      return {
        kind: 'valve',
        name,
        ...(bore === undefined || k === undefined ? {} : { kv: assumed(kvText(k, bore)) }),
      };
    }
  }
};
