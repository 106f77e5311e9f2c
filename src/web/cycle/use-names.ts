import { useMemo } from 'react';
import { tagsOf, valueAt } from '../../book/index.ts';
import { usePageState } from '../state/page-context.ts';

/** The name of a station, zone or cause by its tag, or the tag where it has none. */
export const useNames = (): ((tag: string) => string) => {
  const { shown } = usePageState();
  return useMemo(() => {
    const names = new Map(
      tagsOf(shown).map(({ tag, path }) => {
        const name = valueAt(shown, `${path}/name`);
        return [tag, typeof name === 'string' ? name : tag];
      }),
    );
    return (tag) => names.get(tag) ?? tag;
  }, [shown]);
};
