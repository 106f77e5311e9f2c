import { describe, expect, it } from 'vitest';
import { parseMessage, partsOf } from '../text/index.ts';
import { serverProblemText } from './problems.text.ts';
import { serverProblems } from './problems.ts';

describe('every problem of the server', () => {
  it.each(Object.entries(serverProblems))(
    '%s has words, which want nothing but what is listed',
    (code, parts) => {
      const text = serverProblemText.en[code as keyof typeof serverProblems];
      const wanted = partsOf(parseMessage(text)).filter((name) => name !== 'path');
      expect([...wanted].sort()).toEqual([...parts].sort());
      expect(text).toMatch(/\.$/);
    },
  );
});
