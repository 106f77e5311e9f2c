/** Saves a text as a file on the machine of who reads the page. */
export const saveText = (name: string, text: string): void => {
  const address = URL.createObjectURL(new Blob([text], { type: 'application/json' }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  // the browser reads it after this turn
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
};
