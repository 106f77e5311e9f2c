import type { Bundle } from '../text/index.ts';
import { fillInEnglish } from '../text/words/fill.text.ts';
import { slipsInEnglish } from '../text/words/slips.text.ts';

/** Words of trials, counts, the other floor and lots. */
export const fillText: Bundle = {
  en: {
    ...fillInEnglish,
    ...slipsInEnglish,
    'command.fill':
      'what weighed trials say of each lane, the counts to set, what they foretell of the other floor; or whether a lot passes',
    'option.fill.lot': 'judge the weighed bottles of this lot by the rule of contents, instead of trials',
    'option.fill.samples': 'bottles of the customer that were measured: what they hold to their level',
    'option.fill.stated':
      'what the bottles state to the brim where they are measuring containers, such as "2.09 L": judges them by OIML R 138',
    'option.fill.format': 'which format of the book; the first where it is left out',
    'option.fill.from': 'floor of the trials; the one that the line is built on where it is left out',
    'option.fill.to': 'floor that is foretold; the one that the line is bound for where it is left out',
    'option.fill.preset': 'one count for all lanes there, in the place of those of the book or the trials',
    'option.fill.goal':
      'what the counts are for: every bottle to its level, or a volume on the label; by the agreement where it is left out',
    'option.fill.confidence': 'of the intervals, such as 0.9 or 90 %; 90 % where it is left out',
    'option.fill.tolerance':
      'counts that hold for the share of all bottles with 95 % confidence, instead of for one bottle drawn by chance',
    'option.fill.measured':
      'what was measured in the place of an allowance, such as "valve-air=3 % ± 1 %; meter-flow=0.1 % ± 0.1 %"; codes are meter-flow, meter-viscosity, valve-air, kv-product and run-column, the part of a stiff run’s column that is felt while lanes close; it goes before what the records say',
    'option.fill.no-allowances':
      'allow for nothing that two floors change: the answer then speaks of the same liquid and the same air alone',
    'option.fill.rule': 'rule of contents; that of the agreement where it is left out',
    'option.fill.label': 'what the label states, such as "2 L"; as the book says where it is left out',
    'option.fill.mav':
      'maximum allowable variation of the label, such as "15 mL", read in the handbook: none is held here',
    'option.fill.edition': 'edition from which it was read, as are the tares and the plan',
    'option.fill.tares':
      'packages to open for the tare in all, read in table 2-3 of NIST Handbook 133 for the ratio that the worksheet gives: no copy is held here',
    'option.fill.table': 'whose sampling table of OIML R 87 holds; that of Australia where it is left out',
    'option.fill.plan':
      'plan of OIML R 87 from an edition that is not held here, such as "12; 0.826; 1": packages, factor, how many may be short',
    'option.fill.sheet':
      'write the trials, bottles or lot that are given as a sheet (.csv or .xlsx); where none are given an empty one of trials for the lanes, to be filled in',
    'option.fill.units': 'units to print; those of the book where it is left out',

    'fill.rows.not':
      '{n, plural, one {# row was not understood and is left out; the rest stands.} other {# rows were not understood and are left out; the rest stands.}}',
    'fill.rows.row': 'row {row}: {given}',
    'fill.rows.unknown': 'Headings that name no column, so that nothing below them was taken: {headings}.',
    'fill.rows.empty':
      '{n, plural, one {# row waits for its bottle.} other {# rows wait for their bottles.}}',
    'fill.rows.byNumber':
      '{n, plural, one {In # row the lane was named by its number, in the order of the book.} other {In # rows the lane was named by its number, in the order of the book.}}',
    'fill.trials':
      '{n, plural, =0 {No trial} one {# trial} other {# trials}} on {floor}, of {given} in the file.',
    'fill.otherFormat': '{n, plural, one {# is of another format} other {# are of another format}}',
    'fill.refused': '{trial}: left out',
    'fill.all': 'all',
    'fill.slips':
      '{n, plural, one {# bottle is questioned; it was used as it stands.} other {# bottles are questioned; they were used as they stand.}}',
    'fill.estimate': 'What the lanes do, with intervals at {confidence}',
    'fill.spread': 'single bottles scatter by {volume} about their mean, single times by {time}',
    'fill.doubts': 'What the trials can’t tell',
    'fill.next': 'Trials that would tell most next',
    'fill.next.one':
      '{lane} at {preset}{throttled}{vessel}, {bottles} bottles: narrows the intervals by {percent}',
    'fill.next.throttled': ', throttled to half',
    'fill.next.vessel': ', into a larger vessel',
    'fill.presets.level': 'Counts on {floor} at which {share} of bottles reach their level',
    'fill.presets.volume': 'Counts on {floor} for {label} on the label, deficiency {deficiency}',
    'fill.presets.none': 'Counts on {floor}: {why}',
    'fill.presets.common':
      'one count for all lanes, {preset}, gives away {price} more a bottle, {shift} more a shift',
    'fill.presets.shift': 'overflow of a shift: {volume}',
    'fill.capacity':
      'the bottles hold {mean} to their level, from bottle to bottle ± {deviation} (one standard deviation), {from}',
    'fill.samples': '{n, plural, one {# measured bottle} other {# measured bottles}} of the customer',
    'fill.sampled.brimful': 'contents to the brim',
    'fill.sampled.level': 'contents to the level',
    'fill.sampled.height': 'height',
    'fill.sampled.bore': 'bore of the neck',
    'fill.sampled.finish': 'outside of the finish',
    'fill.sampled.body': 'body',
    'fill.sampled.mass': 'empty bottle',
    'fill.sampled.lean': 'lean',
    'fill.sampled.closureMass': 'cap',
    'fill.sampled.closureHeight': 'height of the cap',
    'fill.sampled.closedHeight': 'height with the cap',
    'fill.head.n': 'bottles',
    'fill.head.mean': 'mean',
    'fill.head.spread': 'spread',
    'fill.head.nearlyAll': 'nearly all lie between',
    'fill.against.unlike':
      '{of}: the book says {said}, nearly all of these bottles lie between {low} and {high}. Is it the bottle of the book?',
    'fill.against.boreNotWritten':
      'the book has no bore of the neck: its {said} are the outside. By the bottles the bore is {mean}: write it there',
    'fill.against.boreOverNeck':
      'the bore of these bottles, {mean}, is not under the outside of the neck, {said} by the book. Measure again, or mend the book',
    'fill.container': 'as measuring containers of {capacity} to the brim, by OIML R 138: {verdict}',
    'fill.millimetre': 'one millimetre of level is {volume}',
    'fill.both.both':
      'one level also means one volume: at the level they differ by {spread}, and {wanted} is wanted at most',
    'fill.both.not both':
      'equal level and equal volume can’t both be had: at the level they differ by {spread}, and {wanted} is wanted at most',
    'fill.both.unknown':
      'whether one level also means one volume can’t be told yet: at the level they differ by {spread}; wanted at most: {wanted}',
    'fill.other': '{floor}, foretold from {from}, with intervals at {confidence}',
    'fill.allowances': 'What two floors change and the trials can’t tell',
    'fill.allowance': '{name}: {shift} ± {deviation} (one standard deviation), {source}',
    'fill.score':
      'Against the trials on {floor}: {inside} of {of} figures lie in their intervals, where {confidence} should.',
    'fill.head.lane': 'lane',
    'fill.head.pulses': 'pulses',
    'fill.head.afterRun': 'after-run',
    'fill.head.kv': 'Kv',
    'fill.head.bottles': 'bottles',
    'fill.head.count': 'count',
    'fill.head.between': 'between',
    'fill.head.volume': 'mean volume',
    'fill.head.bottle': 'one bottle',
    'fill.head.time': 'fill time',
    'fill.head.reached': 'reach level',
    'fill.head.overflow': 'overflow',
    'fill.head.giveaway': 'over label',
    'fill.head.limit': 'held by',
    'fill.head.row': 'slowest lane',
    'fill.head.station': 'fill station',
    'fill.head.rate': 'rate',
    'fill.lot': '{n, plural, one {# bottle} other {# bottles}} of {format} on {floor}, by {rule}: {verdict}',
    'fill.control': 'The same bottles as a run, in the order drawn',
    'fill.control.all': 'all bottles',
    'fill.control.differ': 'The lanes differ by more than chance.',
    'fill.control.alike': 'No difference of the lanes that chance would not bring.',
    'fill.drift.up': '{lane}, {n} bottles: more from bottle {at} on',
    'fill.drift.down': '{lane}, {n} bottles: less from bottle {at} on',
    'fill.drift.none': '{lane}, {n} bottles: no drift seen',
    'fill.drift.unknown': '{lane}, {n, plural, one {# bottle} other {# bottles}}: too few to see a drift',
    'fill.lot.none': 'The file holds no lot.',
    'fill.lot.noRule': 'no rule',
    'fill.lot.askRule':
      'The agreement names no rule of contents that is held here. Name one with --rule, or write it into the book.',
    'fill.sheet.written': '{path} was written.',
    'fill.caution':
      'Advice from weighed bottles and from what the book says. Whether contents are lawful is decided by the law of the country and by its officers.',
  },
};
