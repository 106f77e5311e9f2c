import { describe, expect, it } from 'vitest';
import { routeOf, sheetAddress } from './route.ts';

describe('an address', () => {
  it('without a path is the newest book', () => {
    expect(routeOf('/', '')).toEqual({ page: 'book' });
  });
  it('of a book names it', () => {
    expect(routeOf('/books/flagon-line', '')).toEqual({ page: 'book', id: 'flagon-line' });
  });
  it('of a sheet carries what stands in its fields, and reads it back', () => {
    const inputs = { flow: '12 gal/min', bore: '1 1/2 in', list: '1 m; 2 m' };
    const [path, query] = sheetAddress('water/pipe-loss', inputs).split('?');
    expect(routeOf(path ?? '', `?${query}`)).toEqual({ page: 'sheet', sheet: 'water/pipe-loss', inputs });
  });
  it('that nobody knows leads nowhere', () => {
    expect(routeOf('/what/ever', '')).toEqual({ page: 'nowhere' });
  });
});
