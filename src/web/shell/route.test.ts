import { describe, expect, it } from 'vitest';
import {
  bookPageAddress,
  compareAddress,
  fillAddress,
  joinsAddress,
  proofAddress,
  routeOf,
  sheetAddress,
  sheetsAddress,
  utilitiesAddress,
} from './route.ts';

describe('an address', () => {
  it('without a path is the newest book', () => {
    expect(routeOf('/', '')).toEqual({ page: 'book' });
  });
  it('of a book names it', () => {
    expect(routeOf('/books/flagon-line', '')).toEqual({ page: 'book', id: 'flagon-line' });
  });
  it('of a part of a book leads to where that part is written', () => {
    const at = '/floors/0/supply/run/1';
    const [path, query] = bookPageAddress('flagon line', at).split('?');
    expect(routeOf(path ?? '', `?${query}`)).toEqual({ page: 'write', id: 'flagon line', at });
    expect(routeOf('/books/x/book', '')).toEqual({ page: 'write', id: 'x' });
  });
  it('of the sheets carries what is looked for', () => {
    const [path, query] = sheetsAddress('duct & fan').split('?');
    expect(routeOf(path ?? '', `?${query}`)).toEqual({ page: 'sheets', find: 'duct & fan' });
    expect(routeOf(sheetsAddress(''), '')).toEqual({ page: 'sheets', find: '' });
  });
  it('of a sheet carries what stands in its fields, and reads it back', () => {
    const inputs = { flow: '12 gal/min', bore: '1 1/2 in', list: '1 m; 2 m' };
    const [path, query] = sheetAddress('water/pipe-loss', inputs).split('?');
    expect(routeOf(path ?? '', `?${query}`)).toEqual({ page: 'sheet', sheet: 'water/pipe-loss', inputs });
  });
  it('of a new book says whether the short form is asked for', () => {
    expect(routeOf(utilitiesAddress('flagon line'), '')).toEqual({ page: 'utilities', id: 'flagon line' });
    expect(routeOf('/new', '')).toEqual({ page: 'new', form: false });
    expect(routeOf('/new', '?from=form')).toEqual({ page: 'new', form: true });
  });
  it('of the door for phones holds nothing else', () => {
    expect(routeOf('/hall', '')).toEqual({ page: 'hall' });
    expect(routeOf('/hall/more', '')).toEqual({ page: 'nowhere' });
  });
  it('of the fill keeps the question that is open', () => {
    expect(routeOf('/books/x/fill', '')).toEqual({ page: 'fill', id: 'x' });
    const [path, query] = fillAddress('flagon line', 'presets').split('?');
    expect(routeOf(path ?? '', `?${query}`)).toEqual({ page: 'fill', id: 'flagon line', step: 'presets' });
  });
  it('of a check names it by its tags, signs and all', () => {
    const [path, query] = proofAddress('flagon line', 'run', 'effect -S1 +FILL & -M1').split('?');
    expect(routeOf(path ?? '', `?${query}`)).toEqual({
      page: 'proof',
      id: 'flagon line',
      step: 'run',
      check: 'effect -S1 +FILL & -M1',
    });
    expect(routeOf('/books/x/fill', '?check=placed')).toEqual({ page: 'fill', id: 'x' });
  });
  it('of a join names it by its tag', () => {
    const [path, query] = joinsAddress('flagon line', 'make', 'J-X1:1/X2:1').split('?');
    expect(routeOf(path ?? '', `?${query}`)).toEqual({
      page: 'joins',
      id: 'flagon line',
      step: 'make',
      join: 'J-X1:1/X2:1',
    });
  });
  it('of a comparison carries both sides, and reads them back', () => {
    const [path, query] = compareAddress('flagon-line', { left: 3, right: 'trial' }).split('?');
    expect(routeOf(path ?? '', `?${query}`)).toEqual({
      page: 'compare',
      id: 'flagon-line',
      left: 3,
      right: 'trial',
    });
    expect(routeOf('/books/a/compare', '?left=0&right=many')).toEqual({ page: 'compare', id: 'a' });
  });
  it('that nobody knows leads nowhere', () => {
    expect(routeOf('/what/ever', '')).toEqual({ page: 'nowhere' });
  });
});
