import { contactGatedSheet } from '../../../sheets/hygiene/contact-gated.ts';
import { contactShareSheet } from '../../../sheets/hygiene/contact-share.ts';
import { contactSoakSheet } from '../../../sheets/hygiene/contact-soak.ts';
import { wettedShareSheet } from '../../../sheets/hygiene/wetted-share.ts';
import { agreedPeriod } from '../agreed-period.ts';
import type { Calculation } from '../calculation.ts';
import { greatestOf } from '../greatest-of.ts';
import type { Known } from '../known.ts';
import { heldIndex } from './held-index.ts';
import { indexHere } from './index-here.ts';
import type { ZoneAt } from './zones-of.ts';

const rowsOf = (c: Calculation, { path }: ZoneAt): Known | undefined => {
  const rows = c.plain(`${path}/rows`);
  if (rows === undefined) c.miss(`${path}/rows`);
  return rows;
};

/**
 * Contact of a bottle in a zone at the index that the washer makes on this floor.
 *
 * Method   immersed: its stay without the emptying; sprayed: every index without its dead time, or the share of the
 *          dwell that the book names; where neither is said the whole dwell wets, which is marked as assumed
 */
export const contactAt = (c: Calculation, at: ZoneAt): Known | undefined =>
  c.once(`contact ${at.path}`, (c) => {
    const { path, zone } = at;
    const here = indexHere(c, at);
    const stations = rowsOf(c, at);
    if (zone.soaks === true) {
      return c.run(contactSoakSheet, {
        stations,
        index: here?.index,
        emptying: c.needed(`${path}/emptying`, 'time'),
      })?.contact;
    }
    const share = c.plain(`${path}/sprayFraction`);
    const dead = c.number(`${path}/dead`, 'time');
    if (dead === undefined && share !== undefined) {
      return c.run(contactShareSheet, {
        stations,
        index: here?.index,
        share: c.run(wettedShareSheet, { part: share, dwell: here?.dwellHere, index: here?.index })?.share,
      })?.contact;
    }
    if (dead === undefined) c.assume(`${path}/sprayFraction`);
    const timeOut = c.number(`${path}/timeOut`, 'time');
    return c.run(contactGatedSheet, {
      stations,
      index: here?.index,
      dead: dead ?? here?.strokeHere,
      ...(timeOut === undefined ? {} : { timeOut }),
    })?.contact;
  });

/**
 * Longest that the line lets a bottle stay in a zone: at the slowest of the washer's own index, the agreed rate and the
 * cycle of the line where that holds the washer.
 */
export const stayAt = (c: Calculation, at: ZoneAt): Known | undefined =>
  c.once(`stay ${at.path}`, (c) => {
    const index = indexHere(c, at)?.index;
    const period = agreedPeriod(c);
    const slowest =
      index === undefined || period === undefined ? undefined : greatestOf(c, [index, period, heldIndex(c)]);
    return c.run(contactSoakSheet, {
      stations: rowsOf(c, at),
      index: slowest,
      emptying: { value: 0, from: { path: at.path, assumed: true } },
    })?.residence;
  });
