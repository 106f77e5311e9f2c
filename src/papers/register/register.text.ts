import type { Bundle } from '../../text/index.ts';

/** Words of the register of settings on paper. */
export const registerText: Bundle = {
  en: {
    'register.title': 'Settings',
    'register.about':
      'Everything that can be turned, typed or moved: what it was at the run-off, as shipped and as left. An empty field was not recorded: write it in.',
    'register.foot':
      'Values as they were recorded. Protective devices are set by whoever is licensed, to the local code.',
    'register.caution':
      'A setting outside what is allowed is marked. Overload dials, relief and pressure settings are for licensed people; nothing here is a reason to open a guard or bypass a device.',
    'register.what': 'what',
    'register.allowed': 'allowed',
    'register.designed': 'designed',
    'register.why': 'why, by whom',
    'register.none': 'The book names nothing that can be set.',
    'register.beyond': 'outside what is allowed',
  },
};
