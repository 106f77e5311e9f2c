import type { Answerer } from '../floor/questions/index.ts';

/** Something that a gate still wants. */
export interface Lack {
  /** What a signature names it by: the id of the check, finding or point. */
  readonly id: string;
  readonly sort:
    | 'check'
    | 'finding'
    | 'question'
    | 'reading'
    | 'punch'
    | 'instrument'
    | 'agreement'
    | 'bypass'
    | 'setting'
    | 'unread'
    | 'wait'
    | 'goods'
    | 'join';
  readonly holder: Answerer;
  /** Place of the book that is asked for. */
  readonly path?: string;
  /** Of joins: those of one box that lack the same. */
  readonly joins?: readonly string[];
  /** Of what is forced or bypassed: the tag of it, and why. */
  readonly of?: string;
  readonly why?: string;
  /** Of goods: pieces or kg that the run takes and that are at hand, as far as the book tells. */
  readonly needed?: number;
  readonly have?: number;
}
