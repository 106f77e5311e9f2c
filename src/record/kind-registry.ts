import type { Shape } from './body-shape.ts';

/** One kind of record in one version of its body. */
export interface RecordKind {
  readonly kind: string;
  readonly version: number;
  readonly body: Shape;
}

export type KindRegistry = ReadonlyMap<string, RecordKind>;

const keyOf = (kind: string, version: number): string => `${kind}/${version}`;

/** A registry of kinds; the same kind and version twice is a fault of the program and throws. */
export const kindRegistry = (...kinds: readonly RecordKind[]): KindRegistry => {
  const registry = new Map<string, RecordKind>();
  for (const kind of kinds) {
    const key = keyOf(kind.kind, kind.version);
    if (registry.has(key)) throw new Error(`record kind ${key} is registered twice`);
    registry.set(key, kind);
  }
  return registry;
};

/** A registry with further kinds, those before it unchanged. */
export const withKinds = (registry: KindRegistry, ...kinds: readonly RecordKind[]): KindRegistry =>
  kindRegistry(...registry.values(), ...kinds);

export const findKind = (registry: KindRegistry, kind: string, version: number): RecordKind | undefined =>
  registry.get(keyOf(kind, version));
