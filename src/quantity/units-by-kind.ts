import type { Kind } from './kinds.ts';
import type { Unit } from './unit.ts';
import * as carried from './units/carried-by-air.ts';
import * as conductor from './units/conductors.ts';
import * as dissolved from './units/dissolved.ts';
import * as energy from './units/energies.ts';
import * as flow from './units/flows.ts';
import * as heat from './units/heat.ts';
import * as length from './units/lengths.ts';
import * as mechanics from './units/mechanics.ts';
import * as air from './units/normal-air.ts';
import * as pressure from './units/pressures.ts';
import * as rate from './units/rates.ts';
import * as hardness from './units/water-hardness.ts';

/** Every unit that is read and printed, by kind, in the order of a menu. */
export const unitsByKind: Readonly<Record<Kind, readonly Unit[]>> = {
  ratio: rate.ratios,
  count: rate.counts,
  length: length.lengths,
  area: length.areas,
  volume: length.volumes,
  mass: mechanics.masses,
  time: energy.times,
  angle: rate.angles,
  velocity: mechanics.velocities,
  acceleration: mechanics.accelerations,
  frequency: rate.frequencies,
  rotationalSpeed: rate.rotationalSpeeds,
  temperature: energy.temperatures,
  temperatureDifference: energy.temperatureDifferences,
  gaugePressure: pressure.gaugePressures,
  absolutePressure: pressure.absolutePressures,
  pressureDifference: pressure.pressureDifferences,
  volumeFlow: flow.volumeFlows,
  normalAirVolume: air.normalAirVolumes,
  normalAirFlow: air.normalAirFlows,
  actualAirFlow: flow.actualAirFlows,
  massFlow: flow.massFlows,
  density: mechanics.densities,
  dynamicViscosity: mechanics.dynamicViscosities,
  kinematicViscosity: mechanics.kinematicViscosities,
  elasticModulus: pressure.elasticModuli,
  bearingPressure: heat.bearingPressures,
  flowCoefficient: flow.flowCoefficients,
  pulseDensity: length.pulseDensities,
  rate: rate.rates,
  startRate: rate.rates,
  force: mechanics.forces,
  torque: mechanics.torques,
  energy: energy.energies,
  power: energy.powers,
  heatFlow: heat.heatFlows,
  heatFlux: heat.heatFluxes,
  heatTransfer: heat.heatTransfers,
  surfaceCoefficient: heat.surfaceCoefficients,
  thermalConductivity: heat.thermalConductivities,
  specificHeat: heat.specificHeats,
  specificEnergy: heat.specificEnergies,
  apparentPower: energy.apparentPowers,
  voltage: energy.voltages,
  current: energy.currents,
  resistance: energy.resistances,
  resistancePerLength: conductor.resistancesPerLength,
  conductorArea: conductor.conductorAreas,
  capacitance: conductor.capacitances,
  conductivity: energy.conductivities,
  massFraction: rate.massFractions,
  relativeHumidity: rate.relativeHumidities,
  linearDensity: mechanics.linearDensities,
  sonicConductance: carried.sonicConductances,
  humidityRatio: carried.humidityRatios,
  massConcentration: carried.massConcentrations,
  waterHardness: hardness.waterHardnesses,
  numberConcentration: carried.numberConcentrations,
  soluteConcentration: dissolved.soluteConcentrations,
  concentrationTime: dissolved.concentrationTimes,
  inactivationRate: dissolved.inactivationRates,
  cubicExpansion: heat.cubicExpansions,
  equivalentConcentration: dissolved.equivalentConcentrations,
  acidity: dissolved.acidities,
  soundLevel: mechanics.soundLevels,
  lifetime: energy.lifetimes,
  failureRate: rate.failureRates,
};
