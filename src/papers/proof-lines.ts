import type { FloorProof } from '../proof/index.ts';
import type { NamedHead } from './named-heads.ts';
import type { PaperWords } from './paper-words.ts';

/** How the checks of a floor stand, in one line. */
export const countsLine = ({ checks, progress }: FloorProof, { say }: PaperWords): string => {
  const counts = Object.entries(progress.counts).filter(([, n]) => n > 0);
  return say('protocol.counts', {
    n: checks.length,
    counts: counts.map(([state, n]) => `${say(`proof.state.${state}`)} ${n}`).join(', '),
  });
};

/** A browser names itself by a number that nothing else has. */
const drawnByLot = /^[0-9a-f]{8}-(?:[0-9a-f]{4}-){3}[0-9a-f]{12}$/;

/** Enough of such a number to tell the devices of one hand-over apart. */
const enough = 8;

const deviceText = ({ writer, people }: NamedHead, { say }: PaperWords): string => {
  if (!drawnByLot.test(writer)) return writer;
  const device = writer.slice(0, enough);
  return people === undefined
    ? say('protocol.device', { device })
    : say('protocol.device.of', { device, people: people.join(', ') });
};

/** The last record of each device, a line each. */
export const headLines = (heads: readonly NamedHead[], paper: PaperWords): readonly string[] =>
  heads.map((head) => {
    const { sequence, hash } = head;
    return paper.say('protocol.head', { writer: deviceText(head, paper), sequence, hash });
  });
