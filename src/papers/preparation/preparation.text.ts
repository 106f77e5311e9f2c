import type { Bundle } from '../../text/index.ts';

/** Words of the site preparation sheet. */
export const preparationText: Bundle = {
  en: {
    'preparation.title': 'Preparing the site',
    'preparation.about': 'What to bring to the line at {floor}, by trade',
    'preparation.page': '{trade}, {floor}',
    'trade.power': 'Electrician',
    'trade.water': 'Plumber',
    'trade.air': 'Air contractor',
    'trade.heat': 'Heating and steam',
    'trade.drains': 'Drains',
    'trade.building': 'Building and moving in',
    'trade.site': 'Whoever runs the floor',
    'caution.site':
      'What is not known stays open: an empty line is better than a guess. Electrical, pressure and lifting work follows the local code and licensed practice.',
    'caution.power':
      'Check with the local code and a licensed electrician. Isolate, lock and prove dead before anything is opened. Sizes here are asked for or worked out as a check; the installer decides them.',
    'caution.water':
      'Pressure and drinking water: backflow protection, materials and tests follow the local code and whoever is licensed. Flush before the line is connected.',
    'caution.air':
      'Stored energy: rating, relief and test of vessels and pipes follow the local code and a competent person. Vent and lock before a joint is opened.',
    'caution.heat':
      'Steam and hot liquor burn: vessels, relief, condensate and insulation follow the local code and whoever is licensed for pressure work.',
    'caution.drains':
      'Hot and alkaline or acid water goes down here: discharge limits, traps and vents follow the local code and the owner of the sewer.',
    'caution.building':
      'Lifting and loads on floors are for a competent rigger and, where the slab is in doubt, a structural engineer. Figures here advise; they release nothing.',
    'preparation.rows': 'What to bring',
    'preparation.rows.none': 'The book asks nothing of this trade yet.',
    'preparation.draws': 'What the line draws',
    'preparation.done': 'done',
    'preparation.what': 'what',
    'preparation.asks': 'the line asks',
    'preparation.has': 'the floor has',
    'preparation.verdict': 'verdict',
    'preparation.fix': 'Would carry it: {fix}',
    'preparation.questions': 'Please answer',
    'preparation.questions.none': 'Nothing is open for this trade.',
    'preparation.number': 'no.',
    'preparation.question': 'question',
    'preparation.answer': 'answer',
    'preparation.how': 'how it is known',
    'preparation.how.measured': 'measured',
    'preparation.how.plate': 'plate, drawing',
    'preparation.how.stated': 'said',
    'preparation.sign': 'Filled in by',
    'preparation.sign.name': 'name',
    'preparation.sign.firm': 'firm',
    'preparation.sign.licence': 'licence, where the code asks for one',
    'preparation.sign.date': 'date',
    'preparation.sign.phone': 'phone or mail',
    'preparation.sendTo': 'Send back to {whom}.',
    'preparation.sendTo.book': 'Send back to whoever sent you this sheet.',
    'preparation.has.connection': '{name}, {connection}',
    'preparation.assumed': 'assumed: {places}',
    'preparation.refused': 'not taken as the book says it: {places}',
    'preparation.notes': 'To be known',
    'preparation.ifSaid': '* holds if what was said holds.',
    'preparation.why': 'settles {findings}',
    'preparation.why.assumed': 'assumed now; widens {findings}',
    'preparation.oneOf': '{question}: {choices}',
    'preparation.product': 'the product supply',
    'preparation.ask.whom': 'ask {whom}',
  },
};
