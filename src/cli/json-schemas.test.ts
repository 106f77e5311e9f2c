import { describe, expect, it } from 'vitest';
import { documentJsonSchema, documents } from './json-schemas.ts';

describe('the published schema of what --json prints', () => {
  // where this fails after a wanted change: `npx vitest run src/cli/json-schemas -u`, then read the difference
  it.each(Object.keys(documents) as (keyof typeof documents)[])(
    '%s is the file in docs/schema',
    async (name) => {
      const text = `${JSON.stringify(documentJsonSchema(name), null, 2)}\n`;
      await expect(text).toMatchFileSnapshot(`../../docs/schema/${name}.json`);
    },
  );
});
