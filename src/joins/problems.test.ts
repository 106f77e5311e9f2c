import { describe, expect, it } from 'vitest';
import { parseMessage, partsOf } from '../text/index.ts';
import { joinFaults } from './integrity/fault.ts';
import { joinsText } from './joins.text.ts';
import { joinProblemText } from './problems.text.ts';
import { joinProblems } from './problems.ts';

const given = ['given', 'allowed', 'path'];

describe('every problem of a list of joins', () => {
  it.each(Object.entries(joinProblems))(
    '%s has words that want nothing but what is listed',
    (code, parts) => {
      const text = joinProblemText.en[code as keyof typeof joinProblems];
      const wanted = partsOf(parseMessage(text));
      expect([...parts, ...given]).toEqual(expect.arrayContaining([...wanted]));
      expect(text).toMatch(/[.]$/);
    },
  );
});

describe('every fault of the joins', () => {
  it.each(Object.entries(joinFaults))('%s has words that want all that is listed', (code, parts) => {
    const wanted = partsOf(parseMessage(joinsText.en?.[`joins.fault.${code}`] ?? ''));
    expect([...wanted].sort()).toEqual([...parts].sort());
  });
  it('is told without a word that calls anything safe', () => {
    expect(Object.values(joinsText.en ?? {}).filter((text) => /\bsafe/i.test(text))).toEqual([]);
  });
});
