import type { SheetText } from '../sheet-text.ts';

export const referenceTemperatureText: SheetText = {
  en: {
    title: 'Reference temperature of a rule',
    about: 'Temperature at which a rule of net contents judges a volume, by the kind of product.',
    inputs: { rule: 'Rule', product: 'Product' },
    outputs: { reference: 'Reference temperature' },
    options: {
      rule: {
        'NIST Handbook 133': 'NIST Handbook 133',
        'OIML R 87': 'OIML R 87',
        'EU average system': 'EU average system',
        'UK average system': 'UK average system',
      },
      product: {
        liquid: 'liquid, none of the others',
        refrigerated: 'kept refrigerated',
        frozen: 'frozen, labelled by volume',
        beer: 'beer',
        spirits: 'distilled spirits',
      },
    },
    notes: { REFERENCE_MEMORY: 'Recalled, not read: confirm it in your edition.' },
    problems: { REFERENCE_NOT_SET: '{path}: {rule} sets no temperature for this.' },
  },
};
