import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const frequencyChangeText: SheetText = {
  en: {
    title: 'Motor on another frequency',
    about:
      'What a supply of another frequency does to a motor and its load: speed, shaft power against the plate, flux and torques.',
    inputs: {
      platePower: 'Plate rating of the motor',
      shaftPower: 'Shaft power at the frequency on the plate',
      law: 'Load',
      plateFrequency: 'Frequency on the plate',
      supplyFrequency: 'Frequency of the supply',
      plateVoltage: 'Voltage on the plate',
      supplyVoltage: 'Voltage of the supply',
      serviceFactor: 'Service factor',
    },
    outputs: {
      speedRatio: 'Speed, and flow of a pump, over before',
      headRatio: 'Head of a pump or fan over before',
      shaftPower: 'Shaft power',
      loading: 'Shaft power over the plate rating',
      torqueLoading: 'Torque over rated torque',
      flux: 'Volts per hertz over the plate',
      rightVoltage: 'Voltage of the same flux',
      maximumTorque: 'Greatest torque over before',
      startTorque: 'Starting torque over before',
      startCurrent: 'Starting current over before',
    },
    options: {
      law: {
        'pump-or-fan': 'centrifugal pump or fan',
        'constant-torque': 'constant torque: conveyor, index, screw pump',
        'constant-power': 'constant power: winder, held by a control',
      },
    },
    notes: {
      ...notesOf('CAUTION_ELECTRICAL'),
      FREQUENCY_OVERLOADS_MOTOR:
        'The shaft asks {percent} % of the plate: the motor overloads. What helps: a drive held at the frequency of the plate, a trimmed impeller, other pulleys or gears, or a larger motor with wires and starter to match. Throttling a centrifugal pump lowers its power only in part.',
      FREQUENCY_FLUX_HIGH:
        'Over 1.10 of the volts per hertz: the iron saturates, the motor runs hot and noisy and trips. The voltage of the same flux, from a drive or transformer, mends it.',
      FREQUENCY_FLUX_LOW: 'Under 0.9 of the volts per hertz: torque is short, above all at the start.',
      FREQUENCY_FLUX_OFF:
        'More than 5 % from the volts per hertz of the plate: tolerable, with less in hand.',
      FREQUENCY_PUMP_FASTER:
        'The pump runs faster: the head it gives and the suction head it needs rise with the square, so seals, pipes and suction are to be looked at too.',
      FREQUENCY_PUMP_SLOWER:
        'The pump runs slower: less flow and head, so a rinse or wash may miss what it needs.',
      FREQUENCY_LINE_SPEED:
        'Speed goes with the frequency: index, conveyor and so the rate of the line change unless a drive or other sprocket is fitted.',
      FREQUENCY_STARTING_FROM_LEAKAGE:
        'Starting and greatest torque by leakage reactance alone, the usual first estimate; the maker’s curve replaces it. The gap in slip between both supplies is left out.',
    },
  },
};
