import type { SheetText } from '../sheet-text.ts';

export const deadVolumeText: SheetText = {
  en: {
    title: 'Dead volume of a cylinder side',
    about:
      'Volume of the tube from the valve and of the clearance at the end of the cylinder: filled and vented with every stroke, moving nothing.',
    inputs: {
      bore: 'Bore of the tube',
      length: 'Length of the tube',
      clearance: 'Clearance at the end of the cylinder and passages of the valve',
    },
    outputs: { volume: 'Dead volume' },
    notes: {
      DEAD_VOLUME_NO_CLEARANCE:
        'The tube alone: the clearance at the end of the cylinder and the passages of the valve are not counted.',
    },
  },
};
