import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';

interface Locked {
  readonly resolved?: string;
  readonly integrity?: string;
  readonly optional?: boolean;
  readonly link?: boolean;
}

const root = join(import.meta.dirname, '../..');
const text = readFileSync(join(root, 'package-lock.json'), 'utf8');
const packages = (JSON.parse(text) as { packages: Record<string, Locked> }).packages;
const manifest = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as {
  dependencies: Record<string, string>;
  devDependencies: Record<string, string>;
};

describe('the lock file', () => {
  it('names no host: whoever installs asks their own registry', () => {
    const named = Object.entries(packages).filter(([, { resolved }]) => resolved !== undefined);
    expect(named.map(([path]) => path)).toEqual([]);
    const hosts = [...text.matchAll(/"(?:https?:)?\/\/([^/"]+)/g)].map(([, host]) => host ?? '');
    // addresses of those who ask for donations stand in the packages' own words
    expect(
      hosts.filter((host) => /registry|npm|proxy|mirror|localhost|\d+\.\d+\.\d+\.\d+/.test(host)),
    ).toEqual([]);
  });

  it('holds every package by its content', () => {
    const loose = Object.entries(packages).filter(
      ([path, { integrity, link }]) => path !== '' && !link && integrity === undefined,
    );
    expect(loose.map(([path]) => path)).toEqual([]);
  });

  it('has what each platform needs of the packages that are compiled', () => {
    for (const platform of [
      '@libsql/linux-x64-gnu',
      '@libsql/linux-arm64-gnu',
      '@libsql/darwin-arm64',
      '@libsql/darwin-x64',
      '@libsql/win32-x64-msvc',
      '@myriaddreamin/typst-ts-node-compiler-linux-x64-gnu',
      '@myriaddreamin/typst-ts-node-compiler-linux-arm64-gnu',
      '@myriaddreamin/typst-ts-node-compiler-darwin-arm64',
      '@myriaddreamin/typst-ts-node-compiler-darwin-x64',
      '@myriaddreamin/typst-ts-node-compiler-win32-x64-msvc',
      '@rolldown/binding-linux-x64-gnu',
      '@rolldown/binding-darwin-arm64',
      '@rolldown/binding-win32-x64-msvc',
      '@biomejs/cli-linux-x64',
      '@biomejs/cli-darwin-arm64',
      '@biomejs/cli-win32-x64',
      'lightningcss-linux-x64-gnu',
      'lightningcss-darwin-arm64',
      'lightningcss-win32-x64-msvc',
    ]) {
      expect(packages[`node_modules/${platform}`], platform).toMatchObject({ optional: true });
    }
  });

  it('holds every package that is asked for', () => {
    for (const name of Object.keys({ ...manifest.dependencies, ...manifest.devDependencies })) {
      expect(packages[`node_modules/${name}`], name).toBeDefined();
    }
  });
});
