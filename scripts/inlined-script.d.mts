import type { Plugin } from 'vite';

export const inlinedScript: () => Plugin;
