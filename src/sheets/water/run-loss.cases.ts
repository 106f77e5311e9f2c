import type { SheetCase } from '../sheet-case.ts';

export const runLossCases: readonly SheetCase[] = [
  {
    name: 'hook-up with hose, valve and backflow preventer, 10 degC, 2.5 m3/h',
    source: {
      title: 'Darcy-Weisbach, Colebrook-White by a bracketing root finder, Kv by definition',
      place: 'independent script',
      mark: 'computed',
    },
    inputs: {
      bore: [0.0273, 0.026, 0.026, 0.026],
      length: [18, 3, 0, 0],
      roughness: [0.00015, 0.00001, 0, 0],
      fittings: [9.8, 1.2, 0, 0],
      kv: [0, 0, 6, 0],
      constantLoss: [0, 0, 0, 80000],
      flow: 2.5 / 3600,
      density: 999.703,
      viscosity: 1305.9e-6,
    },
    outputs: {
      loss: 123762.561206,
      pieceLoss: [22891.426419, 3515.179926, 17355.954861, 80000],
      highestVelocity: 1.3079794797,
      reynolds: [24793.96895, 26033.667398, 26033.667398, 26033.667398],
    },
    tolerance: { relative: 1e-8, reason: 'printed digits; both solve the same equation' },
  },
];
