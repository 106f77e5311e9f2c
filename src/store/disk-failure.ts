import { StoreFailure, type StoreProblemCode } from './problems.ts';

const ERRNO: Readonly<Record<string, StoreProblemCode>> = {
  EACCES: 'STORE_READ_ONLY',
  EPERM: 'STORE_READ_ONLY',
  EROFS: 'STORE_READ_ONLY',
  ENOSPC: 'STORE_FULL',
  EDQUOT: 'STORE_FULL',
};

/** What the operating system said, as a failure of the store; `otherwise` where it said nothing that we know. */
export const diskFailure = (path: string, error: unknown, otherwise: StoreProblemCode): StoreFailure => {
  const { code } = error as NodeJS.ErrnoException;
  return new StoreFailure(ERRNO[code ?? ''] ?? otherwise, path, error);
};
