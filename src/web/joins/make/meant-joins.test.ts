import { describe, expect, it } from 'vitest';
import { codeOfTag } from '../../../joins/code/join-code.ts';
import type { LaidJoin } from '../../../joins/index.ts';
import { meantJoins } from './meant-joins.ts';

const join = (tag: string, code: string): LaidJoin => ({
  tag,
  code,
  path: '',
  after: [],
  from: { side: 'from' },
  to: { side: 'to' },
});
const code = codeOfTag('J-1');
const joins = [join('J-1', code), join('J-2', code), join('J-3', codeOfTag('J-3'))];
const byTag = new Map(joins.map((one) => [one.tag, one]));
const meant = (asked: string | undefined) => meantJoins(asked, joins, byTag).map(({ tag }) => tag);

describe('the join that an address means', () => {
  it('is the one that has the tag, or whose label bears the code', () => {
    expect(meant('J-2')).toEqual(['J-2']);
    expect(meant(codeOfTag('J-3').toLowerCase())).toEqual(['J-3']);
  });
  it('is not settled where two labels bear the same code', () => {
    expect(meant(code)).toEqual(['J-1', 'J-2']);
  });
  it('is none where no label bears it', () => {
    expect([meant(undefined), meant(codeOfTag('of another line')), meant('J-9')]).toEqual([[], [], []]);
  });
});
