/** Hands text or bytes to the person as a file. */
export const saveAs = (name: string, content: BlobPart, type: string): void => {
  const address = URL.createObjectURL(new Blob([content], { type }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  URL.revokeObjectURL(address);
};
