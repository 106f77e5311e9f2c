/** What page and command line both say of what was promised and what was found. */
export const foundInEnglish = {
  'found.promised': 'promised',
  'found.found': 'found',
  'found.differs': 'differs from what was promised',
  'found.agrees': 'as promised',
  'found.new': 'nothing to differ from',
  'found.touches.rate': 'rate',
  'found.touches.washing': 'washing',
  'found.touches.margin': 'margins',
  'found.moved': '{from} to {to}',
  'found.still': 'unchanged',
  'found.owner.who': '{owner}: {who}',
} as const;
