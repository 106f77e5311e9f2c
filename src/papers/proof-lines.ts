import type { FloorProof } from '../proof/index.ts';
import type { Head } from '../record/envelope.ts';
import type { PaperWords } from './paper-words.ts';

/** How the checks of a floor stand, in one line. */
export const countsLine = ({ checks, progress }: FloorProof, { say }: PaperWords): string => {
  const counts = Object.entries(progress.counts).filter(([, n]) => n > 0);
  return say('protocol.counts', {
    n: checks.length,
    counts: counts.map(([state, n]) => `${say(`proof.state.${state}`)} ${n}`).join(', '),
  });
};

/** The last record of each device, a line each. */
export const headLines = (heads: readonly Head[], { say }: PaperWords): readonly string[] =>
  heads.map(({ writer, sequence, hash }) => say('protocol.head', { writer, sequence, hash }));
