import * as Plot from '@observablehq/plot';
import { type ReactElement, type ReactNode, useEffect, useRef } from 'react';
import { useElementWidth } from '../line/element-width.ts';
import { useWords } from '../state/page-context.ts';

/** A chart follows when the typing rests: drawing six of them at every key would hold the figures back. */
const rest = 120;

/** Letters as large as the page's own, and room for them round a chart with both axes. */
export const plotFrame = {
  marginLeft: 52,
  marginTop: 34,
  marginBottom: 38,
  style: { fontSize: '13px' },
} as const;

export interface PlotFigureProps {
  readonly title: string;
  readonly plot: (width: number) => Plot.PlotOptions;
  /** The same numbers for someone who reads them. */
  readonly table: ReactNode;
  readonly depends: readonly unknown[];
}

/**
 * A chart with the table of its numbers.
 *
 * The chart is drawn in a document of its own and its inline style sheet is taken out before it comes into the
 * page, because the page's content security policy allows none; the same rules stand in `parts.css`.
 */
export const PlotFigure = ({ title, plot, table, depends }: PlotFigureProps): ReactElement => {
  const [ref, width] = useElementWidth<HTMLDivElement>(400);
  const host = useRef<HTMLDivElement>(null);
  const { say } = useWords();
  const draw = (): void => {
    const apart = document.implementation.createHTMLDocument('');
    const chart = Plot.plot({ ...plot(width), width, document: apart });
    for (const style of chart.querySelectorAll('style')) style.remove();
    // the table speaks for the chart
    for (const part of chart.querySelectorAll('[aria-label]')) part.removeAttribute('aria-label');
    const target = host.current;
    if (target === null) return;
    const drawn = document.importNode(chart, true);
    drawn.setAttribute('aria-hidden', 'true');
    target.replaceChildren(drawn);
  };
  // biome-ignore lint/correctness/useExhaustiveDependencies: what the chart rests on is named by its user
  useEffect(() => {
    // not laid out yet
    if (width < 120) return undefined;
    const timer = setTimeout(draw, host.current?.firstChild === null ? 0 : rest);
    return () => clearTimeout(timer);
  }, [width, ...depends]);
  return (
    <figure className="chart" ref={ref}>
      <figcaption>
        <h3>{title}</h3>
      </figcaption>
      <div ref={host} />
      <details>
        <summary>{say('charts.table')}</summary>
        {table}
      </details>
    </figure>
  );
};
