import type { Source } from '../frame.ts';

/** Sources that more than one sheet of heat cites. */
export const if97: Source = {
  title: 'IAPWS R7-97, Industrial Formulation 1997 for water and steam',
  edition: '2012',
  place: 'regions 1, 2 and 4; coefficients as public implementations carry them',
  mark: 'read',
};
/** Another formulation of water than the one used here, by another program. */
export const iapws95: Source = {
  title: 'IAPWS-95 by an independent implementation',
  place: 'worked apart from this program',
  mark: 'computed',
};
export const heatBalance: Source = { title: 'heat balance', place: 'derived', mark: 'computed' };
export const odeSolver: Source = {
  title: 'general ODE solver over the heat balance, water by IAPWS-95',
  place: 'independent script',
  mark: 'computed',
};
export const arithmetic: Source = {
  title: 'hand calculation from the definition',
  place: 'worked apart from this program',
  mark: 'computed',
};
export const openTankTable: Source = {
  title: 'public table of heat lost by open water tanks',
  place: 'still air at 60 degF; evaporation, radiation, walls',
  mark: 'read',
};
export const carrier: Source = {
  title: 'Carrier form of evaporation from open water',
  place: '0.089 + 0.0782 V, kW/(m2 kPa)',
  mark: 'memory',
};
export const heatEnergyPages: Source = {
  title: 'public engineering pages on heat energy and heat-up',
  place: 'worked examples',
  mark: 'read',
};
export const humidAirProgram: Source = {
  title: 'humid air of ASHRAE RP-1485 by an independent implementation',
  place: 'worked apart from this program',
  mark: 'computed',
};
export const washerTable: Source = {
  title: 'reference data of bottle materials',
  place: 'glass, PET and polycarbonate in washers; marks stand with each figure',
  mark: 'read',
};
