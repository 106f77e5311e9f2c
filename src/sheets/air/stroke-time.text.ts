import type { SheetText } from '../sheet-text.ts';
import { notes, problems } from './notes.text.ts';
import { directionWords } from './piston.text.ts';

export const strokeTimeText: SheetText = {
  en: {
    title: 'Stroke time of a cylinder',
    about:
      'Time from the shift of the valve to the end of the stroke, with load ratio and stall pressure. Speed hardly falls with the pressure until the load ratio nears one half, then it collapses.',
    inputs: {
      direction: 'Direction',
      bore: 'Bore',
      rod: 'Rod',
      stroke: 'Stroke',
      pressure: 'Pressure at the valve',
      atmosphere: 'Atmospheric pressure',
      temperature: 'Temperature of the air',
      load: 'Load',
      friction: 'Friction',
      mass: 'Moving mass',
      supplyConductance: 'Sonic conductance of the supply path',
      supplyRatio: 'Critical pressure ratio of the supply path',
      exhaustConductance: 'Sonic conductance of the exhaust path, silencer counted',
      exhaustRatio: 'Critical pressure ratio of the exhaust path',
      deadDriven: 'Tube and clearance on the driven side',
      deadExhausting: 'Tube and clearance on the side that exhausts',
    },
    outputs: {
      longest: 'Stroke time, slow (isothermal)',
      shortest: 'Stroke time, fast (adiabatic)',
      breakaway: 'Time until it moves',
      terminalSpeed: 'Speed at which it no longer accelerates',
      loadRatio: 'Load ratio after friction',
      stallPressure: 'Pressure at which it stalls',
    },
    notes: {
      LOAD_RATIO_HIGH: notes.LOAD_RATIO_HIGH,
      STROKE_NO_CUSHION:
        'Cushion, shock absorber and the time of the valve itself are not in it; the real time lies between the two.',
      RESTRICTION_NOZZLE: notes.RESTRICTION_NOZZLE,
      VALVE_PILOT_PRESSURE: notes.VALVE_PILOT_PRESSURE,
      CAUTION_COMPRESSED_AIR: notes.CAUTION_COMPRESSED_AIR,
    },
    problems: {
      CYLINDER_ROD: problems.CYLINDER_ROD,
      STROKE_STALLS:
        'At "{given}" the cylinder does not move: load and friction stall it at {bar} bar(g), {psi} psig.',
    },
    options: { direction: directionWords },
  },
};
