/** What page and command line both say of trials, of what they tell and of the other floor. */
export const fillInEnglish = {
  'fill.note.tareMissing': 'weighed without its bottle: no volume. Weigh an empty one',
  'fill.note.tareOfOthers': 'no tare of its own: the mean of the others was taken, with their spread',
  'fill.note.temperatureAssumed': 'temperature of the floor taken for that of the bottle',
  'fill.note.divisionAssumed': 'last digit of the gross taken for the division of the balance',
  'fill.note.calibrationAssumed': 'calibration of the balance not said: trusted to one division',
  'fill.note.profileMissing': 'a level, and the book has no profile of the bottle: no volume',
  'fill.note.densityMissing': 'density of the liquid not known: no volume',
  'fill.note.overflowNotSaid': 'holds about its level, and nobody says whether it ran over',
  'fill.note.otherProduct': 'another product than the floor runs: left out',

  'fill.apart.after-stop': 'first bottle after a stop: kept apart',
  'fill.apart.too-short': 'too short a fill to tell of a running lane',

  'fill.trial.NO_TRIALS': 'No bottle tells of a running lane.',
  'fill.trial.ROW_NEVER_ENDS': 'By the book this floor never fills such a row.',
  'fill.trial.LANE_UNKNOWN': 'The lane is none of this floor.',
  'fill.trial.PRESET_NOT_POSITIVE': 'The count is not above nought.',
  'fill.trial.VOLUME_NOT_POSITIVE': 'The volume is not above nought.',
  'fill.trial.TIME_NOT_POSITIVE': 'The time is not above nought.',
  'fill.trial.NOTHING_READ': 'Neither weighed nor timed.',

  'fill.doubt.no-trials': 'no bottle of {lanes}: what is said of it rests on the book alone',
  'fill.doubt.one-preset':
    '{lanes}: one count only, so that pulses and after-run can’t be told apart. Try a count a third lower',
  'fill.doubt.one-flow':
    '{lanes}: one flow only, so that after-run and drip can’t be told apart. Throttle, or try another pressure',
  'fill.doubt.no-times': '{lanes}: not timed, so that its flow rests on the book',
  'fill.doubt.only-overflowed':
    '{lanes}: every bottle ran over, and holds what a bottle holds. Take a lower count or a larger vessel',
  'fill.doubt.few-bottles': 'few bottles: their own spread is hardly known, and the intervals are wide',
  'fill.doubt.after-run-negative':
    '{lanes}: the after-run comes out below nought, which can’t be. Something else takes from each bottle, such as a wrong tare: for another floor the intervals are wide',
  'fill.doubt.unlike-book':
    '{lanes}: far from what the book says of it. Is the lane, the meter or the floor another? The intervals are wider for it',
  'fill.doubt.outlier':
    '{lanes}: bottle {trials} lies further out than chance would bring it; it was used all the same',
  'fill.doubt.bottles-swapped': '{lanes}: bottles {trials} would fit in each other’s place',
  'fill.doubt.lanes-swapped':
    '{lanes}: they would fit the book in each other’s place. Until that is looked at, each interval reaches to the others',
  'fill.doubt.lanes-supposed': '{lanes}: no bottle says that it ran beside the others; it was taken to run',
  'fill.doubt.more-than-stated': 'the bottles scatter far more than the weighing was said to',

  'fill.none.floorUnknown': '{floor}: not known enough to work out its flows. Wanted: {places}',
  'fill.none.noOtherFloor': 'The book has no other floor to speak of.',
  'fill.none.noTrials': 'No trial was made on {floor}.',
  'fill.none.noPreset': 'No count is known for {lanes}.',
  'fill.none.neverEnds': 'On {floor} some lane never reaches its count.',

  'fill.preset.levelMissing': 'The book does not say what a bottle holds to its level.',
  'fill.preset.labelMissing': 'The book does not say what the label states.',
  'fill.preset.deficiencyMissing':
    'How far a bottle may fall short is not known: agree a rule, or name the variation that it allows.',
  'fill.preset.densityMissing': 'The density of the product is not known.',
  'fill.preset.neverEnds': 'Some lane never reaches its count.',

  'fill.capacity.samples': 'by the bottles that were measured',
  'fill.capacity.book': 'by the book, with its spread',
  'fill.capacity.assumed': 'by the book, with a spread that is assumed: measure a handful of bottles',

  'fill.from.call': 'as asked',
  'fill.from.book': 'as the book has it',
  'fill.from.trials': 'as last tried',

  'fill.allowance.meter-flow': 'meter factor over the flow',
  'fill.allowance.meter-viscosity': 'meter factor over the viscosity',
  'fill.allowance.valve-air': 'after-run with the air of the valves',
  'fill.allowance.kv-product': 'valve coefficient with the product',
  'fill.source.common practice': 'common practice',
  'fill.source.meter class': 'class of the meter',
  'fill.source.measured': 'measured',
  'fill.waterOnly': 'The same liquid and the same air are taken on both floors.',
  'fill.airUnknown':
    'The air of the valves is not known on both floors: nothing is allowed for a valve that shuts faster or slower.',
  'fill.column.stiff run':
    'The run of {floor} is stiff: while lanes close its liquid goes on pressing, up to {volume}. {share} ± {deviation} of it is counted.',
  'fill.column.measured':
    'While lanes close the liquid in the run of {floor} goes on pressing: {share} ± {deviation} of what a stiff run does is counted, as measured.',
  'fill.column.soft run':
    'The run of {floor} is soft: while lanes close its liquid may go on pressing by nothing or by up to {volume}. {share} ± {deviation} of it is counted; measuring it would make a volume surer, by up to {narrower} of its interval.',
  'fill.column.not said':
    'What is the run of {floor} made of, rigid pipe or hose? Nobody says it: while lanes close its liquid may go on pressing by nothing or by up to {volume}. {share} ± {deviation} of it is counted; rigid pipe would make a volume surer, by up to {narrower} of its interval, a hose leaves it open.',
  'fill.moves':
    '{n, plural, =0 {No real move has been scored yet: nothing but invented floors stands behind these intervals.} one {Scored on # real move.} other {Scored on # real moves.}}',

  'fill.limit.mean': 'the mean',
  'fill.limit.once': 'bottles below the label less the deficiency',
  'fill.limit.twice': 'bottles below the label less twice the deficiency',

  'fill.verdict.accept': 'accepted',
  'fill.verdict.reject': 'rejected',
  'fill.verdict.take more': 'take {more} more',
  'fill.verdict.not decided': 'not decided',
} as const;
