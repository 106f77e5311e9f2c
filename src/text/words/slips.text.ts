/** What page and command line both say of a value that is a likely slip; the values come with their units. */
export const slipsInEnglish = {
  'slip.tareForgotten': 'No tare: was it forgotten? The other bottles make {likely} likely.',
  'slip.alreadyNet':
    'Gross {entered} is what the others hold without their bottle: was the tare already taken off? Then {likely} is meant.',
  'slip.grossTareSwapped': 'The tare is greater than the gross: are the two in each other’s place?',
  'slip.laneSwapped': 'Mass and time are those of {likely}: was this bottle from {entered}?',
  'slip.digitsTurned': '{field} {entered}: are two digits turned round? {likely} would fit.',
  'slip.massUnit': '{field} {entered}: is it in another unit? {likely} would fit.',
  'slip.timeUnit': '{field} {entered}: is it in another unit? {likely} would fit.',
  'slip.decimalPoint': '{field} {entered}: is the decimal point in its place? {likely} would fit.',
  'slip.neighbourPreset': 'Count {entered} is that of another lane; this one had {likely} before.',
  'slip.unlikeOthers': '{field} {entered} is far from what the others make likely.',
  'slip.compared':
    '{bottles, plural, =0 {By the book, {of} is {expected} ± {within}; here it is {given}.} one {By # other bottle, {of} is {expected} ± {within}; here it is {given}.} other {By # other bottles, {of} is {expected} ± {within}; here it is {given}.}}',
  'slip.field.lane': 'Lane',
  'slip.field.preset': 'Count',
  'slip.field.gross': 'Gross',
  'slip.field.tare': 'Tare',
  'slip.field.time': 'Time',
  'slip.of.net': 'the mass of the contents',
  'slip.of.time': 'the time',
  'slip.of.tare': 'the empty bottle',
} as const;
