import { dirname } from 'node:path';
import { fileURLToPath } from 'node:url';

/** Folder of the project, wherever the command was called from. */
export const projectRoot = dirname(dirname(fileURLToPath(import.meta.url)));
