/** Code of what the system refused; a mistake of the program is thrown on. */
export const worldCode = (cause: unknown): string => {
  const { code, syscall } = cause as NodeJS.ErrnoException;
  if (code === undefined || syscall === undefined) throw cause;
  return code;
};
