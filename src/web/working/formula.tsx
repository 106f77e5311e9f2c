import { type ReactElement, useEffect, useRef } from 'react';
import { ScrollRegion } from '../shell/scroll-region.tsx';
import { useWords } from '../state/page-context.ts';

/** A sheet's formula typeset as MathML. */
export const Formula = ({ lines }: { readonly lines: readonly string[] }): ReactElement => {
  const ref = useRef<HTMLDivElement>(null);
  const label = useWords().say('working.formula');
  const tex = lines.join('\n');
  useEffect(() => {
    let gone = false;
    const typeset = async (): Promise<void> => {
      const { default: temml } = await import('temml');
      const host = ref.current;
      if (gone || host === null) return;
      const rendered = tex.split('\n').map((line) => {
        const row = document.createElement('div');
        row.className = 'equation';
        temml.render(line, row, { displayMode: true, throwOnError: false });
        return row;
      });
      host.replaceChildren(...rendered);
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
