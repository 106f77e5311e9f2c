import type { JoinEnd } from './laid-join.ts';

/** A label of a terminal in its parts, after IEC 81346: `+S1-X1:14` is terminal 14 of strip X1 on +S1. */
export interface Terminal {
  /** What stands before the strip: a section, station or box. */
  readonly location?: string;
  readonly strip: string;
  readonly terminal: string;
}

const pattern = /^(?:(\+[^\s:-]+)[-:]?)?-?([^\s:]*):([^\s:]+)$/;

/** The parts of a label, where it is that of a terminal; a label without a colon names a whole thing. */
export const terminalOf = (label: string): Terminal | undefined => {
  const [, location, strip = '', terminal] = pattern.exec(label.trim()) ?? [];
  if (terminal === undefined) return undefined;
  return { ...(location === undefined ? {} : { location }), strip, terminal };
};

/** What tells one terminal from every other: the same strip stands on several sections. */
export const terminalKey = ({ label, section, box }: JoinEnd): string | undefined => {
  const terminal = label === undefined ? undefined : terminalOf(label);
  if (terminal === undefined) return undefined;
  const where = section ?? terminal.location ?? box ?? '';
  return `${where} ${terminal.strip}:${terminal.terminal}`.toUpperCase();
};
