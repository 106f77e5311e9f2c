import { describe, expect, it } from 'vitest';
import { fieldsAt } from './field-at.ts';
import { bookJsonSchema } from './json-schema.ts';
import { valueAt } from './value-at.ts';

const schema = bookJsonSchema();

interface Node {
  readonly [key: string]: unknown;
  readonly description?: string;
}

const nodes = (at: unknown, path = ''): readonly (readonly [string, Node])[] => {
  if (Array.isArray(at)) return at.flatMap((each, i) => nodes(each, `${path}/${i}`));
  if (typeof at !== 'object' || at === null) return [];
  return [
    [path, at as Node],
    ...Object.entries(at).flatMap(([key, inner]) => nodes(inner, `${path}/${key}`)),
  ];
};

describe('the published schema', () => {
  // where this fails after a wanted change: `npx vitest run src/book/json-schema -u`, then read the difference
  it('is the file in docs/schema', async () => {
    await expect(`${JSON.stringify(schema, null, 2)}\n`).toMatchFileSnapshot('../../docs/schema/book-1.json');
  });

  it('says of every field what it is', () => {
    const silent = nodes(schema)
      .filter(([path]) => /\/properties\/[^/]+$/.test(path))
      // a part that stands in several places is told where it is defined
      .map(
        ([path, node]) =>
          [
            path,
            typeof node.$ref === 'string'
              ? { ...(valueAt(schema, node.$ref.slice(1)) as Node), ...node }
              : node,
          ] as const,
      )
      .filter(([path, { description }]) => !path.endsWith('/kind') && (description ?? '') === '')
      // the standing fields of a quantity are told once, in its own definition
      .filter(([path]) => !path.startsWith('/$defs/quantity'));
    expect(silent.map(([path]) => path)).toEqual([]);
  });

  it('shows the kind and the SI unit of every quantity', () => {
    const quantities = nodes(schema).filter(([, node]) => node.$ref === '#/$defs/quantity');
    expect(quantities.length).toBeGreaterThan(250);
    for (const [path, node] of quantities) {
      expect([path, node['x-quantity']]).toEqual([
        path,
        expect.objectContaining({ kind: expect.any(String), unit: expect.any(String) }),
      ]);
    }
  });

  it('allows no key that is not named', () => {
    for (const [path, node] of nodes(schema)) {
      if (node.type === 'object') expect([path, node.additionalProperties]).toEqual([path, false]);
    }
  });

  it('names the same fields as the walk over a book', () => {
    const properties = schema.properties as Record<string, unknown>;
    for (const key of Object.keys(properties)) expect(fieldsAt(`/${key}`)).toHaveLength(1);
  });
});
