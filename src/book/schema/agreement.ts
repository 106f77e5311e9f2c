import { list, note, oneOf, part, words } from './part.ts';
import { above0, least0, quantity, share } from './quantity.ts';
import { refersTo } from './tag.ts';

const ruleSet = (description: string) =>
  part(
    description,
    {},
    {
      ruleSet: words('Name of the rule set.'),
      edition: words('Edition of it.'),
      state: words('State or country whose amendments hold.'),
      note,
    },
  );

export const agreedRate = part(
  'What is to be proved for one format.',
  { format: refersTo(['format'], 'The format.') },
  {
    product: refersTo(
      ['product'],
      'The product that it is to be proved with; absent: the product of the format.',
    ),
    rate: quantity('rate', 'Bottles in an hour that the line is to make, running rate.', above0),
    efficiency: quantity(
      'ratio',
      'Least share of the agreed run in which the line must make its rate.',
      share,
    ),
    note,
  },
);

export const agreement = part(
  'What both sides agreed on.',
  {},
  {
    rates: list(agreedRate, 'Rates to be proved.'),
    contents: part(
      'How the contents of a bottle are judged.',
      {},
      {
        rule: oneOf(
          ['level only', 'NIST Handbook 133', 'OIML R 87', 'EU average system', 'UK average system', 'other'],
          'Rule by which contents are judged.',
        ),
        edition: words('Edition of the rule.'),
        referenceTemperature: quantity('temperature', 'Temperature at which the contents are stated.'),
        levelGoal: quantity('ratio', 'Share of bottles that must reach the level.', share),
        note,
      },
    ),
    hygiene: part(
      'Which hygiene rule holds.',
      {},
      {
        rule: words('Name of the rule, or who is to name it.'),
        edition: words('Edition of the rule.'),
        state: words('State or country.'),
        residue: quantity(
          'soluteConcentration',
          'Most caustic, as NaOH, that may be left in what drips out of a rinsed bottle.',
          least0,
        ),
        note,
      },
    ),
    electrical: ruleSet('Which electrical rule set holds at the site.'),
    conductorColours: oneOf(
      ['IEC 60204-1', 'NFPA 79'],
      'Rules by which the conductors of the line are coloured.',
    ),
    voltageDrop: quantity(
      'ratio',
      'Share of the voltage that the feeder may lose while the line runs.',
      share,
    ),
    startingDrop: quantity(
      'ratio',
      'Share of the voltage that it may lose while the largest motor starts.',
      share,
    ),
    heatUp: quantity('time', 'Time in which the wash baths must be warm from cold.', above0),
    safety: ruleSet('Which machinery safety rule set holds at the site.'),
    lifting: ruleSet('Which lifting rule set holds at the site.'),
    acceptanceRun: quantity('time', 'Length of the run in which the rate is proved.', above0),
    shift: quantity('time', 'Length of a shift.', above0),
    confidence: quantity('ratio', 'Confidence at which an interval is stated. Absent: 95 %.', share),
    allowedStops: quantity('time', 'Time for which the line may stand in the acceptance run.', least0),
    noise: words('How noise is measured: where, with what, under which load.'),
    noiseLevel: quantity('soundLevel', 'Highest sound level where people stay.', { least: 0, most: 200 }),
    note,
  },
);
