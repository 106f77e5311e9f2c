import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const branchDeviceUsText: SheetText = {
  en: {
    title: 'Short-circuit device of one motor, US',
    about:
      'Greatest fuse or breaker of a motor branch, and how far it may go up where the motor does not start.',
    inputs: { current: 'Table full-load current', motor: 'Kind of motor', device: 'Kind of device' },
    outputs: {
      share: 'Share of the table current',
      computed: 'Product',
      rating: 'Standard rating',
      ceilingShare: 'Share that no increase may exceed',
      ceiling: 'Ceiling',
      highestRating: 'Highest rating where the motor does not start',
    },
    options: {
      motor: {
        'single-phase': 'single-phase',
        polyphase: 'three-phase cage, not design B energy-efficient',
        'design-b-energy-efficient': 'design B, energy-efficient or premium',
        synchronous: 'synchronous',
        'wound-rotor': 'wound rotor',
        'direct-current': 'direct current, constant voltage',
      },
      device: {
        'non-time-delay-fuse': 'fuse without time delay',
        'time-delay-fuse': 'time-delay fuse',
        'instantaneous-trip-breaker': 'instantaneous-trip breaker',
        'inverse-time-breaker': 'inverse-time breaker',
      },
    },
    notes: {
      ...notesOf('CAUTION_ELECTRICAL', 'NEC_430', 'ROUNDED_UP'),
      INSTANTANEOUS_TRIP:
        'Only as part of a listed combination controller; the increase to 13 times (17 times for design B energy-efficient, that figure from memory) wants an engineering evaluation. The setting is not rounded.',
      MARKED_VALUE_WINS: 'A lower value marked on the controller or the overload table of its maker wins.',
    },
  },
};
