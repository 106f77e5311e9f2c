import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { parseMessage, partsOf } from '../text/index.ts';
import { cliProblemText } from './problems.text.ts';
import { cliProblems } from './problems.ts';

const sources = readdirSync(import.meta.dirname)
  .filter((name) => /^(?!problems).*(?<!\.test)\.ts$/.test(name))
  .map((name) => readFileSync(join(import.meta.dirname, name), 'utf8'))
  .join('\n');

describe('every problem of the command line', () => {
  it.each(Object.entries(cliProblems))(
    '%s has words that want nothing but what is listed, and is raised',
    (code, parts) => {
      const text = cliProblemText.en[code as keyof typeof cliProblems];
      const wanted = partsOf(parseMessage(text)).filter((name) => name !== 'path');
      expect(parts).toEqual(expect.arrayContaining([...wanted]));
      expect(text).toMatch(/[.?]$/);
      expect(sources).toContain(`'${code}'`);
    },
  );
});
