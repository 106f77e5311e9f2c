import { bookUnits } from '../book/book-units.ts';
import type { Book } from '../book/index.ts';
import { placeText } from '../book/place-text.ts';
import type { Claim } from '../packing/claims.ts';
import { type PackedCrate, thingText } from '../packing/packing-list.ts';
import type { Packing } from '../packing/packing-of.ts';
import type { Kind } from '../quantity/kinds.ts';
import { shown } from '../quantity/shown.ts';
import { textTable } from './text-table.ts';
import { words } from './words.ts';
import type { World } from './world.ts';

const claimText = (book: Book, claim: Claim | undefined): string => {
  const days = book.line?.transport?.claimDays;
  if (days === undefined) return words.say('packing.claim.unknown');
  if (claim?.last === undefined) return words.say('packing.claim.days', { days });
  const parts = { day: claim.last, received: claim.received ?? '', days };
  return words.say(claim.planned ? 'packing.claim.planned' : 'packing.claim', parts);
};

/** What travels to a floor: crates, how sections are lifted and brought in, and what is brought along. */
export const packingTextOf = (
  book: Book,
  { list, lifts, claims, tools, floor }: Packing,
  world: World,
): string => {
  const wishes = bookUnits(book, undefined);
  const value = (number: number | undefined, kind: Kind): string =>
    number === undefined ? words.say('packing.unknown') : shown(number, kind, wishes, world.locale);
  const names = (tags: readonly string[]): string => tags.map((tag) => thingText(book, tag)).join('; ');
  const crateText = ({ crate, added, agrees, missing }: PackedCrate): string =>
    [
      thingText(book, crate.tag),
      ...(added === undefined
        ? []
        : [
            agrees === false
              ? words.say('packing.added.other', { added: value(added.value, 'mass') })
              : `${words.say('packing.added')}: ${value(added.value, 'mass')}`,
          ]),
      claimText(
        book,
        claims.find((one) => one.crate === crate.tag),
      ),
      ...(missing.length === 0
        ? []
        : [
            words.say('packing.missing', {
              places: missing.map((place) => placeText(book, place)).join('; '),
            }),
          ]),
    ].join('\n  ');
  const { term, place, edition } = book.line?.transport ?? {};
  const risk =
    term === undefined
      ? words.say('packing.risk.unknown')
      : words.say('packing.risk', {
          term,
          place: place ?? words.say('packing.unknown'),
          edition: edition === undefined ? '' : ` (${edition})`,
        });
  return [
    words.say('packing.title.to', { floor: floor.name }),
    risk,
    ...(list.unpacked.length === 0 ? [] : [words.say('packing.unpacked', { things: names(list.unpacked) })]),
    ...(list.twice.length === 0 ? [] : [words.say('packing.twice', { things: names(list.twice) })]),
    ...list.crates.map(crateText),
    ...lifts.map(({ section, figures, legs, route }) =>
      [
        words.say('packing.lift.of.section', { section: thingText(book, section.tag) }),
        textTable([
          ...figures.map(({ id, figure }) => [
            words.say(`utility.figure.${id}`),
            value(figure.value, figure.kind),
            '',
            '',
          ]),
          ...[...(legs === undefined ? [] : [legs]), ...route].map((finding) => [
            words.say(`utility.question.${finding.question}`),
            value(finding.demand.value, finding.demand.kind),
            value(finding.have.value, finding.have.kind),
            words.say(`verdict.${finding.verdict}`),
          ]),
        ]),
      ].join('\n'),
    ),
    [
      words.say('packing.brought'),
      textTable(
        tools.map(({ tool, own, checks, joins }) => [
          words.has(`packing.tool.${tool}`)
            ? words.say(`packing.tool.${tool}`)
            : words.say(`proof.instrument.${tool}`),
          names(own),
          words.say('packing.for', { checks: checks.length, joins: joins.length }),
        ]),
      ),
    ].join('\n'),
    words.say('packing.caution.lift'),
    words.say('packing.caution.papers'),
  ]
    .join('\n\n')
    .concat('\n');
};
