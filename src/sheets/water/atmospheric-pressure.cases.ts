import type { SheetCase } from '../sheet-case.ts';

export const atmosphericPressureCases: readonly SheetCase[] = [
  ...(
    [
      [500, 95461],
      [1000, 89874.6],
      [2000, 79495.2],
    ] as const
  ).map(([altitude, pressure]) => ({
    name: `table of the standard atmosphere, ${altitude} m`,
    source: {
      title: 'US Standard Atmosphere / ISO 2533',
      place: 'table of geopotential altitudes',
      mark: 'memory' as const,
    },
    inputs: { altitude },
    outputs: { pressure },
    tolerance: { relative: 5e-5, reason: 'printed digits' },
  })),
  {
    name: 'hydrostatic balance of air that cools 6.5 K a kilometre, integrated, 500 m',
    source: {
      title: 'hydrostatic balance, numerical integration',
      place: '288.15 K at the sea, 287.053 J/(kg K)',
      mark: 'computed',
    },
    inputs: { altitude: 500 },
    outputs: { pressure: 95460.838 },
    tolerance: { relative: 1e-5, reason: 'the constants of the closed form have six digits' },
  },
];
