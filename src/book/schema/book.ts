import * as z from 'zod';
import { about } from './about.ts';
import { agreement } from './agreement.ts';
import { crate, transport } from './crate.ts';
import { floor } from './floor.ts';
import { format } from './format.ts';
import { box, check, instrument, join, section, setting, spare, split, tieIn } from './handover.ts';
import { airDrop, blowOff, cylinder, device, drive, heater, interlock, load, stopDevice } from './machine.ts';
import { list, note, part } from './part.ts';
import { product } from './product.ts';
import { holdRule, station } from './station.ts';
import { afterwards, wait } from './wait.ts';

/** The version of the book's form that this code reads and writes. */
export const bookVersion = 1;

export const line = part(
  'The line.',
  {},
  {
    products: list(product, 'Liquids that are filled or run on.'),
    formats: list(format, 'Bottles with their closures.'),
    stations: list(station, 'Stations in flow order.'),
    holdRules: list(holdRule, 'Which station waits for which.'),
    drives: list(drive, 'Motors.'),
    heaters: list(heater, 'Heaters.'),
    loads: list(load, 'Other electrical loads.'),
    cylinders: list(cylinder, 'Pneumatic cylinders.'),
    airDrops: list(airDrop, 'Points where the line takes air.'),
    blowOffs: list(blowOff, 'Users of air that are not cylinders.'),
    devices: list(device, 'Inputs and outputs of the control.'),
    stopDevices: list(stopDevice, 'Stop buttons and guards with their rows of the cause-and-effect table.'),
    interlocks: list(interlock, 'Other rows of the cause-and-effect table.'),
    tieIns: list(tieIn, 'Points where the line is tied in to the site.'),
    sections: list(section, 'Parts that travel in one piece.'),
    splits: list(split, 'Where the line is parted.'),
    boxes: list(box, 'Junction boxes, panels and valve islands in which joins are made.'),
    joins: list(join, 'What is parted there and made again.'),
    crates: list(crate, 'Crates and pallets.'),
    transport,
    settings: list(setting, 'Register of what can be turned, typed or moved.'),
    spares: list(spare, 'Spares that are handed over.'),
    instruments: list(instrument, 'Instruments with which is measured.'),
    checks: list(check, 'Checks that are added by hand.'),
    note,
  },
);

export const bookSchema = part(
  'A hand-over book: one line, the floors on which it stands, and what was agreed.',
  { twinfloor: z.literal(bookVersion).describe('Version of the form of this book.') },
  {
    $schema: z.string().describe('Address of the published schema, for editors.'),
    about,
    agreement,
    line,
    floors: list(floor, 'Floors on which the line runs.'),
    waits: list(wait, 'What the hand-over waits for and somebody outside owns.'),
    afterwards: list(afterwards, 'What is due after acceptance.'),
  },
);
