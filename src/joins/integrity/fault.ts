import type { JoinEnd, LaidJoin, Side } from '../laid-join.ts';

/** Every fault of a list of joins, and what its sentence needs beside the ends. */
export const joinFaults = {
  /** Something that is led somewhere has one end only, or none. */
  JOIN_END_MISSING: ['join', 'side'],
  JOIN_ENDS_SAME: ['join', 'terminal'],
  /** More wires or tubes in a terminal than the book says that it is made for. */
  JOIN_TERMINAL_FULL: ['terminal', 'given', 'allowed'],
  /** More than one where the book does not say that it is made for them. */
  JOIN_TERMINAL_SHARED: ['terminal', 'given'],
  JOIN_LABEL_TWICE: ['given'],
  JOIN_CORE_TWICE: ['given'],
  JOIN_CODE_TWICE: ['given'],
  JOIN_SIZE_DIFFERS: ['join', 'from', 'to'],
  JOIN_COLOUR_DIFFERS: ['join', 'from', 'to'],
  /** Not a colour that the agreed rules have for what it carries. */
  JOIN_COLOUR_WRONG: ['join', 'given', 'potential', 'allowed', 'rules', 'mark'],
  /** Two sections between which power runs, and no bond. */
  JOIN_BOND_MISSING: ['one', 'other'],
  /** The same where nobody says what the conductors carry. */
  JOIN_BOND_UNSURE: ['one', 'other'],
  JOIN_SECTION_ALONE: ['section', 'others'],
  /** What holds water on a section that must be empty in frost. */
  JOIN_NOT_DRAINED: ['thing', 'section'],
} as const satisfies Readonly<Record<string, readonly string[]>>;

export type JoinFaultCode = keyof typeof joinFaults;

/** One end that a fault is about. */
export interface FaultEnd extends JoinEnd {
  readonly join: string;
}

export interface JoinFault {
  readonly code: JoinFaultCode;
  /** Where in the book it is put right: a join, a section, a split. */
  readonly path: string;
  /** Both ends of each join that it is about. */
  readonly ends: readonly FaultEnd[];
  readonly parts: Readonly<Record<string, string | number>>;
}

export const endOf = (join: LaidJoin, side: Side): FaultEnd => ({ ...join[side], join: join.tag });

export const bothEnds = (join: LaidJoin): readonly FaultEnd[] => [endOf(join, 'from'), endOf(join, 'to')];

/** A fault of one join or of several, shown at the last of them. */
export const faultOf = (
  code: JoinFaultCode,
  joins: readonly LaidJoin[],
  parts: JoinFault['parts'],
): JoinFault => ({ code, path: joins.at(-1)?.path ?? '', ends: joins.flatMap(bothEnds), parts });
