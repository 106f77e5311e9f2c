import { type ReactElement, useLayoutEffect, useRef } from 'react';
import { ScrollRegion } from '../shell/scroll-region.tsx';
import { useWords } from '../state/page-context.ts';
import { formulaParts } from './formula-parts.ts';

const made = (element: 'div' | 'span', className = ''): HTMLElement => {
  const one = document.createElement(element);
  one.className = className;
  return one;
};

/** Smaller than this a formula is not read; it scrolls instead. */
const smallest = 0.75;

/** A piece that cannot be parted, such as a long root, is set as much smaller as it is too wide. */
const shrink = (part: HTMLElement, room: number): void => {
  const { width } = part.getBoundingClientRect();
  if (width > room) part.style.fontSize = `${Math.max(smallest, (0.98 * room) / width)}em`;
};

/** A sheet's formula typeset as MathML; what is wider than its place goes on in the next line. */
export const Formula = ({ lines }: { readonly lines: readonly string[] }): ReactElement => {
  const ref = useRef<HTMLDivElement>(null);
  const label = useWords().say('working.formula');
  const tex = lines.join('\n');
  // before the page is painted: the formula of another sheet must not stand under this one's name
  useLayoutEffect(() => {
    let gone = false;
    const typeset = async (): Promise<void> => {
      const { default: temml } = await import('temml');
      const host = ref.current;
      if (gone || host === null) return;
      const rendered = tex.split('\n').map((line) => {
        const row = made('div', 'equation');
        for (const pieces of formulaParts(line)) {
          const statement = made('span', 'statement');
          for (const piece of pieces) {
            const part = made('span');
            temml.render(`\\displaystyle ${piece}`, part, { throwOnError: false });
            statement.append(part, document.createElement('wbr'));
          }
          row.append(statement, ' ');
        }
        return row;
      });
      host.replaceChildren(...rendered);
      for (const part of host.querySelectorAll<HTMLElement>('.statement > span'))
        shrink(part, host.clientWidth);
    };
    void typeset();
    return () => {
      gone = true;
    };
  }, [tex]);
  return (
    <ScrollRegion label={label} className="formula">
      <div ref={ref} />
    </ScrollRegion>
  );
};
