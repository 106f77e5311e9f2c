/** Words of the page that a device in the hall sees before it has joined. */
export const pairingPageText = {
  en: {
    'pairing.title': 'Join the hand-over book',
    'pairing.about':
      'The laptop with the book shows a code. Type it here; it can be used once, and for a few minutes.',
    'pairing.plain':
      'This connection is not encrypted: others in this network could read along. Photographs from within the page and signing with a key do not work on this device.',
    'pairing.code': 'Code',
    'pairing.name': 'What this device is called',
    'pairing.name.hint': 'The laptop lists it by that name, for instance: tablet at the filler.',
    'pairing.join': 'Join this laptop',
  },
} as const;
