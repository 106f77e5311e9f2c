import type { Kind, UnitSystem } from '../quantity/index.ts';
import type { UnitWishes } from '../quantity/unit-choice.ts';
import { findUnit } from '../quantity/unit-lookup.ts';
import type { Book } from './book.ts';

/** Which of the book's own unit names serves a kind. */
const named: Readonly<Record<string, readonly Kind[]>> = {
  pressure: ['gaugePressure', 'absolutePressure', 'pressureDifference'],
  flow: ['volumeFlow'],
  volume: ['volume'],
  temperature: ['temperature'],
  mass: ['mass'],
  density: ['density'],
  velocity: ['velocity'],
  length: ['length'],
  viscosity: ['dynamicViscosity'],
  force: ['force'],
  torque: ['torque'],
  power: ['power'],
  energy: ['energy'],
  rate: ['rate'],
  flowCoefficient: ['flowCoefficient'],
  airFlow: ['normalAirFlow'],
  airVolume: ['normalAirVolume'],
};

/** The units in which a book wants to be read; a system that the person asked for goes before them. */
export const bookUnits = (book: Book, system: UnitSystem | undefined): UnitWishes => {
  if (system !== undefined) return { byKind: {}, system };
  const units = Object.entries((book.about?.units ?? {}) as Readonly<Record<string, unknown>>);
  const byKind: Partial<Record<Kind, string>> = {};
  for (const [name, unit] of units) {
    for (const kind of named[name] ?? []) {
      const id = typeof unit === 'string' ? findUnit(kind, unit)?.id : undefined;
      if (id !== undefined) byKind[kind] = id;
    }
  }
  const own = book.about?.system;
  const bore = findUnit('length', book.about?.units?.bore ?? (own === 'us' ? 'in' : 'mm'))?.id;
  return {
    byKind,
    ...(own === undefined ? {} : { system: own }),
    ...(bore === undefined ? {} : { small: bore }),
  };
};
