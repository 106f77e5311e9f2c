export type Route =
  | { readonly page: 'book'; readonly id?: string }
  /** Where a book is written, part by part; `at` is the path of the part. */
  | { readonly page: 'write'; readonly id: string; readonly at?: string }
  /** What the line asks of each utility and what its floors have. */
  | { readonly page: 'utilities'; readonly id: string }
  /** Where the fill is set; `step` is the question that is open. */
  | { readonly page: 'fill'; readonly id: string; readonly step?: string }
  /** A shift of the line on both floors; `step` is the question that is open. */
  | { readonly page: 'cycle'; readonly id: string; readonly step?: string }
  /** What is proved where; `step` is the question that is open, `check` the one that is tried. */
  | { readonly page: 'proof'; readonly id: string; readonly step?: string; readonly check?: string }
  /** What is parted and made again; `step` is the question that is open, `join` its tag or the code on its label. */
  | { readonly page: 'joins'; readonly id: string; readonly step?: string; readonly join?: string }
  /** The papers of a book. */
  | { readonly page: 'papers'; readonly id: string }
  /** Where a book begins; `form` is the short form. */
  | { readonly page: 'new'; readonly form: boolean }
  /** Two revisions facing each other; `trial` is the book with the remedy that is on trial. */
  | {
      readonly page: 'compare';
      readonly id: string;
      readonly left?: number;
      /** A digest is of a revision that is kept aside. */
      readonly right?: number | string;
    }
  /** With what is looked for among them. */
  | { readonly page: 'sheets'; readonly find: string }
  | { readonly page: 'sheet'; readonly sheet: string; readonly inputs: Readonly<Record<string, string>> }
  /** Where a phone or tablet is let in. */
  | { readonly page: 'hall' }
  | { readonly page: 'nowhere' };

const revisionIn = (text: string | null): number | undefined =>
  text !== null && /^[1-9]\d{0,8}$/.test(text) ? Number(text) : undefined;

/** What an address shows. */
export const routeOf = (pathname: string, search: string): Route => {
  const steps = pathname
    .split('/')
    .filter((step) => step !== '')
    .map(decodeURIComponent);
  if (steps.length === 0) return { page: 'book' };
  if (steps[0] === 'books' && steps[1] !== undefined && steps.length === 2)
    return { page: 'book', id: steps[1] };
  if (steps[0] === 'books' && steps[1] !== undefined && steps[2] === 'book' && steps.length === 3) {
    const at = new URLSearchParams(search).get('at');
    return { page: 'write', id: steps[1], ...(at === null ? {} : { at }) };
  }
  const plain = (['utilities', 'papers'] as const).find((page) => page === steps[2]);
  if (steps[0] === 'books' && steps[1] !== undefined && plain !== undefined && steps.length === 3) {
    return { page: plain, id: steps[1] };
  }
  const stepped = (['fill', 'cycle', 'proof', 'joins'] as const).find((page) => page === steps[2]);
  if (steps[0] === 'books' && steps[1] !== undefined && stepped !== undefined && steps.length === 3) {
    const query = new URLSearchParams(search);
    const [step, check, join] = ['step', 'check', 'join'].map((name) => query.get(name) ?? undefined);
    return {
      page: stepped,
      id: steps[1],
      ...(step === undefined ? {} : { step }),
      ...(check === undefined || stepped !== 'proof' ? {} : { check }),
      ...(join === undefined || stepped !== 'joins' ? {} : { join }),
    };
  }
  if (steps[0] === 'books' && steps[1] !== undefined && steps[2] === 'compare' && steps.length === 3) {
    const query = new URLSearchParams(search);
    const left = revisionIn(query.get('left'));
    const other = query.get('right');
    const right = other !== null && /^(trial|[0-9a-f]{64})$/.test(other) ? other : revisionIn(other);
    return {
      page: 'compare',
      id: steps[1],
      ...(left === undefined ? {} : { left }),
      ...(right === undefined ? {} : { right }),
    };
  }
  if (steps[0] === 'new' && steps.length === 1) {
    return { page: 'new', form: new URLSearchParams(search).get('from') === 'form' };
  }
  if (steps[0] === 'hall' && steps.length === 1) return { page: 'hall' };
  if (steps[0] === 'sheets' && steps.length === 1) {
    return { page: 'sheets', find: new URLSearchParams(search).get('find') ?? '' };
  }
  if (steps[0] === 'sheets') {
    const inputs = Object.fromEntries(new URLSearchParams(search));
    return { page: 'sheet', sheet: steps.slice(1).join('/'), inputs };
  }
  return { page: 'nowhere' };
};

/** The address of a sheet, with the texts that are to stand in its fields. */
export const sheetAddress = (sheet: string, inputs: Readonly<Record<string, string>> = {}): string => {
  const query = new URLSearchParams(inputs).toString();
  return `/sheets/${sheet}${query === '' ? '' : `?${query}`}`;
};

/** The address of all sheets, or of those in which a text is found. */
export const sheetsAddress = (find: string): string =>
  find === '' ? '/sheets' : `/sheets?${new URLSearchParams({ find })}`;

/** The address at which a part of a book is written. */
export const bookPageAddress = (id: string, at?: string): string =>
  `/books/${encodeURIComponent(id)}/book${at === undefined ? '' : `?at=${at}`}`;

/** The address of what the line asks of the utilities of its floors. */
export const utilitiesAddress = (id: string): string => `/books/${encodeURIComponent(id)}/utilities`;

/** The address of the papers of a book. */
export const papersAddress = (id: string): string => `/books/${encodeURIComponent(id)}/papers`;

/** The address at which the fill is set; none named is the first question. */
export const fillAddress = (id: string, step?: string): string =>
  `/books/${encodeURIComponent(id)}/fill${step === undefined ? '' : `?step=${step}`}`;

/** The address of a shift of the line; no step named is the first question. */
export const cycleAddress = (id: string, step?: string): string =>
  `/books/${encodeURIComponent(id)}/cycle${step === undefined ? '' : `?step=${step}`}`;

/** The address of what is proved where, with the check that is tried; no step named is the first question. */
export const proofAddress = (id: string, step?: string, check?: string): string => {
  const query = [
    ...(step === undefined ? [] : [`step=${step}`]),
    ...(check === undefined ? [] : [`check=${encodeURIComponent(check)}`]),
  ].join('&');
  return `/books/${encodeURIComponent(id)}/proof${query === '' ? '' : `?${query}`}`;
};

/** The address of the joins, with one by its tag or the code on its label; no step named is the first question. */
export const joinsAddress = (id: string, step?: string, join?: string): string => {
  const query = [
    ...(step === undefined ? [] : [`step=${step}`]),
    ...(join === undefined ? [] : [`join=${encodeURIComponent(join)}`]),
  ].join('&');
  return `/books/${encodeURIComponent(id)}/joins${query === '' ? '' : `?${query}`}`;
};

/** The address at which two revisions of a book face each other; none named are the newest and the one before. */
export const compareAddress = (
  id: string,
  { left, right }: { readonly left?: number; readonly right?: number | string } = {},
): string => {
  const query = new URLSearchParams([
    ...(left === undefined ? [] : [['left', String(left)]]),
    ...(right === undefined ? [] : [['right', String(right)]]),
  ]).toString();
  return `/books/${encodeURIComponent(id)}/compare${query === '' ? '' : `?${query}`}`;
};
