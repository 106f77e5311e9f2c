import type { JoinKind } from './join-kinds.ts';

export type Side = 'from' | 'to';

/** One end of a join, with all that the book lets know of it. */
export interface JoinEnd {
  readonly side: Side;
  /** As it stands at the terminal, port or part. */
  readonly label?: string;
  /** Thing of the book that it belongs to. */
  readonly on?: string;
  /** Section on which it is. Absent: the book does not say. */
  readonly section?: string;
  readonly box?: string;
  readonly size?: string;
  readonly colour?: string;
}

/** A join of the book with both ends found out. */
export interface LaidJoin {
  readonly tag: string;
  /** Place in the book: `/line/joins/3`. */
  readonly path: string;
  readonly kind?: JoinKind;
  readonly name?: string;
  readonly label?: string;
  readonly code: string;
  readonly split?: string;
  readonly from: JoinEnd;
  readonly to: JoinEnd;
  /** Where it is made: as the book says, else the box of its second end, else that of its first. */
  readonly box?: string;
  readonly cable?: string;
  readonly core?: string;
  readonly potential?: string;
  readonly after: readonly string[];
}
