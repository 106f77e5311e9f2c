/** Who can answer for a place of the book: the key of the words that name them. */
export const whomToAsk = (path: string): string => {
  if (path.includes('/supply') || path.includes('/water')) return 'working.ask.plumber';
  if (path.includes('/power')) return 'working.ask.electrician';
  if (path.includes('/products') || path.includes('/liquid')) return 'working.ask.product';
  if (path.startsWith('/line')) return 'working.ask.builder';
  return 'working.ask.site';
};
